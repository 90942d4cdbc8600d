import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { newId } from "../../../core/document/newId"

/** A sheet on which nothing has been typed yet. */
export const newSheet = (): ProductSheet => ({
  id: newId(),
  name: "",
  kind: "lightener",
  form: "powder",
  ratio: { low: 0, high: 0 },
  developers: [],
  longestMin: null,
  heatMin: null,
  onScalp: null,
  potLifeMin: null,
  alertTest: null,
  additives: [],
  price: null,
})
