import { isFoil, type Section } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { twinOf } from "../document/pairs"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"

/** What is shown to students as one step: sections that follow each other in the order of application and are worked alike. */
export type TeachingStep = {
  /** One a row, on the side that is worked first. */
  rows: readonly Section[]
  /** The rows and their twins, in the order of application. */
  sections: readonly Section[]
  isPair: boolean
  /** Of a pair of rows: side by side, each row on both sides before the next; else all of one side first. */
  isEachRow: boolean
  /** Hair left between one row and the next, mm; null for a single row. */
  gapMm: number | null
}

/** A plan as steps; one after the other they are the order of application, as the map, the list and the clock have it. */
export function teachingSteps(plan: Plan): TeachingStep[] {
  const steps: TeachingStep[] = []
  for (const own of nextToTwins(plan)) {
    const last = steps.at(-1)
    const gapMm = last ? gapBehind(last, own[0], own.length === 2, plan) : null
    if (last && gapMm !== null)
      steps[steps.length - 1] = {
        ...last,
        rows: [...last.rows, own[0]],
        sections: [...last.sections, ...own],
        gapMm,
      }
    else steps.push({ rows: [own[0]], sections: own, isPair: own.length === 2, isEachRow: true, gapMm: null })
  }
  return sideBySide(steps, plan)
}

/** Each section, with its twin where that is the very next. */
function nextToTwins(plan: Plan): Section[][] {
  const groups: Section[][] = []
  for (const section of plan.sections) {
    const last = groups.at(-1)
    if (last?.length === 1 && twinOf(last[0], plan) === section) last.push(section)
    else groups.push([section])
  }
  return groups
}

/** Rows of one side and then their twins, row for row, are one step as well. */
function sideBySide(steps: readonly TeachingStep[], plan: Plan): TeachingStep[] {
  const joined: TeachingStep[] = []
  for (const step of steps) {
    const last = joined.at(-1)
    if (last && isOtherSide(last, step, plan))
      joined[joined.length - 1] = {
        ...last,
        sections: [...last.sections, ...step.sections],
        isPair: true,
        isEachRow: false,
      }
    else joined.push(step)
  }
  return joined
}

const isOtherSide = (one: TeachingStep, other: TeachingStep, plan: Plan) =>
  !one.isPair &&
  !other.isPair &&
  one.rows.length === other.rows.length &&
  one.rows.every((row, i) => twinOf(row, plan) === other.rows[i])

/**
 * Rows are one step while they lie no farther apart than this, begin no farther along, have their middles no farther
 * along, and their gaps differ by no more, mm. Where they end says nothing: the nearest hairline may be another there.
 */
const farthest = { apart: 25, startsAlong: 12, along: 30, uneven: 1.5 }

/** The hair left between the last row of a step and a section, when that is the same again behind it; else null. */
function gapBehind(step: TeachingStep, section: Section, isPair: boolean, plan: Plan): number | null {
  const before = step.rows[step.rows.length - 1]
  if (!isFoil(section) || isPair !== step.isPair || !isAlike(before, section)) return null
  const { hairline } = headOf(plan)
  const ends = pointsOf(section).map((at, i) => {
    const [from, to] = [hairline.coordinates(pointsOf(before)[i]), hairline.coordinates(at)]
    return { behindMm: to.behindMm - from.behindMm, alongMm: Math.abs(to.alongMm - from.alongMm) }
  })
  const taken = section.taken === "front" ? section.depthMm : before.depthMm
  const gapMm = ends[1].behindMm - (taken.start + taken.end) / 2
  const steps = ends.map(({ behindMm }) => behindMm)
  const isParallel = Math.max(...steps) - Math.min(...steps) <= 2 * farthest.uneven
  const isBeside = ends[0].alongMm < farthest.startsAlong && ends[1].alongMm < farthest.along
  const isBehind = isParallel && isBeside && ends[1].behindMm > 0
  const isEven = step.gapMm === null || Math.abs(gapMm - step.gapMm) <= farthest.uneven
  return isBehind && gapMm > -0.5 && gapMm < farthest.apart && isEven ? (step.gapMm ?? gapMm) : null
}

const pointsOf = ({ parting }: Section): readonly SurfacePoint[] => [
  parting[0],
  parting[parting.length >> 1],
  parting[parting.length - 1],
]

/** Whether two sections are worked in the same way: all but where they lie and what they are called is alike. */
export const isAlike = (one: Section, other: Section) => wayOf(one) === wayOf(other)

const ownFields: readonly string[] = ["id", "parting", "note", "twin", "mapNumber", "name", "mayCross"]

const wayOf = (section: Section) =>
  JSON.stringify(
    Object.entries(section)
      .filter(([field, value]) => value !== undefined && !ownFields.includes(field))
      .toSorted(([one], [other]) => (one < other ? -1 : 1))
      .map(([field, value]) => [field, isGroup(value) ? Object.entries(value).toSorted() : value]),
  )

const isGroup = (value: unknown): value is object => typeof value === "object" && value !== null
