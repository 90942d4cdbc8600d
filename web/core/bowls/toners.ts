import { linearGPerCm } from "../../../geometry/hair/hair"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../geometry/section/section"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { clearShare, tonerGPerG, usualTonerParts } from "../../../presets/formula/tones"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import type { Plan } from "../document/schema"
import type { TonerChoice } from "../document/toning"
import { netOf } from "../figures/measured"
import { type Amounts, mixAmounts, roundTo } from "../mixing/mixAmounts"
import { labelPercent } from "../mixing/strength"
import { zoneOf } from "../schedule/scheduleFromPlan"
import type { ToneMix } from "../tone/tone"
import { tonerOf, tonesOfPlan } from "../tone/tonesOfPlan"

/** A bowl of toner, which goes on every zone of one shade; its clear is weighed beside the toner. */
export type TonerInPlan = {
  /** The zones it goes on, in their order. */
  tones: readonly [ToneMix, ...ToneMix[]]
  choice: TonerChoice | null
  wantedG: Range
  /** Null until a product is chosen and there is hair for it. */
  bowl: TonerBowl | null
}

/** What is weighed, the toner as `lightenerG`, without its clear. */
export type TonerBowl = Amounts & { clearG: number }

/** The toners of a plan in the order they go on, each weighed for the hair of its zones. */
export const tonersOfPlan = (plan: Plan): TonerInPlan[] =>
  groupedByShade(tonesOfPlan(plan)).map((tones) => {
    const choice = tonerOf(tones[0].zone, plan)
    const wantedG = tonerG(tones.reduce((sum, tone) => sum + hairOf(tone, plan), 0))
    const bowl = choice && wantedG.high > 0 ? bowlOf(choice, tones[0], { wantedG, plan }) : null
    return { tones, choice, wantedG, bowl }
  })

/** Zones of one shade share a bowl. A level that is not known yet is no shade. */
function groupedByShade(tones: readonly ToneMix[]): [ToneMix, ...ToneMix[]][] {
  const groups: [ToneMix, ...ToneMix[]][] = []
  for (const tone of tones) {
    const same = groups.find(([{ family, strength }]) => family === tone.family && strength === tone.strength)
    if (same) same.push(tone)
    else groups.push([tone])
  }
  return groups
}

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

function bowlOf(
  { developerVolume, parts }: TonerChoice,
  { strength }: ToneMix,
  { wantedG, plan: { salon } }: { wantedG: Range; plan: Plan },
): TonerBowl {
  const scaleStepG = salon?.scaleStepG ?? bowlFigures.scaleStepG.value
  const amounts = mixAmounts(wantedG.high, {
    ratio: { lightener: 1, developer: parts },
    developerPercent: labelPercent(developerVolume ?? 0),
    additives: [],
    scaleStepG,
    least: { productG: scaleStepG, mixG: bowlFigures.leastTonerMixG.value },
  })
  const clearG = roundTo(amounts.lightenerG * clearShare[strength], scaleStepG)
  return { ...amounts, lightenerG: Number((amounts.lightenerG - clearG).toFixed(3)), clearG }
}

const tonerG = (hairG: number): Range => ({
  low: tonerGPerG.low * hairG,
  mid: tonerGPerG.mid * hairG,
  high: tonerGPerG.high * hairG,
})

/** Grams of hair of a zone: what was lightened of it, or for a root melt all hair of the bands as far as it is drawn down. */
function hairOf({ zone, tone }: ToneMix, plan: Plan): number {
  const foils = plan.sections.filter(isFoil)
  const sum = (grams: readonly number[]) => grams.reduce((total, each) => total + each, 0)
  if (tone.code !== "melt")
    return sum(
      foils
        .filter((foil) => (zoneOf(foil, plan) === "hairline") === (zone === "hairline"))
        .map((foil) => netOf(foil, plan).hairG),
    )
  const drawnCm = tone.downMm / 10
  const gPerCm = linearGPerCm(plan.hair.fibreUm, tradeFigures.hairGPerCm3)
  return sum(
    foils.map((foil) => {
      const { hairs, shareTaken, lengthCm } = netOf(foil, plan)
      return shareTaken > 0 ? (hairs / shareTaken) * Math.min(lengthCm, drawnCm) * gPerCm : 0
    }),
  )
}
