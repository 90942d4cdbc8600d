import type { FoilKind, RootCoat } from "../../../geometry/section/section"
import type { EmergencyName } from "../../../presets/chair/emergencies"

/**
 * What happened at the chair, as it is kept with the plan: done, and never worked out again from it. Times are the
 * service's own clock, in milliseconds from its start.
 */
export type ServiceRecord = {
  /** ISO 8601, by the device's clock. */
  startedAt: string
  /** When it was ended, ISO 8601; not known of services kept before it was written down. */
  endedAt?: string | undefined
  /** Who the colourist and the assistant were. */
  people?: readonly string[] | undefined
  /** In the order planned, with what was planned for each when the service began. */
  foils: readonly RecordedFoil[]
  /** In the order they were to be mixed, as they were weighed out; one without a time was never tapped. */
  bowls?: readonly RecordedBowl[] | undefined
  /** After the rinse, in the order they went on; one without a time did not go on. */
  toners?: readonly RecordedToner[] | undefined
  /** Who was asked aloud, when nobody had asked before the service began. */
  asked?: AskedAloud | undefined
  log: readonly RecordedTap[]
  clockNotes: readonly { atMs: number; wallAt: string; note: ClockNote }[]
}

export type RecordedFoil = {
  id: string
  mapNumber: number
  kind?: FoilKind | undefined
  /** The letter of the mix it was coated with. */
  mix?: string | undefined
  /** The one on its roots, where that was another. */
  roots?: RootCoat | undefined
  /** Where its roots go on later: their own max time, and how long after first contact they were planned. */
  rootsLater?: { limitMin: number; plannedAfterMin: number } | undefined
  /** Whose lane it was in, where two worked: 1 the colourist, 2 the assistant. */
  lane?: 1 | 2 | undefined
  /** The level it is to be lifted to; none where nobody said. */
  goalLevel?: number | undefined
  limitMin: number
  firstLookMin: number
  plannedOnMin: number
  plannedMinutesOn: number
}

/** A bowl as it was made: masses in grams, the developer by the volume on its label. */
export type RecordedBowl = {
  mix: string
  product: string
  developerVolume: number
  ratio: { lightener: number; developer: number }
  lightenerG: number
  developerG: number
  additives?: readonly { name: string; grams: number }[] | undefined
  /** Ids of the foils it was made for. */
  foils: readonly string[]
  potLifeMin: number
  mixedAtMs: number | null
  /** What was left of it on the scale, and null while nobody has weighed. */
  leftG: number | null
}

/** A toner as it was made and used; what nobody had chosen is null. */
export type RecordedToner = {
  zone: ToneZoneName
  product: string | null
  developerVolume: number | null
  productG: number | null
  developerG: number | null
  /** Of the maker's clear, which lets the shade down; not kept before it was weighed apart. */
  clearG?: number | undefined
  plannedMin: number
  /** The maximum time of its own sheet. */
  limitMin: number | null
  onAtMs: number | null
  offAtMs: number | null
  /** What was left of its bowl on the scale, told at the zone that tells its grams; null while nobody has weighed. */
  leftG?: number | null | undefined
}

/** "Asked aloud, no to all": by whom, and the day and time. */
export type AskedAloud = { by: string; wallAt: string }

/** A tap as it was made; what was undone stays, marked. */
export type RecordedTap = {
  tap: ChairTap
  atMs: number
  wallAt: string
  onAtMs: number | null
  undone: boolean
  note: TapNote | null
}

/** What was odd about a tap; first contact is counted in minutes of the service. */
export type TapNote =
  /** Handled before its tap "on": it counts from the earliest it can have been. */
  | { code: "counts-from-earliest"; foil: number; fromMin: number }
  /** Tapped on after a later foil: it counts from the tap, and might have been on since. */
  | { code: "counts-from-now"; foil: number; fromMin: number }
  | WrittenNote

/** What was odd about the device's clocks. */
export type ClockNote =
  | { code: "clock-set-back"; byMs: number }
  | { code: "slept-or-set-forward"; byMs: number }
  | { code: "set-back-while-closed"; byMs: number }
  | WrittenNote

/** As an earlier Partline wrote it, in words. */
export type WrittenNote = { code: "in-words"; words: string }

export const foilTaps = ["on", "missed-on", "roots-on", "missed-roots-on", "re-coated", "off"] as const
/** What is done to the whole head: all that is on rinsed, heat put on and taken away, the end of the toning. */
export const wholeTaps = ["rinsed", "heat-on", "heat-off"] as const
export const tonerTaps = ["toner-on", "toner-checked", "toner-off"] as const
export const toneZoneNames = ["root-melt", "mids", "hairline"] as const
export const stretches = ["ok", "soft", "stop"] as const
export const comforts = ["ok", "warm", "burning"] as const

export type ToneZoneName = (typeof toneZoneNames)[number]

export type ChairTap = DeedTap | AlarmTap

/** Whose deed it was, where there are two: 1 the colourist, 2 the assistant; left out where one works, or nobody said. */
type By = { by?: 1 | 2 | undefined }

export type DeedTap = By &
  (
    | { kind: (typeof foilTaps)[number]; foil: string; outOfTurn?: true | undefined }
    | { kind: "looked"; foil: string; seen: LookSeen }
    /** Several foils checked at once, and left on. */
    | { kind: "carried-on"; foils: readonly string[] }
    /** A check that was due and put off. */
    | { kind: "not-checked"; foils: readonly string[] }
    /** The next bowl, or one mixed afresh, counted from 0. */
    | { kind: "mixed"; bowl?: number | undefined }
    | { kind: (typeof wholeTaps)[number] }
    | { kind: (typeof tonerTaps)[number]; zone: ToneZoneName }
  )

/** The red button: what it was touched for, a step that was done, and the foils that it was about. */
export type AlarmTap = {
  kind: "alarm"
  what: AlarmName
  step?: string | undefined
  foils?: readonly string[] | undefined
  words?: string | undefined
}

/** "Other" is what an earlier Partline wrote in words. */
export type AlarmName = EmergencyName | "other"

/** What was seen; null is not looked at, which is never fine. */
export type LookSeen = {
  level: number | null
  stretch: (typeof stretches)[number] | null
  comfort: (typeof comforts)[number] | null
  moist: boolean | null
}
