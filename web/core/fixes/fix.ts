import type { Service } from "../schedule/scheduleInput"

/** A change of the service that removes a conflict, as planned again, and brings no other. Plain data. */
export type Fix = {
  kind: FixKind
  label: string
  /** What it costs, counted in minutes of the chair: for ranking. */
  costMin: number
  /** The service as the cure leaves it. */
  after: Service
  /** Foils that this leaves for another day, or out. */
  left: readonly string[]
}
export type FixKind =
  | "each-off"
  | "reorder"
  | "weaker-early"
  | "order-and-strength"
  | "fresh-bowl"
  | "second-hands"
  | "fewer-foils"
  | "another-day"
