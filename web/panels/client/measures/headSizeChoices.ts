import { headMeasures } from "../../../../geometry/scalp/headMeasures"
import type { HeadSize } from "../../../../geometry/scalp/headSize"
import { tapesOverHair } from "../../../../geometry/scalp/tapesOverHair"
import type { Surface } from "../../../../geometry/surface/surface"
import { headFigures, startingHeadSize } from "../../../../presets/client/headSizes"

export type TapeSize = Extract<HeadSize, { kind: "tape" }>
export type CaliperSize = Extract<HeadSize, { kind: "caliper" }>

/** Whether nobody has measured yet. */
export const isAverage = (size: HeadSize) => size.kind === "caliper" && sameSize(size, startingHeadSize)

/** What the colourist's three tapes are expected to read on a head, over its hair, to the millimetre. */
export function toTape(surface: Surface): TapeSize {
  const { aroundMm, overMm, frontToNapeMm } = tapesOverHair(surface, headFigures)
  return {
    kind: "tape",
    aroundMm: Math.round(aroundMm),
    overMm: Math.round(overMm),
    frontToNapeMm: Math.round(frontToNapeMm),
  }
}

/** What a caliper reads on a head, to the millimetre. */
export function toCaliper(surface: Surface): CaliperSize {
  const { lengthMm, breadthMm, heightMm } = headMeasures(surface)
  return {
    kind: "caliper",
    lengthMm: Math.round(lengthMm),
    breadthMm: Math.round(breadthMm),
    heightMm: Math.round(heightMm),
  }
}

const sameSize = (a: HeadSize, b: HeadSize) => JSON.stringify(a) === JSON.stringify(b)
