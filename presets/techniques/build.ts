import type { PartingBetween } from "../../geometry/placing/technique"
import { commonPractice, figure } from "../figure/figure"
import { backcombing, type StitchWord, stitches } from "../placement/foils"
import { usualTreatment } from "../placement/treatment"
import type { Measure, MeasureLabel, TechniqueSection, TechniqueTreatment } from "./technique"

/** What techniques are written down in. Landmarks count from 0, centre front; see `Spot`. */

type End = readonly [landmark: number, behindMm: number]

const between =
  (run: PartingBetween["run"]) =>
  (from: End, to: End): PartingBetween => ({
    run,
    from: { landmark: from[0], behindMm: from[1] },
    to: { landmark: to[0], behindMm: to[1] },
  })
/** Combed straight over the middle, from the left to the same place on the right. */
export const across = (landmark: number, behindMm: number) =>
  between("straight")([-landmark, behindMm], [landmark, behindMm])
export const drifting = between("drifting")
export const parallel = (from: number, to: number, behindMm: number) =>
  between("parallel")([from, behindMm], [to, behindMm])

const band = (parting: PartingBetween, depthMm: number) => ({
  parting,
  taken: "front" as const,
  depthMm: { start: depthMm, end: depthMm },
})

export const slice = (parting: PartingBetween, depthMm: number): TechniqueSection => ({
  kind: "slice",
  ...band(parting, depthMm),
})

export const weave = (parting: PartingBetween, depthMm: number, stitch: StitchWord): TechniqueSection => ({
  kind: "weave",
  ...band(parting, depthMm),
  stitching: stitching(stitch, stitches[stitch].dipMm.value),
})

/** Woven out of the whole depth, then pushed back. */
export const backcombedWeave = (
  parting: PartingBetween,
  depthMm: number,
  stitch: StitchWord,
): TechniqueSection => ({
  kind: "backcomb",
  ...band(parting, depthMm),
  stitching: stitching(stitch, depthMm),
  backcombing: {
    base: "weave",
    pushedShare: backcombing.pushedShare.value,
    cushionMm: backcombing.cushionMm.value,
  },
})

/** Hair left out, by the name that the words have for it. */
export const leftOut = (
  parting: PartingBetween,
  depthMm: number,
  name: "veil" | "baby-hairs" | "edges",
): TechniqueSection => ({
  kind: "left-out",
  ...band(parting, depthMm),
  name,
})

/** The same section held, coated or laid otherwise than usual. */
export const held = (section: TechniqueSection, changes: Partial<TechniqueTreatment>): TechniqueSection => ({
  ...section,
  treatment: { ...usualTreatment, ...changes },
})

/** The same section laid once as it stands, with no twin: across the middle, or on one side alone. */
export const once = (section: TechniqueSection): TechniqueSection => ({ ...section, single: true })

function stitching(stitch: StitchWord, dipMm: number) {
  const { stitchMm, gapMm } = stitches[stitch]
  return { stitchMm: stitchMm.value, gapMm: gapMm.value, dipMm }
}

/** Rows of one depth with a gap between: how far behind the hairline each parting runs, hair being taken in front of it. */
export const rows = (count: number, edgeMm: number, { depthMm, gapMm }: { depthMm: number; gapMm: number }) =>
  Array.from({ length: count }, (_, i) => edgeMm + depthMm + i * (depthMm + gapMm))

/** A measure that may be varied. Common practice, no source: usual ones, to be changed on the head. */
export const measure = (
  label: MeasureLabel,
  value: number,
  span: readonly [number, number],
  step = 0.5,
): Measure => ({ ...figure(value, span, commonPractice), label, step })
