import { type Foil, isFoil } from "../../geometry/section/section"
import { rootDistanceMm } from "../../presets/foils"
import { tradeFigures } from "../../presets/tradeFigures"
import { newConsultation } from "../plan/consultation"
import { headOf } from "../plan/measured"
import { sheetOf } from "../plan/salon"
import type { Plan } from "../plan/schema"
import type { Now } from "./alertTest"
import { checkVisit } from "./cautions"
import type { PlannedMix, Visit } from "./rules/rule"

/** A plan as the rules of the visit see it. */
export function visitOf(plan: Plan, now: Now): Visit {
  const foils = plan.sections.filter(isFoil)
  const mixes = plan.mixes.map(({ id, product, developerVolume, ratio }): PlannedMix => {
    const own = foils.filter(({ mix }) => mix === id)
    return {
      id,
      product,
      sheet: sheetOf(product, plan),
      developerVolume,
      ratio,
      heatMin: plan.timing?.heatMin ?? 0,
      near: {
        hairline: own.some((foil) => isAtHairline(foil, plan)),
        scalp: own.some((foil) => foil.rootDistanceMm < rootDistanceMm.tight.range[0]),
        cushion: own.some(({ kind }) => kind === "backcomb"),
      },
    }
  })
  return { consultation: plan.consultation ?? newConsultation(), mixes, now }
}

/** The stops and cautions of a plan at a moment. */
export const checkPlan = (plan: Plan, now: Now) => checkVisit(visitOf(plan, now))

/** This moment, where this clock hangs. */
export const nowHere = (): Now => ({
  moment: new Date().toISOString(),
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
})

/** The middle of its parting lies in the sparser band along the hairline. */
function isAtHairline({ parting }: Foil, plan: Plan) {
  const middle = parting[parting.length >> 1]
  return headOf(plan).hairline.coordinates(middle).behindMm <= tradeFigures.hairlineBandMm
}
