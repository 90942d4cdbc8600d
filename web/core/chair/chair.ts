import type { wholeTaps } from "../document/serviceRecord"
import type { Moment } from "./chairTime"

/** A service as it happens. Plain data: it can be stored after every tap and taken up again. */
export type Chair = {
  /** In order of application. */
  foils: readonly ChairFoil[]
  /** Minutes of heat that the plan allows; none where it is left out. */
  heatMin?: number | undefined
  /** In the order they are mixed. */
  bowls?: readonly ChairBowl[] | undefined
  /** Time of the service up to the last reading of the clocks. */
  elapsedMs: number
  last: Moment
  /** Everything tapped, in order; what was undone stays, marked. */
  log: readonly LogEntry[]
  /** What was odd about the device's clocks, and when. */
  clockNotes: readonly { atMs: number; wallMs: number; note: string }[]
  /** Counts the taps taken, so that two windows cannot both go on from the same state. */
  revision: number
}
export type ChairFoil = { id: string; mapNumber: number; limitMin: number; firstLookMin: number }
export type ChairBowl = { mix: string; foils: readonly string[]; potLifeMin: number }

export type Look = {
  level: number
  stretch: "ok" | "soft" | "stop"
  comfort: "ok" | "warm" | "burning"
  moist: boolean
}
export type Tap =
  | { kind: "on" | "missed-on" | "re-coated" | "off"; foil: string; by?: 1 | 2 | undefined }
  | { kind: "looked"; foil: string; seen: Look }
  /** The next bowl, or one that was mixed afresh, counted from 0. */
  | { kind: "mixed"; bowl?: number | undefined }
  | { kind: (typeof wholeTaps)[number] }
  | { kind: "alarm"; what: string }

/** Minutes are the service's own clock; the wall time stands beside it for the record. */
export type LogEntry = {
  tap: Tap
  atMs: number
  wallMs: number
  /** First contact as it counts for good, where this is the first that is heard of a foil. */
  onAtMs: number | null
  undone: boolean
  note: string | null
}
