import { overlapCm2 } from "../../../geometry/section/overlap"
import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Lightened, Plan } from "../document/schema"
import { headOf } from "../figures/measured"
import { leastToldCm2 } from "../figures/overlaps"
import { remembered } from "../memory/remembered"
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

const twiceOf = (foil: Foil, plan: Plan): CoatedTwice[] =>
  (plan.lightened ?? []).filter(isOfFoil).flatMap((lightened) => {
    const stretch = sharedStretch(foil, lightened, plan)
    if (stretch.toMm - stretch.fromMm < leastMm || !shareScalp(foil, lightened, plan)) return []
    return [{ foil, lightened, ...stretch }]
  })

/** Lightened hair reaches to the ends, whatever was cut since: the part of the strand that was not coated grew out or off. */
function sharedStretch(foil: Foil, lightened: LightenedFoil, plan: Plan) {
  const { least, most } = strandLengthCm(foil, plan)
  const start = startMm(lightened.section, strandLengthCm(lightened.section, plan).least)
  const { lowMm } = beginsAt(start, growthSince(plan, lightened.on))
  return { fromMm: Math.max(startMm(foil, least), lowMm), toMm: 10 * most * foil.strand.to }
}

const shareScalp = (foil: Foil, { section }: Lightened, plan: Plan) => {
  const head = headOf(plan)
  return overlapCm2(section, foil, head) >= leastToldCm2(foil, head)
}
