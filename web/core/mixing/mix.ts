import { addRanges } from "../../../geometry/hair/product"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { Price, ProductSheet } from "../../../presets/formula/productSheet"
import { bowl } from "../../../presets/timing/pace"
import { type Bowl, type BowlFoil, planBowls } from "./bowls"
import type { Recipe } from "./mixAmounts"
import { onHeadPercent } from "./strength"

/** What one mix of the plan is made of, as far as it is known. */
export type MixChoice = {
  sheet: Pick<ProductSheet, "name" | "potLifeMin" | "price">
  recipe: Recipe
  developerPrice: Price | null
  /** The most mixed at once; the usual where left out. */
  mostMixG?: number
}

/** Everything about a mix that is weighed, poured, placed and thrown away. */
export type MixPlan = {
  bowls: readonly Bowl[]
  onHeadPercent: number
  wantedG: Range
  mixedG: number
  /** Mixed minus placed: least when every foil takes its upper figure. */
  wasteG: Range
  /** In the salon's own money; null where a price is not given. */
  cost: number | null
  notes: readonly MixNote[]
}

/** A figure of a mix that cannot be. A foil by its number on the map, or its id where it has none. */
export type MixProblem =
  | { code: "ratio-parts"; product: string; lightener: number; developer: number }
  | { code: "ratio-upside-down"; product: string; lightener: number; developer: number }
  | { code: "no-strength"; product: string; percent: number }
  | { code: "scale-step"; grams: number }
  | { code: "foil-grams"; foil: number | string; lowG: number; highG: number }
  | { code: "foil-minutes"; foil: number | string; minutes: number }

/** What is to be known beside a mix. Parts are of developer to 1 of lightener. */
export type MixNote =
  | { code: "pot-life-assumed"; product: string; minutes: number }
  | { code: "foil-outlasts-bowl"; foil: number | string; minutes: number }
  | { code: "off-ratio"; scaleStepG: number; parts: number; wantedParts: number }

/** The bowls of a mix and what follows from them, or what is wrong with its figures. */
export function planMix(
  foils: readonly BowlFoil[],
  choice: MixChoice,
): { ok: true; mix: MixPlan } | { ok: false; problems: MixProblem[] } {
  const problems = [...choiceProblems(choice), ...foils.flatMap(foilProblems)]
  if (problems.length > 0) return { ok: false, problems }
  const potLifeMin = choice.sheet.potLifeMin ?? bowl.potLifeMin
  const { recipe } = choice
  const bowls = planBowls(foils, recipe, {
    potLifeMin,
    mostMixG: choice.mostMixG ?? bowlFigures.mostMixG.value,
  })
  const wantedG = addRanges(foils.map(({ productG }) => productG))
  const mixedG = bowls.reduce((sum, { mixedG }) => sum + mixedG, 0)
  return {
    ok: true,
    mix: {
      bowls,
      onHeadPercent: onHeadPercent(recipe.developerPercent, recipe.ratio),
      wantedG,
      mixedG,
      wasteG: { low: mixedG - wantedG.high, mid: mixedG - wantedG.mid, high: mixedG - wantedG.low },
      cost: costOf(bowls, choice),
      notes: [
        ...potLifeNotes(choice, potLifeMin),
        ...slowFoilNotes(foils, potLifeMin),
        ...roundingNotes(bowls, recipe),
      ],
    },
  }
}

function costOf(bowls: readonly Bowl[], { sheet, developerPrice }: MixChoice): number | null {
  if (!sheet.price || !developerPrice) return null
  const gramPrice = ({ amount, forG }: Price) => amount / forG
  const [lightener, developer] = [gramPrice(sheet.price), gramPrice(developerPrice)]
  return bowls.reduce((sum, bowl) => sum + bowl.lightenerG * lightener + bowl.developerG * developer, 0)
}

function choiceProblems({ sheet: { name: product }, recipe }: MixChoice): MixProblem[] {
  const { ratio, developerPercent, scaleStepG } = recipe
  const { lightener, developer } = ratio
  const problems: MixProblem[] = []
  if (!(lightener > 0 && developer > 0 && Number.isFinite(lightener + developer)))
    problems.push({ code: "ratio-parts", product, ...ratio })
  else if (lightener > developer) problems.push({ code: "ratio-upside-down", product, ...ratio })
  if (!(developerPercent >= 0 && developerPercent <= 100))
    problems.push({ code: "no-strength", product, percent: developerPercent })
  if (!(scaleStepG > 0 && scaleStepG <= 10)) problems.push({ code: "scale-step", grams: scaleStepG })
  return problems
}

function foilProblems({ id, mapNumber, productG, placeMin }: BowlFoil): MixProblem[] {
  const foil = mapNumber ?? id
  const { low: lowG, mid, high: highG } = productG
  const inOrder = 0 <= lowG && lowG <= mid && mid <= highG
  const problems: MixProblem[] = []
  if (!inOrder || !Number.isFinite(highG)) problems.push({ code: "foil-grams", foil, lowG, highG })
  if (!(placeMin >= 0 && Number.isFinite(placeMin)))
    problems.push({ code: "foil-minutes", foil, minutes: placeMin })
  return problems
}

const potLifeNotes = ({ sheet }: MixChoice, minutes: number): MixNote[] =>
  sheet.potLifeMin === null ? [{ code: "pot-life-assumed", product: sheet.name, minutes }] : []

const slowFoilNotes = (foils: readonly BowlFoil[], minutes: number): MixNote[] =>
  foils
    .filter(({ placeMin }) => placeMin > minutes)
    .map(({ id, mapNumber }) => ({ code: "foil-outlasts-bowl", foil: mapNumber ?? id, minutes }))

/** How far the scale's steps draw a bowl from its ratio, where that is more than 5 %. */
function roundingNotes(bowls: readonly Bowl[], { ratio, additives, scaleStepG }: Recipe): MixNote[] {
  const wanted = ratio.developer / ratio.lightener
  const replaced = additives.reduce(
    (sum, { gPerG, replacesDeveloper }) => sum + (replacesDeveloper ? gPerG : 0),
    0,
  )
  const weighed = bowls.map(({ lightenerG, developerG }) => developerG / lightenerG + replaced)
  const furthest = weighed.toSorted((a, b) => Math.abs(b - wanted) - Math.abs(a - wanted))[0] ?? wanted
  return Math.abs(furthest / wanted - 1) <= 0.05
    ? []
    : [{ code: "off-ratio", scaleStepG, parts: furthest, wantedParts: wanted }]
}
