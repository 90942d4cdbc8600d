import { isNear, overlapCm2 } from "../../../geometry/section/overlap"
import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { leastToldCm2 } from "../figures/overlaps"
import type { Growth } from "./growth"
import { growthSince, isOfFoil, type LightenedFoil, startMm } from "./lightened"
import { beginsAt } from "./sectionStates"
import { strandLengthCm } from "./strandLength"

/** Hair that a foil would coat though it is lightened: from where to where along the strand, mm from the scalp. */
export type CoatedTwice = { foil: Foil; lightened: LightenedFoil; fromMm: number; toMm: number }

/** Less than this along the strand, mm, is the width of a brush's edge. */
const leastMm = 0.5

const known = new WeakMap<Plan, readonly CoatedTwice[]>()

/**
 * Every foil that would coat lightened hair, found where bands meet on the scalp and where product and lightened hair meet
 * along the strand. Both ends are taken as near to each other as they may be.
 */
export function coatedTwice(plan: Plan): readonly CoatedTwice[] {
  const found = known.get(plan) ?? plan.sections.filter(isFoil).flatMap((foil) => twiceOf(foil, plan))
  known.set(plan, found)
  return found
}

function twiceOf(foil: Foil, plan: Plan): CoatedTwice[] {
  const found = lightenedIn(foil, plan)
  if (found.length === 0) return []
  const coat = coatMm(foil, plan)
  return found.flatMap(({ lightened, beginsMm }) => {
    const fromMm = Math.max(coat.fromMm, beginsMm.lowMm)
    return coat.toMm - fromMm < leastMm ? [] : [{ foil, lightened, fromMm, toMm: coat.toMm }]
  })
}

/** Where product goes along a foil, mm from the scalp: from its nearest start, on the shortest strand, to its farthest end, on the longest. */
export function coatMm(foil: Foil, plan: Plan): { fromMm: number; toMm: number } {
  const { least, most } = strandLengthCm(foil, plan)
  return { fromMm: startMm(foil, least), toMm: 10 * most * foil.strand.to }
}

type Lightened = { lightened: LightenedFoil; beginsMm: Growth }
type Remembered = { of: readonly unknown[]; found: readonly Lightened[] }

/** By foil, for as long as what it is held against stays the same: an edit of one foil holds that one alone anew. */
const remembered = new WeakMap<Foil, Remembered>()

/** Lightened hair in a foil, and where it begins by now. It reaches to the ends, whatever was cut since: what was not coated grew out or off. */
function lightenedIn(foil: Foil, plan: Plan): readonly Lightened[] {
  if (!plan.lightened) return []
  const of = [headOf(plan), plan.hair, plan.lightened, plan.regrowth, plan.date]
  const last = remembered.get(foil)
  if (last && of.every((each, i) => each === last.of[i])) return last.found
  const found = lightenedNow(foil, plan)
  remembered.set(foil, { of, found })
  return found
}

function lightenedNow(foil: Foil, plan: Plan): readonly Lightened[] {
  const head = headOf(plan)
  const near = (plan.lightened ?? []).filter(isOfFoil).filter(({ section }) => isNear(foil, section, head))
  if (near.length === 0) return []
  const leastCm2 = leastToldCm2(foil, head)
  return near
    .filter(({ section }) => overlapCm2(section, foil, head) >= leastCm2)
    .map((lightened) => ({ lightened, beginsMm: beginsNow(lightened, plan) }))
}

function beginsNow({ section, on }: LightenedFoil, plan: Plan): Growth {
  const start = startMm(section, strandLengthCm(section, plan).least)
  return beginsAt(start, growthSince(plan, on))
}

/** The line that product must not pass on a foil: where the nearest lightened hair in it begins; null where there is none. */
export const lightenedLine = (foil: Foil, plan: Plan): Growth | null =>
  lightenedIn(foil, plan)
    .map(({ beginsMm }) => beginsMm)
    .toSorted((a, b) => a.lowMm - b.lowMm)[0] ?? null
