import { traitsOf } from "../kinds/kindRecords"
import type { ToneZone } from "../tone/tone"
import type { End, Service } from "./scheduleInput"

/** What follows the last foil. Toners are rinsed together: the one left shortest, as on a porous hairline, goes on last. */
export type Step =
  | { kind: "rinse" | "detangle" | "dry"; fromMin: number; toMin: number }
  | { kind: "toner"; zone: ToneZone["zone"]; fromMin: number; toMin: number }

export function scheduleFinish({ foils, finish }: Service, rinseMin: number, end: End): Step[] {
  const rinsed = rinseMin + finish.rinsingMin[end]
  const isBackcombed = foils.some((foil) => traitsOf(foil).hasCushion)
  const detangled = rinsed + (isBackcombed ? finish.detanglingMin[end] : 0)
  const toned = Math.max(detangled, ...finish.toners.map(({ minutes }) => detangled + minutes[end]))
  const steps: Step[] = [
    { kind: "rinse", fromMin: rinseMin, toMin: rinsed },
    { kind: "detangle", fromMin: rinsed, toMin: detangled },
    ...finish.toners.map(
      ({ zone, minutes }): Step => ({
        kind: "toner",
        zone,
        fromMin: toned - minutes[end],
        toMin: toned,
      }),
    ),
    { kind: "dry", fromMin: toned, toMin: toned + finish.dryingMin[end] },
  ]
  return steps.filter(({ fromMin, toMin }) => toMin > fromMin)
}
