import { type Foil, isFoil, rootsOf, type Section, type SectionKind } from "../../../geometry/section/section"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { backcombDepthMm, backcombing, stitches } from "../../../presets/placement/foils"
import { usualTreatment } from "../../../presets/placement/treatment"
import type { NextSection } from "../kinds/kindRecord"
import { kindRecords, sectionKindNames } from "../kinds/kindRecords"
import type { Plan } from "./schema"

const { stitchMm, gapMm, dipMm } = stitches.medium

const usualDepthsMm = Object.fromEntries(
  sectionKindNames.map((kind) => [kind, kindRecords[kind].depthMm]),
) as NextSection["depthMm"]

export const usualSection: NextSection = {
  taken: "front",
  depthMm: usualDepthsMm,
  treatment: { ...usualTreatment, mix: "A" },
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
  leftOutName: "",
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
  const rootDistanceMm = startAsked(next.treatment.rootDistanceMm, plan)
  const treatment = { ...next.treatment, rootDistanceMm, mix, mapNumber: freeMapNumber(plan.sections) }
  return kindRecords[kind].make(band, treatment, next)
}

/** Where product starts, mm from the scalp: as near as the client was asked for, unless something else than the usual was chosen. */
const startAsked = (wantedMm: number, { consultation }: Plan): number =>
  wantedMm === usualSection.treatment.rootDistanceMm ? (consultation?.rootDistanceMm ?? wantedMm) : wantedMm

/** "s" and a number above all in use. */
export function freeId(sections: readonly Section[]): string {
  const used = sections.map(({ id }) => Number(/^s(\d{1,9})$/.exec(id)?.[1] ?? 0))
  return `s${Math.max(0, ...used) + 1}`
}

/** One above the highest number on the map. */
export const freeMapNumber = (sections: readonly Section[]): number =>
  Math.max(0, ...sections.map((section) => (isFoil(section) ? section.mapNumber : 0))) + 1

/**
 * A foil for a plan that may lack its mixes: its own becomes the first of them, and roots in one that is gone, or in the
 * same, are coated as the rest is.
 */
export function withKnownMixes(foil: Foil, mixes: Plan["mixes"]): Foil {
  const isKnown = (mix: string) => mixes.some(({ id }) => id === mix)
  const mix = isKnown(foil.mix) ? foil.mix : mixes[0].id
  const roots = rootsOf(foil)
  const isRooted = roots && isKnown(roots.mix) && roots.mix !== mix
  return { ...foil, mix, ...(roots && !isRooted && { roots: undefined }) }
}
