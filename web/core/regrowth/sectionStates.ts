import { leastRegrowthMm } from "../../../presets/placement/growth"
import type { Plan } from "../document/schema"
import type { Growth } from "./growth"
import { growthSince, type LightenedFoil, lastLightened, startMm } from "./lightened"
import { strandLengthCm } from "./strandLength"

/** Due: new growth is longer than the start was. Soft: it is not, and the blend may stay. Too early: too short to be foiled at all. */
export type RegrowthState = "due" | "soft" | "too-early"

/** A foil of the last time, how it stands now, and where its lightened hair begins, mm from the scalp. */
export type OldFoil = {
  lightened: LightenedFoil
  state: RegrowthState
  startMm: number
  beginsMm: Growth
}

/** Where doubt is, the least growth counts: nothing is called due that may not be. */
export function stateOf(startMm: number, { lowMm }: Growth): RegrowthState {
  if (lowMm < leastRegrowthMm.value) return "too-early"
  return lowMm > startMm ? "due" : "soft"
}

/** The foils of the last time, in their order. */
export function oldFoils(plan: Plan): readonly OldFoil[] {
  const last = lastLightened(plan)
  if (!last) return []
  const growth = growthSince(plan, last.on)
  return last.foils.map((lightened) => {
    const start = startMm(lightened.section, strandLengthCm(lightened.section, plan).least)
    return {
      lightened,
      state: stateOf(start, growth),
      startMm: start,
      beginsMm: beginsAt(start, growth),
    }
  })
}

/** A start moves away from the scalp by all that grows. */
export const beginsAt = (startMm: number, { lowMm, midMm, highMm }: Growth): Growth => ({
  lowMm: startMm + lowMm,
  midMm: startMm + midMm,
  highMm: startMm + highMm,
})
