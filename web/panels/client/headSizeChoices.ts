import { headMeasures } from "../../../geometry/scalp/headMeasures"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import type { Surface } from "../../../geometry/surface/surface"
import { hairUnderTape, startingHeadSize } from "../../../presets/client/headSizes"

export type TapeSize = Extract<HeadSize, { kind: "tape" }>
export type CaliperSize = Extract<HeadSize, { kind: "caliper" }>

/** Whether nobody has measured yet. */
export const isAverage = (size: HeadSize) => size.kind === "caliper" && sameSize(size, startingHeadSize)

/** What the colourist's three tapes read on a head, over its hair, to the millimetre. */
export function toTape(surface: Surface): TapeSize {
  const { aroundMm, overMm, frontToNapeMm } = headMeasures(surface)
  const overHair = (mm: number) => Math.round(mm * (1 + hairUnderTape.value))
  return {
    kind: "tape",
    aroundMm: overHair(aroundMm),
    overMm: overHair(overMm),
    frontToNapeMm: overHair(frontToNapeMm),
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
