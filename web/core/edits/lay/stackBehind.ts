import { makeStack } from "../../../../geometry/placing/stack"
import type { StackWay } from "../../../../geometry/placing/stackStart"
import type { Section, SectionKind } from "../../../../geometry/section/section"
import { lengthMm } from "../../../../geometry/surface/surfacePath"
import { shortestStackedMm } from "../../../../presets/placement/stacking"
import { type Edit, refuse } from "../../document/edit"
import { twinOf } from "../../document/pairs"
import type { RefusalCode } from "../../document/refusal"
import type { Plan } from "../../document/schema"
import { sectionNameOf } from "../../document/sectionNameCode"
import { headOf } from "../../figures/measured"
import { addSections } from "../sections/addSections"
import { asKind } from "../sections/changeKind"
import { renewed } from "../sections/pieceOf"
import { pairOf, partingBeside, sidesBehind } from "./pairBehind"
import { pieceBeside } from "./wornSides"

/** How sections are to follow behind one: the way back, how deep each is, and what every second one is taken up as. */
export type StackWish = Pick<StackWay, "follow" | "gapMm" | "shiftMm"> & {
  depthMm: Section["depthMm"]
  second: { kind: SectionKind; depthMm: number } | null
}

/** As many sections of a stack as are asked for and fit; behind one of a pair each is followed by its image. */
export type StackRows = (count: number) => readonly Section[]

/** The sections of a stack behind one, each made once. */
export function stackRows(first: Section, plan: Plan, wish: StackWish): StackRows {
  const rowAt = stackPartings(first, plan, wish)
  const sides = sidesBehind(first, plan)
  const made: Section[] = []
  return (count) => {
    while (made.length < count * sides) {
      const index = made.length / sides
      const partings = rowAt(index)
      if (!partings) break
      const before = [...plan.sections, ...made]
      const row = sectionOf({ ...first, parting: partings.parting, twin: undefined }, plan, wish, index)
      const numbered = renewed(row, before)
      made.push(...(partings.beside ? pairOf(numbered, partings.beside, before) : [numbered]))
    }
    return made.slice(0, count * sides)
  }
}

/** The parting of each row, and behind one of a pair the one beside it on the other side; null where either has no room. */
function stackPartings(first: Section, plan: Plan, wish: StackWish) {
  const { second, depthMm } = wish
  const deepestMm = Math.max(depthMm.start, depthMm.end)
  const head = headOf(plan)
  const stackOf = (section: Section) =>
    makeStack(head, section, {
      ...wish,
      depthsMm: second ? [second.depthMm, deepestMm] : [deepestMm],
      shortestMm: Math.min(shortestStackedMm.value, lengthMm(head.surface, section.parting) / 2),
    })
  const stack = stackOf(first)
  const twin = twinOf(first, plan)
  const besides = twin && stackOf(twin)
  return (row: number) => {
    const whole = stack.partingAt(row)
    const parting = whole && pieceBeside(whole, first, plan)
    if (!parting || !twin) return parting && { parting, beside: null }
    const wholeBeside = partingBeside(first, twin, head, () => besides?.partingAt(row) ?? null)(parting)
    const beside = wholeBeside && pieceBeside(wholeBeside, twin, plan)
    return beside && { parting, beside }
  }
}

function sectionOf(like: Section, plan: Plan, { second, depthMm }: StackWish, row: number): Section {
  return second !== null && row % 2 === 0
    ? { ...asKind(like, second.kind, plan), depthMm: { start: second.depthMm, end: second.depthMm } }
    : { ...like, depthMm }
}

/** Adds so many sections behind one, and as many behind its twin. When the head ends before that it says how many fit, and adds none. */
export const stackBehind =
  (id: string, wish: StackWish, count: number): Edit =>
  (plan) => {
    const first = plan.sections.find((section) => section.id === id)
    if (!first) return plan
    const rows = stackRows(first, plan, wish)(count)
    const fits = rows.length / sidesBehind(first, plan)
    return fits < count ? refuse(stackRefusal(first, fits, count)) : addSections(...rows)(plan)
  }

/** Why a stack is shorter than was asked for. */
export function stackRefusal(first: Section, fits: number, asked: number): RefusalCode {
  const section = sectionNameOf(first)
  return fits === 0 ? { code: "no-room-for-stack", section } : { code: "stack-ends", section, fits, asked }
}
