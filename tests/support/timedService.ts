import type { Range } from "../../geometry/hair/tradeFigures"
import type { Person, Service, TimedFoil, TimedMix } from "../../web/core/schedule/scheduleInput"

/** A service in round numbers, so that a schedule can be worked out by hand: nothing takes time but what is named. */

export const always = (minutes: number): Range => ({ low: minutes, mid: minutes, high: minutes })

export const timedFoil = (id: string, change: Partial<TimedFoil> = {}): TimedFoil => ({
  id,
  mapNumber: 1,
  kind: "slice",
  zone: "top",
  group: "one",
  placeMin: always(1.5),
  limitMin: 45,
  mix: "A",
  readyMin: { A: { low: 18, mid: 26, high: 34 } },
  productG: always(1),
  delicate: false,
  ...change,
})

export const timedMix = (id: string, change: Partial<TimedMix> = {}): TimedMix => ({
  id,
  developerVolume: 20,
  onHeadPercent: 4,
  mixingMin: always(0),
  bowlG: 12,
  potLifeMin: 60,
  heatMostMin: 0,
  ...change,
})

export const person = (change: Partial<Person> = {}): Person => ({ paceShare: 1, breaks: [], ...change })

export const timedService = (foils: readonly TimedFoil[], change: Partial<Service> = {}): Service => ({
  foils,
  mixes: [timedMix("A")],
  bowls: null,
  hands: [person()],
  preparingMin: always(0),
  partingMin: always(0),
  wipingMin: always(0),
  rinse: "each",
  looks: { firstMin: 10, firstDelicateMin: 5, everyMin: 5 },
  heat: null,
  finish: { detanglingMin: always(0), rinsingMin: always(0), toners: [], dryingMin: always(0) },
  bookingMin: null,
  soFar: null,
  ...change,
})

/** So many foils alike, named f1, f2, … */
export const foilsAlike = (count: number, change: Partial<TimedFoil> = {}) =>
  Array.from({ length: count }, (_, at) => timedFoil(`f${at + 1}`, { mapNumber: at + 1, ...change }))
