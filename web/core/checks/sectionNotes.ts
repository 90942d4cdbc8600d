import { type Foil, isFoil, rootsOf, type Section } from "../../../geometry/section/section"
import { sliceWarningMm } from "../../../presets/placement/foils"
import type { Plan } from "../document/schema"
import { figuresOf } from "../figures/measured"
import { traitsOf } from "../kinds/kindRecords"

/** What a colourist would want to know of a section before it is foiled. */
export type SectionNote =
  /** A slice so deep that its inside stays darker than its faces. */
  | { code: "deep-slice"; depthMm: number; mostMm: number }
  /** Its product would start past where it ends: nothing is coated. */
  | { code: "bare"; startMm: number; lengthCm: number }
  /** The mix of its roots would reach its ends, or its own mix its roots: one of the two coats nothing. */
  | {
      code: "bare-coat"
      part: "roots" | "ends"
      mix: string
      startMm: number
      toMm: number
      lengthCm: number
    }

export type NotedSection = { section: Foil; note: SectionNote }

export const sectionNotes = (sections: readonly Section[], plan: Plan): NotedSection[] =>
  sections.filter(isFoil).flatMap((section) => notesOf(section, plan).map((note) => ({ section, note })))

function notesOf(section: Foil, plan: Plan): SectionNote[] {
  const depthMm = Math.max(section.depthMm.start, section.depthMm.end)
  const mostMm = sliceWarningMm.value
  return [
    ...(traitsOf(section).isSolid && depthMm > mostMm
      ? [{ code: "deep-slice" as const, depthMm, mostMm }]
      : []),
    ...bareNote(section, plan),
    ...bareCoatNote(section, plan),
  ]
}

/** Whether one of two mixes along a strand coats nothing. */
export function bareCoatNote(section: Section, plan: Plan): Extract<SectionNote, { code: "bare-coat" }>[] {
  const roots = isFoil(section) && rootsOf(section)
  if (!roots) return []
  const { toMm } = roots
  const { coats, strandAreaCm2, lengthCm } = figuresOf(section, plan)
  if (strandAreaCm2 === 0) return []
  const startMm = Math.max(section.rootDistanceMm, 10 * lengthCm * section.strand.from)
  return coats.flatMap(({ part, mix, strandAreaCm2: coatedCm2 }) =>
    part === "whole" || coatedCm2 > leastCoatCm2
      ? []
      : { code: "bare-coat", part, mix, startMm, toMm, lengthCm },
  )
}

/** Less than this is the rounding of sums. */
const leastCoatCm2 = 1e-6

/** Whether hair is taken and none of it coated. */
export function bareNote(section: Section, plan: Plan): Extract<SectionNote, { code: "bare" }>[] {
  if (!isFoil(section)) return []
  const { hairs, strandAreaCm2, lengthCm } = figuresOf(section, plan)
  return hairs > 0 && strandAreaCm2 === 0 ? [{ code: "bare", startMm: section.rootDistanceMm, lengthCm }] : []
}
