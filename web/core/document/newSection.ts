import {
  type Band,
  isFoil,
  type Section,
  type SectionKind,
  type Stitching,
  type Treatment,
} from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import {
  backcombDepthMm,
  backcombing,
  rootDistanceMm,
  sliceDepthMm,
  stitches,
  usualFoil,
  weaveDepthMm,
} from "../../../presets/placement/foils"
import { leftOutDepthMm, usualElevationDeg } from "../../../presets/plans/startingPlan"
import type { Plan } from "./schema"

/** What the next section drawn starts from, whichever kind it will be. */
export type NextSection = {
  taken: Band["taken"]
  depthMm: Readonly<Record<SectionKind, number>>
  treatment: Omit<Treatment, "mapNumber">
  stitching: Readonly<Record<"weave" | "backcomb", Stitching>>
  backcombing: { base: "slice" | "weave"; pushedShare: number; cushionMm: number }
  leftOutName: string
}

const { stitchMm, gapMm, dipMm } = stitches.medium

export const usualSection: NextSection = {
  taken: "front",
  depthMm: {
    slice: sliceDepthMm.fine.value,
    weave: weaveDepthMm.value,
    backcomb: backcombDepthMm.value,
    "left-out": leftOutDepthMm.value,
  },
  treatment: {
    rootDistanceMm: rootDistanceMm.standard.value,
    strand: { from: 0, to: 1 },
    faces: 2,
    carrier: { kind: "foil", widthMm: usualFoil.widthMm, lengthMm: usualFoil.lengthMm },
    elevationDeg: usualElevationDeg.value,
    overDirectionDeg: 0,
    foilLie: "down",
    mix: "A",
  },
  stitching: {
    weave: { stitchMm: stitchMm.value, gapMm: gapMm.value, dipMm: dipMm.value },
    // Woven out of the whole section, then backcombed.
    backcomb: { stitchMm: stitchMm.value, gapMm: gapMm.value, dipMm: backcombDepthMm.value },
  },
  backcombing: {
    base: "weave",
    pushedShare: backcombing.pushedShare.value,
    cushionMm: backcombing.cushionMm.value,
  },
  leftOutName: "Veil",
}

type Make<K extends SectionKind> = (band: Band, treatment: Treatment, next: NextSection) => Section<K>

const makers: { [K in SectionKind]: Make<K> } = {
  slice: (band, treatment) => ({ kind: "slice", ...band, ...treatment }),
  weave: (band, treatment, next) => ({ kind: "weave", ...band, ...treatment, ...next.stitching.weave }),
  backcomb: (band, treatment, next) => ({
    kind: "backcomb",
    ...band,
    ...treatment,
    ...next.stitching.backcomb,
    ...next.backcombing,
  }),
  "left-out": (band, _, next) => ({ kind: "left-out", ...band, name: next.leftOutName }),
}

/** A section along a parting, with an id and a map number that the plan has not used. */
export function newSection<K extends SectionKind>(
  kind: K,
  parting: readonly SurfacePoint[],
  plan: Plan,
  next: NextSection = usualSection,
): Section<K> {
  const depthMm = { start: next.depthMm[kind], end: next.depthMm[kind] }
  const band = { id: freeId(plan.sections), parting, taken: next.taken, depthMm, note: "" }
  const known = plan.mixes.some(({ id }) => id === next.treatment.mix)
  const mix = known ? next.treatment.mix : (plan.mixes[0]?.id ?? next.treatment.mix)
  const treatment = { ...next.treatment, mix, mapNumber: freeMapNumber(plan.sections) }
  return makers[kind](band, treatment, next)
}

/** "s" and a number above all in use. */
export function freeId(sections: readonly Section[]): string {
  const used = sections.map(({ id }) => Number(/^s(\d{1,9})$/.exec(id)?.[1] ?? 0))
  return `s${Math.max(0, ...used) + 1}`
}

/** One above the highest number on the map. */
export const freeMapNumber = (sections: readonly Section[]): number =>
  Math.max(0, ...sections.map((section) => (isFoil(section) ? section.mapNumber : 0))) + 1
