import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { AdditiveSheet } from "../../../presets/formula/productSheet"
import { densityGPerMl, type MixRatio } from "./strength"

/** How a bowl is mixed: by mass, developer in % w/w, on a scale that shows steps of so many grams. */
export type Recipe = {
  ratio: MixRatio
  developerPercent: number
  additives: readonly AdditiveSheet[]
  scaleStepG: number
  /** The smallest mix, and how much product is in it at least; those of a powder where left out. */
  least?: { productG: number; mixG: number }
}

export type AdditiveChoices = { name: string; grams: number; replacesDeveloper: boolean }

/** What goes into one bowl, in the order of weighing. */
export type Amounts = {
  lightenerG: number
  developerG: number
  /** For those who pour: at 20 C, as of peroxide in water. */
  developerMl: number
  additives: readonly AdditiveChoices[]
  mixedG: number
}

const { stayG, stayShare, leastLightenerG, leastMixG } = bowlFigures
const leastOfPowder = { productG: leastLightenerG.value, mixG: leastMixG.value }

/** Grams to mix so that the wanted grams can be placed. */
export const toMixG = (wantedG: number) => wantedG * (1 + stayShare.value) + stayG.value

/**
 * Amounts for the wanted grams: the powder first, rounded up to what the scale shows, then developer to match it.
 * An additive takes the place of developer only where its sheet says so.
 */
export function mixAmounts(wantedG: number, recipe: Recipe): Amounts {
  const { ratio, developerPercent, additives, scaleStepG, least = leastOfPowder } = recipe
  const share = ratio.lightener / (ratio.lightener + ratio.developer)
  const leastG = Math.max(least.productG, least.mixG * share)
  const lightenerG = roundUp(Math.max(leastG, toMixG(wantedG) * share), scaleStepG)
  const stirredIn = additives.map(({ name, gPerG, replacesDeveloper }) => ({
    name,
    grams: roundTo(lightenerG * gPerG, 0.1),
    replacesDeveloper,
  }))
  const replacedG = sum(
    additives.map(({ gPerG, replacesDeveloper }) => (replacesDeveloper ? lightenerG * gPerG : 0)),
  )
  const wholeDeveloperG = (lightenerG * ratio.developer) / ratio.lightener
  const developerG = roundTo(Math.max(0, wholeDeveloperG - replacedG), scaleStepG)
  return {
    lightenerG,
    developerG,
    developerMl: roundTo(developerG / densityGPerMl(developerPercent), 1),
    additives: stirredIn,
    mixedG: tidy(lightenerG + developerG + sum(stirredIn.map(({ grams }) => grams))),
  }
}

export const roundTo = (value: number, step: number) => tidy(Math.round(value / step) * step)
const roundUp = (value: number, step: number) => tidy(Math.ceil(value / step - 1e-9) * step)

/** Steps of a tenth leave crumbs in the last digits. */
const tidy = (grams: number) => Number(grams.toFixed(3))
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
