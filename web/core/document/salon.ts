import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"
import { houseProducts } from "../../../presets/formula/houseProducts"
import type { Price, ProductSheet } from "../../../presets/formula/productSheet"
import type { PaceByKind } from "./timingChoices"

/** What of the salon rules a plan. It is copied into the plan, which then reads the same on any desk. */
export type Salon = {
  /** Sheets typed in from the salon's own tubs; they come before a house product of the same name. */
  sheets: readonly ProductSheet[]
  /** Volumes of the developers that stand on the shelf. */
  bottles: readonly number[]
  /** How a client reaches the salon, and the emergency number of the place; empty where nobody has said. */
  contact?: Contact | undefined
  /** What the scale shows; the usual where nobody has said. */
  scaleStepG?: number | undefined
  developerPrice: Price | null
  prices: PriceList
  /** Grams of product by what the scale has shown, of everything and of a product or kind alone. */
  learnt: readonly LearntFigures[]
  /** What it starts from, where it has taken in what other salons learnt. */
  start?: StartFigures | undefined
}

export type Contact = { name: string; phone: string; emergency: string }
export const noContact: Contact = { name: "", phone: "", emergency: "" }

/** How the salon is reached, said by said: as this desk has it, else as the plan brought it along. */
export function contactOf({ salon }: { salon?: Salon | undefined }, here: Contact = noContact): Contact {
  const brought = salon?.contact ?? noContact
  return {
    name: here.name || brought.name,
    phone: here.phone || brought.phone,
    emergency: here.emergency || brought.emergency,
  }
}

/** The salon's own list, in its own money; null where it has no such price. */
export type PriceList = Readonly<Record<PriceName, number | null>>
export const priceNames = ["placement", "foil", "extraBowl", "toner", "chairHour"] as const
export type PriceName = (typeof priceNames)[number]

/** Figures learnt from weighings of one product or one kind, or of any (null). */
export type LearntFigures = {
  product: string | null
  kind: FoilKind | null
  weighings: number
  lossG: Range
  soakGPerG: Range
  coatMgPerCm2: Range
}

/**
 * What a salon starts from in place of the trade's assumptions: joined from the weighings, strand tests and paces of other
 * salons. Null where they told too little of it.
 */
export type StartFigures = {
  /** How many salons it was joined from. */
  salons: number
  grams: GramsStart | null
  /** Minutes for half of the lift still to come; two thirds of heads lie within. */
  halfTimeMin: { low: number; high: number } | null
  /** Minutes a foil of each kind at the usual skill; a kind that too few timed is as it was. */
  paceMin: PaceByKind | null
}

/** What a new salon's own three figures may be, and how its weighings scatter. */
export type GramsStart = {
  lossG: Spread
  soakGPerG: Spread
  coatMgPerCm2: Spread
  /** How the three lean on each other, from -1 to 1. */
  lossWithSoak: number
  lossWithCoat: number
  soakWithCoat: number
  /** Scatter of a weighing, as a share of its grams, and how firmly that is believed. */
  scatterShare: number
  scatterShape: number
}

/** The middle, and one standard deviation from salon to salon. */
export type Spread = { mid: number; sd: number }

export const newSalon = (): Salon => ({
  sheets: [],
  bottles: [],
  developerPrice: null,
  prices: { placement: null, foil: null, extraBowl: null, toner: null, chairHour: null },
  learnt: [],
})

/** Every sheet a plan may go by: the salon's, and the house's. */
export function productSheets({ salon }: { salon?: Salon | undefined }): readonly ProductSheet[] {
  const own = salon?.sheets ?? []
  return [...own, ...houseProducts.filter(({ name }) => own.every((sheet) => sheet.name !== name))]
}

export const sheetOf = (product: string, plan: { salon?: Salon | undefined }): ProductSheet | null =>
  productSheets(plan).find(({ name }) => name === product) ?? null
