import { isNear, overlapCm2 } from "../../../geometry/section/overlap"
import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { leastToldCm2 } from "../figures/overlaps"
import { remembered, rememberedLast } from "../memory/remembered"
import type { Growth } from "./growth"
import { growthSince, isOfFoil, type LightenedFoil, startMm } from "./lightened"
import { beginsAt } from "./sectionStates"
import { strandLengthCm } from "./strandLength"

/** Hair that a foil would coat though it is lightened: from where to where along the strand, mm from the scalp. */
export type CoatedTwice = { foil: Foil; lightened: LightenedFoil; fromMm: number; toMm: number }

/** Less than this along the strand, mm, is the width of a brush's edge. */
const leastMm = 0.5

/**
 * Every foil that would coat lightened hair, found where bands meet on the scalp and where product and lightened hair meet
 * along the strand. Both ends are taken as near to each other as they may be.
 */
export const coatedTwice = remembered((plan: Plan): readonly CoatedTwice[] =>
  plan.sections.filter(isFoil).flatMap((foil) => twiceOf(foil, plan)),
)

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
/** Lightened hair in a foil, and where it begins by now. It reaches to the ends, whatever was cut since: what was not coated grew out or off. */
const lightenedIn = (foil: Foil, plan: Plan): readonly Lightened[] =>
  plan.lightened ? lightenedOn(foil, plan) : []

/** By foil, for as long as what it is held against stays the same: an edit of one foil holds that one alone anew. */
const lightenedOn = rememberedLast(
  (a: Plan, b: Plan) =>
    headOf(a) === headOf(b) &&
    a.hair === b.hair &&
    a.lightened === b.lightened &&
    a.regrowth === b.regrowth &&
    a.date === b.date,
  lightenedNow,
)

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
