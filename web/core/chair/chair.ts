import type {
  ChairTap,
  ClockNote,
  RecordedBowl,
  RecordedFoil,
  RecordedToner,
  TapNote,
} from "../document/serviceRecord"
import type { Moment } from "./chairTime"

/** A service as it happens. Plain data: it can be stored after every tap and taken up again. */
export type Chair = {
  /** In order of application. */
  foils: readonly ChairFoil[]
  /** Minutes of heat that the plan allows; none where it is left out. */
  heatMin?: number | undefined
  /** In the order they are mixed. */
  bowls?: readonly ChairBowl[] | undefined
  /** In the order they go on after the rinse. */
  toners?: readonly ChairToner[] | undefined
  /** Time of the service up to the last reading of the clocks. */
  elapsedMs: number
  last: Moment
  /** Who has the device in hand, where two work: whose tap came last, or who took it. */
  hand?: 1 | 2 | undefined
  /** Everything tapped, in order; what was undone stays, marked. */
  log: readonly LogEntry[]
  /** What was odd about the device's clocks, and when. */
  clockNotes: readonly { atMs: number; wallMs: number; note: ClockNote }[]
  /** Counts the taps taken, so that two windows cannot both go on from the same state. */
  revision: number
}
/** A foil as it was planned; only what every service has kept must be known. */
export type ChairFoil = Pick<RecordedFoil, "id" | "mapNumber" | "limitMin" | "firstLookMin"> &
  Partial<RecordedFoil>
export type ChairToner = Omit<RecordedToner, "onAtMs" | "offAtMs" | "leftG">
/** A bowl as it is to be made; what it is made of is not known of services begun in an earlier Partline. */
export type ChairBowl = Pick<RecordedBowl, "mix" | "foils" | "potLifeMin"> &
  Partial<Omit<RecordedBowl, "mixedAtMs" | "leftG">>

export type Tap = ChairTap

/** Minutes are the service's own clock; the wall time stands beside it for the record. */
export type LogEntry = {
  tap: Tap
  atMs: number
  wallMs: number
  /** First contact as it counts for good, where this is the first that is heard of a foil. */
  onAtMs: number | null
  undone: boolean
  note: TapNote | null
}
