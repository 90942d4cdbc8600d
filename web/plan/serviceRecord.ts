/** What happened at the chair, as it is kept with the plan. Times are the service's own clock, in milliseconds from its start. */
export type ServiceRecord = {
  /** ISO 8601, by the device's clock. */
  startedAt: string
  /** In the order planned, with what was planned for each when the service began. */
  foils: readonly RecordedFoil[]
  log: readonly RecordedTap[]
  clockNotes: readonly { atMs: number; wallAt: string; note: string }[]
}

export type RecordedFoil = {
  id: string
  mapNumber: number
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

export const foilTaps = ["on", "missed-on", "re-coated", "off"] as const
export const stretches = ["ok", "soft", "stop"] as const
export const comforts = ["ok", "warm", "burning"] as const

export type ChairTap =
  | { kind: (typeof foilTaps)[number]; foil: string }
  | { kind: "looked"; foil: string; seen: LookSeen }
  | { kind: "mixed" | "rinsed" }
  | { kind: "alarm"; what: string }

export type LookSeen = {
  level: number
  stretch: (typeof stretches)[number]
  comfort: (typeof comforts)[number]
  moist: boolean
}
