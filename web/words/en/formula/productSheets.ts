import type { ProductSheet } from "../../../../presets/formula/productSheet"
import type { MinuteField, SheetProblem } from "../../../core/mixing/productSheet"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

/** What is printed on a tub, typed in field by field. */
export const productSheets = (t: Tools) => ({
  title: "Your product sheets",
  saved: "Saved product sheets",
  add: "Add a product sheet",
  fromInvented: "or start from an invented one",
  chooseOne: "Choose one",

  name: "Name on the tub",
  kind: "It is a",
  kinds: {
    lightener: "Lightener",
    "oxidative-toner": "Toner with developer",
    "root-shade": "Root shade",
    "direct-toner": "Toner without developer",
  } satisfies Record<ProductSheet["kind"], string>,
  form: "It comes as",
  forms: { powder: "Powder", clay: "Clay", cream: "Cream", liquid: "Liquid" } satisfies Record<
    ProductSheet["form"],
    string
  >,
  ratio: "Parts of developer to 1 of product, by weight",
  thickest: "Thickest mix",
  thinnest: "Thinnest mix",
  parts: "parts",

  developers: "Developers allowed",
  volume: ({ volume, percent }: { volume: number; percent: number }) =>
    `${t.number(volume)} vol, ${t.number(percent)} %`,
  addVolume: (volume: number) => `Add ${t.number(volume)} vol`,
  removeVolume: (volume: number) => `Remove ${t.number(volume)} vol`,
  otherVolume: "or another",
  liftsFrom: "Lifts from",
  liftsTo: "to",

  longest: "Maximum time",
  potLife: "Pot life",
  firstCheck: "First check at",
  onScalp: "On-scalp use allowed?",
  patchTest: "Patch test required by the maker?",
  heat: "Heat allowed?",
  heatMost: "Heat, at most",
  answers: { yes: "Yes", no: "No", silent: "Not stated" },

  additives: "Additives allowed",
  additiveName: "Name",
  additiveGrams: "Per gram of product",
  replaces: "In place of developer?",
  addAdditive: "Add an additive",
  removeAdditive: "Remove",

  price: "Price",
  priceFor: "for",

  beforeSaving: "Before it can be saved",
  save: "Save this product sheet",
  cancel: "Cancel",
  remove: "Remove this product sheet",
  nameTaken: ({ name }: { name: string }) =>
    `There is a product sheet of ${name} already. Open that one instead.`,
  problem: sheetProblemWords(t),
})

const minuteNames: Record<MinuteField, string> = {
  longestMin: "Maximum time",
  heatMin: "Heat",
  potLifeMin: "Pot life",
}

const sheetProblemWords = (t: Tools) => {
  const ratio = ({ low, high }: { low: number; high: number }) =>
    `1 : ${t.number(low)} to 1 : ${t.number(high)}`
  return {
    "no-name": "Name: the product has none. Enter what is on the tub.",
    "no-ratio": "Ratio: not entered. Enter parts of developer to 1 of product, for example 1.5 to 2.5.",
    "ratio-impossible": (said) =>
      `Ratio: ${ratio(said)} is no mixing ratio. Enter parts of developer to 1 of product, for example 1.5 to 2.5.`,
    "ratio-backwards": (said) =>
      `Ratio: ${ratio(said)} runs backwards. Enter the thicker mix first: ${t.number(said.high)} to ${t.number(said.low)}.`,
    "ratio-upside-down": (said) =>
      `Ratio: ${ratio(said)} is more product than developer. If the tub says 1 : ${t.number(1 / said.high)}, enter ${t.number(1 / said.high)}.`,
    "no-developers":
      "Developers: none entered. Add each strength the sheet allows, for example 10, 20 and 30 vol.",
    "developer-twice": ({ volume }) => `Developers: ${t.number(volume)} vol stands there twice. Remove one.`,
    "developer-impossible": ({ volume, mostVolume, mostPercent }) =>
      `Developers: ${t.number(volume)} vol is no developer. Enter 1 to ${t.number(mostVolume)} vol: at most ${t.number(mostPercent)} % in the EU and the UK.`,
    "lift-impossible": ({ volume, low, high, mostLevels }) =>
      `Developers: ${t.number(low)} to ${t.number(high)} levels for ${t.number(volume)} vol is no lift. Enter the lower figure first, from 0 to ${t.number(mostLevels)}, or leave both empty.`,
    "lift-falls": ({ volume, weakerVolume }) =>
      `Developers: ${t.number(volume)} vol lifts less than ${t.number(weakerVolume)} vol. Check both against the tub.`,
    "minutes-impossible": ({ field, minutes, least, most }) =>
      `${minuteNames[field]}: ${t.number(minutes)} minutes cannot be. Enter ${t.whole(least)} to ${t.whole(most)}, or leave it empty if the sheet does not say.`,
    "heat-past-longest": "Heat: longer than the maximum time. Check both against the tub.",
    "additive-no-name": "Additives: one has no name. Enter what is on the bottle, or remove it.",
    "additive-grams": ({ name, gPerG }) =>
      name
        ? `Additives: ${t.number(gPerG)} g of ${name} to 1 g of product. Enter 0 to 1 g.`
        : `Additives: ${t.number(gPerG)} g to 1 g of product. Enter 0 to 1 g.`,
    "price-impossible": "Price: enter an amount of 0 or more and the grams it buys, or leave it empty.",
  } satisfies Sentences<SheetProblem>
}
