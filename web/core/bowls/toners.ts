import { linearGPerCm } from "../../../geometry/hair/hair"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { dragDownMm, tonerGPerG, usualTonerParts } from "../../../presets/formula/tones"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import type { Plan } from "../document/schema"
import { newToning, type TonerChoice } from "../document/toning"
import { netOf } from "../figures/measured"
import { type Amounts, mixAmounts } from "../mixing/mixAmounts"
import { labelPercent } from "../mixing/strength"
import { zoneOf } from "../schedule/scheduleFromPlan"
import type { ToneMix } from "../tone/tone"
import { tonesOfPlan } from "../tone/tonesOfPlan"

/** A toner mix of a plan: what it does, what it is made of once that is chosen, and its bowl once there is hair for it. */
export type TonerInPlan = {
  tone: ToneMix
  choice: TonerChoice | null
  wantedG: Range
  bowl: Amounts | null
}

/** The toner mixes of a plan in the order they go on, each weighed for the hair of its zone. */
export const tonersOfPlan = (plan: Plan): TonerInPlan[] =>
  tonesOfPlan(plan).map((tone) => {
    const { toner, rootShade } = plan.toning ?? newToning()
    const choice = tone.zone === "root-melt" ? rootShade : toner
    const wantedG = tonerG(hairOf(tone.zone, plan))
    return { tone, choice, wantedG, bowl: choice && wantedG.high > 0 ? bowlOf(choice, wantedG, plan) : null }
  })

/** How a product is mixed where nobody has said: its weakest developer, and the usual parts inside its sheet. */
export function usualChoice({ name, kind, developers, ratio }: ProductSheet): TonerChoice {
  if (kind === "direct-toner" || developers.length === 0)
    return { product: name, developerVolume: null, parts: 0 }
  return {
    product: name,
    developerVolume: Math.min(...developers.map(({ volume }) => volume)),
    parts: Math.min(ratio.high, Math.max(ratio.low, usualTonerParts)),
  }
}

const bowlOf = ({ developerVolume, parts }: TonerChoice, { high }: Range, { salon }: Plan): Amounts =>
  mixAmounts(high, {
    ratio: { lightener: 1, developer: parts },
    developerPercent: labelPercent(developerVolume ?? 0),
    additives: [],
    scaleStepG: salon?.scaleStepG ?? bowlFigures.scaleStepG.value,
  })

const tonerG = (hairG: number): Range => ({
  low: tonerGPerG.low * hairG,
  mid: tonerGPerG.mid * hairG,
  high: tonerGPerG.high * hairG,
})

/** Grams of hair of a zone: what was lightened of it, or for a root melt all hair of the bands as far as it is drawn down. */
function hairOf(zone: ToneMix["zone"], plan: Plan): number {
  const foils = plan.sections.filter(isFoil)
  const sum = (grams: readonly number[]) => grams.reduce((total, each) => total + each, 0)
  if (zone !== "root-melt")
    return sum(
      foils
        .filter((foil) => (zoneOf(foil, plan) === "hairline") === (zone === "hairline"))
        .map((foil) => netOf(foil, plan).hairG),
    )
  const drawnCm = (plan.consultation?.rootMeltMm ?? dragDownMm.mid) / 10
  const gPerCm = linearGPerCm(plan.hair.fibreUm, tradeFigures.hairGPerCm3)
  return sum(
    foils.map((foil) => {
      const { hairs, shareTaken, lengthCm } = netOf(foil, plan)
      return shareTaken > 0 ? (hairs / shareTaken) * Math.min(lengthCm, drawnCm) * gPerCm : 0
    }),
  )
}
