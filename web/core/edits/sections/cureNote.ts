import type { Foil } from "../../../../geometry/section/section"
import { rootDistanceMm, sliceWarningMm } from "../../../../presets/placement/foils"
import type { NotedSection, SectionNote } from "../../checks/sectionNotes"
import { changeSection, type SectionPatch } from "./changeSections"

/** The section as it would be without its note. */
export const cureNote = ({ section, note }: NotedSection) =>
  changeSection(section.id, cures[note.code](section))

const cures: Record<SectionNote["code"], (section: Foil) => SectionPatch> = {
  "deep-slice": ({ depthMm: { start, end } }) => ({
    band: {
      depthMm: { start: Math.min(start, sliceWarningMm.value), end: Math.min(end, sliceWarningMm.value) },
    },
  }),
  bare: () => ({
    treatment: { rootDistanceMm: rootDistanceMm.tight.value, strand: { from: 0, to: 1 } },
  }),
}
