import type { Range } from "../../../geometry/hair/tradeFigures"
import { coatsOf, type FoilKind, type RootCoat } from "../../../geometry/section/section"
import type { LiftsFirst } from "../lift/liftsFirst"
import type { ToneZone } from "../tone/tone"

/** What the clock needs to know of a service; times in minutes, minute 0 when the first parting is combed. */
export type Service = {
  /** In order of application. */
  foils: readonly TimedFoil[]
  mixes: readonly TimedMix[]
  /** Bowls as already shared out, foils by id; null to fill one after the other in order. */
  bowls: readonly { mix: string; foils: readonly string[] }[] | null
  /** One or two pairs of hands. */
  hands: readonly Person[]
  /** Before the first foil: the first parting and the first bowl, where they are not timed by themselves below. */
  preparingMin: Range
  /** Parting out one working section. */
  partingMin: Range
  /** Opening one foil and wiping it off. */
  wipingMin: Range
  /** Each foil off when it is ready, or all in one rinse. */
  rinse: "each" | "together"
  looks: { firstMin: number; firstDelicateMin: number; everyMin: number }
  /** How warm it is under it, or null where nobody has measured. */
  heat: PlannedHeat | null
  finish: Finish
  bookingMin: number | null
  soFar: SoFar | null
}

export type PlannedHeat = {
  minutes: number
  warmthC: number | null
  /** The mixes for which the colourist wrote that it may be where it usually may not, and longer than it usually may. */
  overridden?: { place: readonly string[]; time: readonly string[] }
}

export type Zone = "hairline" | "top" | "left" | "right" | "back"

export type TimedFoil = {
  id: string
  /** The number on the map, by which people call it. */
  mapNumber: number
  kind: FoilKind
  zone: Zone
  /** The client's side; the middle where none is said. */
  side?: "left" | "right" | "centre"
  /** The working section it belongs to. */
  group: string
  placeMin: Range
  /** The longest time from first contact of what is on it: of two products the shorter, save of one that goes on later. */
  limitMin: number
  mix: string
  /** Minutes on until ready, by each mix it may be given; an end is infinite where the goal is not reached in time. */
  readyMin: Readonly<Record<string, Range>>
  /** Of its own mix; bowls are filled at the upper figure. */
  productG: Range
  /** Another mix on its roots, put on in the same go; it stays the foil's, whatever mix the ends are given. */
  roots?: TimedRoots
  /** At the hairline, fine, porous or already lightened: looked at sooner. */
  delicate: boolean
  /** Hair is taken within the hairline's own strip, wherever the parting lies. */
  atHairline?: boolean
  /** Why its minutes are fewer than the rest's. */
  liftsFirst?: LiftsFirst
  /** When the sheet asks for the first look; null where it is silent. */
  firstLookMin?: number | null
  /** A bowl is mixed afresh for it. */
  startsBowl?: boolean
}

export type TimedRoots = Pick<RootCoat, "mix" | "first"> & {
  /** Minutes on of its own. */
  readyMin: Range
  productG: Range
  later?: LaterCoat
}
/** A coat for which the foil is opened again, so many minutes after its first contact, with a longest time of its own. */
export type LaterCoat = { afterMin: number; placeMin: Range; limitMin: number }

export type TimedMix = {
  id: string
  developerVolume: number
  onHeadPercent: number
  mixingMin: Range
  /** What one bowl holds, and how long it may be used once mixed. */
  bowlG: number
  potLifeMin: number
  /** Minutes of heat the sheet allows; 0 where it allows none. */
  heatMostMin: number
}

export type Person = {
  /** Their minutes a foil against those of the plan: 1 the same, 2 twice as long. */
  paceShare: number
  breaks: readonly { fromMin: number; toMin: number }[]
}

export type Finish = {
  detanglingMin: Range
  rinsingMin: Range
  /** From the first brush to the rinse. */
  toners: readonly { zone: ToneZone["zone"]; minutes: Range }[]
  dryingMin: Range
}

/** What has really happened by a minute: first contact and off by foil, and when each bowl was mixed. */
export type SoFar = {
  nowMin: number
  onAtMin: Readonly<Record<string, number>>
  offAtMin: Readonly<Record<string, number>>
  /** When the roots went on, of foils whose roots go on later; none is on that no tap tells of. */
  rootsOnAtMin?: Readonly<Record<string, number>>
  /** By bowl; undefined where the tap was missed. */
  mixedAtMin: readonly (number | undefined)[]
  /** Heat as it was put on, and taken away or not yet. */
  heat?: { onAtMin: number; offAtMin: number | null } | null
}

/** Which end of every range a schedule is worked out for. */
export type End = "low" | "mid" | "high"

/** Minutes of its own until each coat of a foil is ready, in the order they go on. */
export const coatsReady = (foil: TimedFoil): Range[] =>
  coatsOf(foil).map(({ part, mix }) =>
    part === "roots" && foil.roots ? foil.roots.readyMin : foil.readyMin[mix],
  )

/** Whether a mix is the one that goes on the roots of a foil later. */
export const goesOnLater = ({ roots }: Pick<TimedFoil, "roots">, mix: string) =>
  roots?.later !== undefined && roots.mix === mix

export const laterBy = ({ low, mid, high }: Range, byMin: number): Range => ({
  low: low + byMin,
  mid: mid + byMin,
  high: high + byMin,
})

/** When all of several is ready: a foil comes off once, so that the later of two mixes counts. */
export function laterOf(ready: readonly Range[]): Range {
  if (ready.length === 1) return ready[0]
  const later = (end: End) => Math.max(...ready.map((range) => range[end]))
  return { low: later("low"), mid: later("mid"), high: later("high") }
}

/** Minutes from first contact until all that is on a foil is ready, its roots going on when they are to. */
export const readyOf = (foil: TimedFoil): Range => {
  if (!foil.roots) return foil.readyMin[foil.mix]
  const { later, readyMin } = foil.roots
  return laterOf(later ? [foil.readyMin[foil.mix], laterBy(readyMin, later.afterMin)] : coatsReady(foil))
}

/** The longest that a foil may be on, by the clock of each of its coats. */
export const longestOn = ({ limitMin, roots }: Pick<TimedFoil, "limitMin" | "roots">): number =>
  roots?.later ? Math.min(limitMin, roots.later.afterMin + roots.later.limitMin) : limitMin

type Serving = Pick<TimedFoil, "mix" | "productG" | "roots">

/** What a foil takes of a mix; null where none of it is on. */
export const gramsIn = ({ mix, productG, roots }: Serving, asked: string): Range | null =>
  asked === mix ? productG : asked === roots?.mix ? roots.productG : null

/** The foils of a mix, each with the grams it takes of that one. */
export const servedBy = <Each extends Serving>(foils: readonly Each[], mix: string): Each[] =>
  foils.flatMap((foil) => {
    const productG = gramsIn(foil, mix)
    return productG ? { ...foil, productG } : []
  })
