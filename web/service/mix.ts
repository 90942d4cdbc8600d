import { addRanges } from "../../geometry/product"
import type { Range } from "../../geometry/tradeFigures"
import { bowlFigures } from "../../presets/bowlFigures"
import { bowl } from "../../presets/pace"
import type { Price, ProductSheet } from "../../presets/productSheet"
import { type Bowl, type BowlFoil, planBowls } from "./bowls"
import type { Recipe } from "./mixAmounts"
import { numberText } from "./numberText"
import { type MixRatio, onHeadPercent } from "./strength"

/** What one mix of the plan is made of, as far as it is known. */
export type MixChoice = {
  sheet: Pick<ProductSheet, "name" | "potLifeMin" | "additives" | "price">
  ratio: MixRatio
  developerPercent: number
  developerPrice: Price | null
  /** What the scale shows, and the most mixed at once; the usual where left out. */
  scaleStepG?: number
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
  const bowls = planBowls(foils, recipeOf(choice), {
    potLifeMin,
    mostMixG: choice.mostMixG ?? bowlFigures.mostMixG.value,
  })
  const wantedG = addRanges(foils.map(({ productG }) => productG))
  const mixedG = bowls.reduce((sum, { mixedG }) => sum + mixedG, 0)
  return {
    ok: true,
    mix: {
      bowls,
      onHeadPercent: onHeadPercent(choice.developerPercent, choice.ratio),
      wantedG,
      mixedG,
      wasteG: { low: mixedG - wantedG.high, mid: mixedG - wantedG.mid, high: mixedG - wantedG.low },
      cost: costOf(bowls, choice),
      notes: [...potLifeNotes(choice, potLifeMin), ...slowFoilNotes(foils, potLifeMin)],
    },
  }
}

const recipeOf = ({ ratio, developerPercent, sheet, scaleStepG }: MixChoice): Recipe => ({
  ratio,
  developerPercent,
  additives: sheet.additives,
  scaleStepG: scaleStepG ?? bowlFigures.scaleStepG.value,
})

function costOf(bowls: readonly Bowl[], { sheet, developerPrice }: MixChoice): number | null {
  if (!sheet.price || !developerPrice) return null
  const gramPrice = ({ amount, forG }: Price) => amount / forG
  const [lightener, developer] = [gramPrice(sheet.price), gramPrice(developerPrice)]
  return bowls.reduce((sum, bowl) => sum + bowl.lightenerG * lightener + bowl.developerG * developer, 0)
}

function choiceProblems({
  ratio: { lightener, developer },
  developerPercent,
  sheet,
  scaleStepG,
}: MixChoice): string[] {
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
  if (scaleStepG !== undefined && !(scaleStepG > 0 && scaleStepG <= 10))
    problems.push(`scale: ${numberText(scaleStepG)} g is no step of a scale; give 0.1, 0.5 or 1 g.`)
  return problems
}

function foilProblems({ id, productG, placeMin }: BowlFoil): string[] {
  const inOrder = 0 <= productG.low && productG.low <= productG.mid && productG.mid <= productG.high
  const problems: string[] = []
  if (!inOrder || !Number.isFinite(productG.high))
    problems.push(
      `Foil ${id}: ${numberText(productG.low)} to ${numberText(productG.high)} g of product; give grams of 0 or more, the lower first.`,
    )
  if (!(placeMin >= 0 && Number.isFinite(placeMin)))
    problems.push(`Foil ${id}: ${numberText(placeMin)} minutes to place; give minutes of 0 or more.`)
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
      ({ id }) =>
        `Foil ${id} takes longer to place than the ${numberText(potLifeMin)} minutes a mix lasts; part it in two.`,
    )
