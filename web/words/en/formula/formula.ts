import type { MixingCaution } from "../../../../presets/formula/cautions"
import type { Tools } from "../../tools"
import { type FoilNames, mixing } from "./mixing"
import { onSheet } from "./onSheet"
import { productSheets } from "./productSheets"
import { quote } from "./quote"
import { stock } from "./stock"
import { tone } from "./tone"

/** What is mixed, how strong, how thick and how much; what it is toned with; what is in stock. */
export const formula = (t: Tools, shared: FoilNames) => ({
  done: {
    "change-developer": ({ mix }: { mix: string }) => `Change the developer of mix ${mix}`,
    "change-ratio": ({ mix }: { mix: string }) => `Change the ratio of mix ${mix}`,
    "change-product": ({ mix }: { mix: string }) => `Change the product of mix ${mix}`,
    "change-additives": ({ mix }: { mix: string }) => `Change the additives of mix ${mix}`,
    "plan-today": ({ level }: { level: number }) =>
      `Plan today to level ${t.number(level)}, and the next visit`,
    "add-mix": ({ mix }: { mix: string }) => `Add mix ${mix}`,
    "remove-mix": ({ mix }: { mix: string }) => `Remove mix ${mix}`,
    "give-foil-mix": ({ foil, mix }: { foil: number; mix: string }) =>
      `Give foil ${t.whole(foil)} mix ${mix}`,
    "use-suggestion": "Use the suggested mixes",
    "change-root-melt": "Change the root melt",
    "change-toner": "Change the toner",
    "change-root-shade": "Change the root shade",
    "use-salon-figures": "Use the salon’s own figures",
    "save-sheet": ({ product }: { product: string }) => `Save the product sheet of ${product}`,
    "remove-sheet": ({ product }: { product: string }) => `Remove the product sheet of ${product}`,
    "change-bottles": "Change the developers in stock",
    "change-contact": "Change the salon’s contact",
    "change-scale": "Change the scale resolution",
    "change-price": "Change a price",
    "change-developer-price": "Change the price of developer",
  },

  title: "Formula",
  before: "Before you mix",
  allCautions: "All cautions",
  caution: cautionWords satisfies Record<MixingCaution, string>,
  mixing: mixing(t, shared),
  tone: tone(t),
  quote: quote(t),
  productSheets: productSheets(t),
  stock: stock(t),
  onSheet: onSheet(t, tone(t)),
})

const cautionWords = {
  directions:
    "The maker’s directions come first (ratio, developer, time), then local law and licensing rules, then your professional judgement.",
  tests:
    "Strand test first, and any patch test the maker asks for. A test counts once its result has been read.",
  gloves:
    "Gloves to mix, apply and rinse; eye protection when mixing powder or pouring developer. Keep product off eyes, lashes and brows. In an eye: rinse at once.",
  air: "Ventilate when you mix powder; no fan on it; avoid the dust. Mix small amounts fresh. Cover the bowl loosely; never seal it.",
  bowl: "Mix only what the maker allows, in a non-metal bowl with a non-metal tool. Never return leftovers to the tub.",
  flames:
    "No flames, hot tools or aerosols (hairspray, dry shampoo) near powder, mix or foils. Foils with product go into water, not into the bin.",
  heat: "No heat unless the maker’s directions allow it. If the client feels warmth, stinging or pain: take the foil off and rinse. Burns can show later.",
  time: "Never longer on the hair than the directions say; then rinse thoroughly. Lightener is never left in.",
}

export type FormulaWords = ReturnType<typeof formula>
