import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { type PlannedMix, tonerIds } from "./rule"

const isToner = ({ id }: PlannedMix) => id === tonerIds.toner || id === tonerIds.rootShade

/** A product without a sheet may be one, unless it is there to tone. */
export const isLightener = (mix: PlannedMix) => (mix.sheet ? mix.sheet.kind === "lightener" : !isToner(mix))

/** Dye, toner and root shade always; anything else where its sheet asks. */
export const asksForTest = ({ kind, alertTest }: Pick<ProductSheet, "kind" | "alertTest">) =>
  kind === "oxidative-toner" || kind === "root-shade" || alertTest === true

/** As its sheet asks; a toner with developer even without one. */
export const isTestAsked = (mix: PlannedMix) =>
  mix.sheet ? asksForTest(mix.sheet) : isToner(mix) && mix.developerVolume > 0
