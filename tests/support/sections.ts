import type { Hair } from "../../geometry/hair/hair"
import type { Band, Section, Treatment } from "../../geometry/section/section"
import type { SurfacePoint } from "../../geometry/surface/frames"

/** Sections for tests: everything said, so that a test names only what it is about. */
const treatment: Treatment = {
  mapNumber: 3,
  rootDistanceMm: 0,
  strand: { from: 0, to: 1 },
  faces: 2,
  carrier: { kind: "foil", widthMm: 127, lengthMm: 305 },
  elevationDeg: 90,
  overDirectionDeg: 0,
  foilLie: "down",
  mix: "A",
}

export const bandOf = (parting: readonly SurfacePoint[], depthMm = 5): Band => ({
  id: "s1",
  parting,
  taken: "behind",
  depthMm: { start: depthMm, end: depthMm },
  note: "",
})

export const sliceOf = (band: Band, changes: Partial<Section<"slice">> = {}): Section<"slice"> => ({
  kind: "slice",
  ...treatment,
  ...band,
  ...changes,
})

const stitching = { stitchMm: 3, gapMm: 5, dipMm: 4 }

export const weaveOf = (band: Band, changes: Partial<Section<"weave">> = {}): Section<"weave"> => ({
  kind: "weave",
  ...treatment,
  ...stitching,
  ...band,
  ...changes,
})

export const backcombOf = (band: Band, changes: Partial<Section<"backcomb">> = {}): Section<"backcomb"> => ({
  kind: "backcomb",
  ...treatment,
  ...stitching,
  base: "slice",
  pushedShare: 0.4,
  cushionMm: 30,
  ...band,
  ...changes,
})

export const paintedOf = (band: Band, changes: Partial<Section<"painted">> = {}): Section<"painted"> => ({
  kind: "painted",
  ...treatment,
  faces: 1,
  carrier: { ...treatment.carrier, kind: "open-air" },
  painting: {
    edge: "straight",
    dropShare: 0.4,
    drawn: [0, 1, 0.5],
    featherMm: 0,
    saturation: { soft: 0.25, middle: 0.5, full: 1 },
  },
  ...band,
  ...changes,
})

export const leftOutOf = (band: Band): Section<"left-out"> => ({ kind: "left-out", name: "Veil", ...band })

export const evenHair = (lengthCm: number, changes: Partial<Hair> = {}): Hair => ({
  densityPerCm2: 226,
  fibreUm: 70,
  lengthCm: { front: lengthCm, sides: lengthCm, back: lengthCm },
  ...changes,
})
