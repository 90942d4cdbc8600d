/**
 * What is printed on a product, as the salon types it in. The sheet rules; null where it does not say.
 * A ratio is parts of developer, by mass, to one part of product.
 */
export type ProductSheet = {
  id: string
  name: string
  /** An oxidative toner or root shade holds dye and needs an alert test; a lightener holds persulfate. */
  kind: "lightener" | "oxidative-toner" | "root-shade" | "direct-toner"
  form: "powder" | "clay" | "cream" | "liquid"
  ratio: { low: number; high: number }
  developers: readonly DeveloperLift[]
  longestMin: number | null
  /** Heat is allowed for so many minutes, 0 for never. */
  heatMin: number | null
  onScalp: boolean | null
  potLifeMin: number | null
  /** Whether the maker asks for an alert test before this product. */
  alertTest: boolean | null
  /** Minutes on at which the maker asks for the first look; the usual where the sheet is silent. */
  firstLookMin?: number | null | undefined
  additives: readonly AdditiveSheet[]
  price: Price | null
}

/** A developer the sheet allows, and the levels of lift it prints for it. */
export type DeveloperLift = { volume: number; levels: { low: number; high: number } | null }

/** Something stirred in: grams for each gram of product, and whether it takes the place of developer. */
export type AdditiveSheet = { name: string; gPerG: number; replacesDeveloper: boolean }

/** In the salon's own money. */
export type Price = { amount: number; forG: number }
