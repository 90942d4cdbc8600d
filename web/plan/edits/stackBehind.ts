import { isFoil, type Section, type SectionKind } from "../../../geometry/section/section"
import { makeStack, type StackWay } from "../../../geometry/stack"
import { lengthMm } from "../../../geometry/surfacePath"
import { shortestStackedMm } from "../../../presets/stacking"
import type { Edit } from "../edit"
import { headOf } from "../measured"
import { freeId, freeMapNumber } from "../newSection"
import type { Plan } from "../schema"
import { sectionName } from "../sectionName"
import { addSections } from "./addSections"
import { asKind } from "./changeKind"

/** How sections are to follow behind one: the way back, how deep each is, and what every second one is taken up as. */
export type StackWish = Pick<StackWay, "follow" | "gapMm" | "shiftMm"> & {
  depthMm: Section["depthMm"]
  second: { kind: SectionKind; depthMm: number } | null
}

/** As many sections of a stack as are asked for and fit. */
export type StackRows = (count: number) => readonly Section[]

/** The sections of a stack behind one, each made once. */
export function stackRows(first: Section, plan: Plan, wish: StackWish): StackRows {
  const { second, depthMm } = wish
  const deepestMm = Math.max(depthMm.start, depthMm.end)
  const head = headOf(plan)
  const stack = makeStack(head, first, {
    ...wish,
    depthsMm: second ? [second.depthMm, deepestMm] : [deepestMm],
    shortestMm: Math.min(shortestStackedMm.value, lengthMm(head.surface, first.parting) / 2),
  })
  const made: Section[] = []
  return (count) => {
    while (made.length < count) {
      const parting = stack.partingAt(made.length)
      if (!parting) break
      made.push(sectionOf({ ...first, parting }, plan, wish, made))
    }
    return made.slice(0, count)
  }
}

function sectionOf(
  like: Section,
  plan: Plan,
  { second, depthMm }: StackWish,
  made: readonly Section[],
): Section {
  const before = [...plan.sections, ...made]
  const isSecond = second !== null && made.length % 2 === 0
  const section: Section = isSecond
    ? { ...asKind(like, second.kind, plan), depthMm: { start: second.depthMm, end: second.depthMm } }
    : { ...like, depthMm }
  const numbered = isFoil(section) ? { ...section, mapNumber: freeMapNumber(before) } : section
  return { ...numbered, id: freeId(before) }
}

/** Adds so many sections behind one. When the head ends before that it says how many fit, and adds none. */
export const stackBehind =
  (id: string, wish: StackWish, count: number): Edit =>
  (plan) => {
    const first = plan.sections.find((section) => section.id === id)
    if (!first) return plan
    const rows = stackRows(first, plan, wish)(count)
    return rows.length < count ? { refused: fitWords(first, rows.length, count) } : addSections(...rows)(plan)
  }

/** Why a stack is shorter than was asked for. */
export function fitWords(first: Section, fits: number, asked: number): string {
  const behind = `behind ${sectionName(first).toLowerCase()}`
  return fits === 0
    ? `There is no room ${behind}: move it forward, or follow the hairline.`
    : `Only ${fits} of ${asked} fit ${behind}: there the hair ends.`
}
