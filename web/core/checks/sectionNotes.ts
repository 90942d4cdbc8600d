import { type Foil, isFoil, type Section } from "../../../geometry/section/section"
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
  ]
}

/** Whether hair is taken and none of it coated. */
export function bareNote(section: Section, plan: Plan): Extract<SectionNote, { code: "bare" }>[] {
  if (!isFoil(section)) return []
  const { hairs, strandAreaCm2, lengthCm } = figuresOf(section, plan)
  return hairs > 0 && strandAreaCm2 === 0 ? [{ code: "bare", startMm: section.rootDistanceMm, lengthCm }] : []
}
