import { addRanges } from "../../../geometry/hair/product"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import type { Price, ProductSheet } from "../../../presets/formula/productSheet"
import { bowl } from "../../../presets/timing/pace"
import { numberText } from "../text/numberText"
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
  notes: readonly string[]
}

/** The bowls of a mix and what follows from them, or what is wrong with its figures. */
export function planMix(
  foils: readonly BowlFoil[],
  choice: MixChoice,
): { ok: true; mix: MixPlan } | { ok: false; problems: string[] } {
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

function choiceProblems({ sheet, recipe }: MixChoice): string[] {
  const {
    ratio: { lightener, developer },
    developerPercent,
    scaleStepG,
  } = recipe
  const said = `${sheet.name}, ratio ${numberText(lightener)} : ${numberText(developer)}`
  const problems: string[] = []
  if (!(lightener > 0 && developer > 0 && Number.isFinite(lightener + developer)))
    problems.push(`${said}: give parts above 0, lightener first, for example 1 : 2.`)
  else if (lightener > developer)
    problems.push(
      `${said} holds more lightener than developer, as if turned upside down; write lightener first, ${numberText(developer)} : ${numberText(lightener)}.`,
    )
  if (!(developerPercent >= 0 && developerPercent <= 100))
    problems.push(
      `${sheet.name}, developer: ${numberText(developerPercent)} % is no strength; give 3 to 12 %.`,
    )
  if (!(scaleStepG > 0 && scaleStepG <= 10))
    problems.push(`scale: ${numberText(scaleStepG)} g is no step of a scale; give 0.1, 0.5, 1, 2 or 5 g.`)
  return problems
}

function foilProblems({ id, mapNumber, productG, placeMin }: BowlFoil): string[] {
  const inOrder = 0 <= productG.low && productG.low <= productG.mid && productG.mid <= productG.high
  const problems: string[] = []
  if (!inOrder || !Number.isFinite(productG.high))
    problems.push(
      `Foil ${mapNumber ?? id}: ${numberText(productG.low)} to ${numberText(productG.high)} g of product; give grams of 0 or more, the lower first.`,
    )
  if (!(placeMin >= 0 && Number.isFinite(placeMin)))
    problems.push(
      `Foil ${mapNumber ?? id}: ${numberText(placeMin)} minutes to place; give minutes of 0 or more.`,
    )
  return problems
}

const potLifeNotes = ({ sheet }: MixChoice, potLifeMin: number) =>
  sheet.potLifeMin === null
    ? [
        `${sheet.name} does not state how long a mix lasts; ${numberText(potLifeMin)} minutes taken (common practice).`,
      ]
    : []

const slowFoilNotes = (foils: readonly BowlFoil[], potLifeMin: number) =>
  foils
    .filter(({ placeMin }) => placeMin > potLifeMin)
    .map(
      ({ id, mapNumber }) =>
        `Foil ${mapNumber ?? id} takes longer to place than the ${numberText(potLifeMin)} minutes a mix lasts; part it in two.`,
    )

/** How far the scale's steps draw a bowl from its ratio, where that is more than 5 %. */
function roundingNotes(bowls: readonly Bowl[], { ratio, additives, scaleStepG }: Recipe): string[] {
  const wanted = ratio.developer / ratio.lightener
  const replaced = additives.reduce(
    (sum, { gPerG, replacesDeveloper }) => sum + (replacesDeveloper ? gPerG : 0),
    0,
  )
  const weighed = bowls.map(({ lightenerG, developerG }) => developerG / lightenerG + replaced)
  const furthest = weighed.toSorted((a, b) => Math.abs(b - wanted) - Math.abs(a - wanted))[0] ?? wanted
  return Math.abs(furthest / wanted - 1) <= 0.05
    ? []
    : [
        `In steps of ${numberText(scaleStepG)} g a bowl comes to 1 : ${numberText(furthest)} instead of 1 : ${numberText(wanted)}; a finer scale keeps to it.`,
      ]
}
