import type { FoilKind } from "../../../geometry/section/section"

/** What happened at the chair, as it is kept with the plan. Times are the service's own clock, in milliseconds from its start. */
export type ServiceRecord = {
  /** ISO 8601, by the device's clock. */
  startedAt: string
  /** Who the pairs of hands were. */
  people?: readonly string[] | undefined
  /** In the order planned, with what was planned for each when the service began. */
  foils: readonly RecordedFoil[]
  log: readonly RecordedTap[]
  clockNotes: readonly { atMs: number; wallAt: string; note: string }[]
}

export type RecordedFoil = {
  id: string
  mapNumber: number
  kind?: FoilKind | undefined
  limitMin: number
  firstLookMin: number
  plannedOnMin: number
  plannedMinutesOn: number
}

/** A tap as it was made; what was undone stays, marked. */
export type RecordedTap = {
  tap: ChairTap
  atMs: number
  wallAt: string
  onAtMs: number | null
  undone: boolean
  note: string | null
}

export const foilKinds = ["slice", "weave", "backcomb"] as const satisfies readonly FoilKind[]
export const foilTaps = ["on", "missed-on", "re-coated", "off"] as const
/** What is done to the whole head: all that is on rinsed, heat put on and taken away. */
export const wholeTaps = ["rinsed", "heat-on", "heat-off"] as const
export const stretches = ["ok", "soft", "stop"] as const
export const comforts = ["ok", "warm", "burning"] as const

export type ChairTap =
  /** `by` is the pair of hands, where there are two. */
  | { kind: (typeof foilTaps)[number]; foil: string; by?: 1 | 2 | undefined }
  | { kind: "looked"; foil: string; seen: LookSeen }
  /** The next bowl, or one mixed afresh, counted from 0. */
  | { kind: "mixed"; bowl?: number | undefined }
  | { kind: (typeof wholeTaps)[number] }
  | { kind: "alarm"; what: string }

export type LookSeen = {
  level: number
  stretch: (typeof stretches)[number]
  comfort: (typeof comforts)[number]
  moist: boolean
}
