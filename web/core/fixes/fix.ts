import { pieceOf } from "../kinds/kindRecords"
import type { Service } from "../schedule/scheduleInput"

/** A change of the service that removes a conflict, as planned again, and brings no other. Plain data. */
export type Fix = FixCode & {
  /** What it costs, counted in minutes of the chair: for ranking. */
  costMin: number
  /** The service as the fix leaves it. */
  after: Service
  /** Ids of the foils that this leaves for another day, or out. */
  left: readonly string[]
}

/** What a fix does. Foils are their numbers on the map; a count says how many. */
export type FixCode =
  | { code: "each-off" }
  | { code: "reorder" }
  | { code: "weaker-early"; count: number }
  | { code: "order-and-strength"; count: number }
  | { code: "closest-together" }
  | { code: "fresh-bowl"; mixes: readonly string[]; foils: readonly number[] }
  | { code: "second-colourist" }
  | { code: "no-drying"; savesMin: number }
  | { code: "later-end"; bookingMin: number; byMin: number }
  | { code: "fewer-foils"; foils: readonly number[] }
  | { code: "another-day"; foils: readonly number[] }
export type FixKind = FixCode["code"]

/** What a fix is called: its code, with what the foils that it is about are called. */
export function calledFix({ after: _, left: __, costMin: ___, ...code }: Fix, { foils }: Service) {
  const own = "foils" in code ? foils.filter(({ mapNumber }) => code.foils.includes(mapNumber)) : foils
  return { ...code, piece: pieceOf(own) }
}
