import type { PriceName } from "../../core/document/salon"

export const priceWords: Record<PriceName, string> = {
  placement: "Placement",
  foil: "Foils",
  extraBowl: "Extra bowls",
  toner: "Toners",
  chairHour: "Hours in the chair",
}

/** What a price is asked for, each. */
export const priceNameWords: Record<PriceName, string> = {
  placement: "Placement, once",
  foil: "Each foil",
  extraBowl: "Each bowl after the first",
  toner: "Each toner",
  chairHour: "Each hour in the chair",
}
