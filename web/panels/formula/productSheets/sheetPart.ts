import type { ProductSheet } from "../../../../presets/formula/productSheet"

/** What of a sheet a field shows, and how it changes it. */
export type SheetPart = { draft: ProductSheet; edit: (change: Partial<ProductSheet>) => void }
