import type { Foil } from "../../../../geometry/section/section"
import { kindOf } from "../../../../geometry/section/sectionKinds"
import { regrowthMm, rootDistanceMm, sliceWarningMm } from "../../../../presets/placement/foils"
import type { NotedSection } from "../../checks/sectionNotes"
import { shareTo } from "../../placement/strandShare"
import { changeSection, type SectionPatch } from "./changeSections"

/** The section as it would be without its note. */
export const cureNote = ({ section, note }: NotedSection) => changeSection(section.id, cureOf(section, note))

function cureOf(section: Foil, note: NotedSection["note"]): SectionPatch {
  switch (note.code) {
    case "bare":
      return nearer(section, note.lengthCm)
    case "bare-coat":
      return { treatment: { roots: undefined } }
    case "deep-slice":
      return thinner(section)
  }
}

const thinner = ({ depthMm: { start, end } }: Foil): SectionPatch => ({
  band: {
    depthMm: { start: Math.min(start, sliceWarningMm.value), end: Math.min(end, sliceWarningMm.value) },
  },
})

/** Product from as near the root as it may go, and no further down than before, unless that leaves the new growth bare. */
function nearer(section: Foil, lengthCm: number): SectionPatch {
  const near = { ...section, rootDistanceMm: rootDistanceMm.tight.value }
  const startMm = kindOf(near).productStartMm(near)
  const { from, to } = section.strand
  const isFromRoot = from === 0 || to * lengthCm * 10 <= startMm
  const leastMm = startMm < regrowthMm.value ? regrowthMm.value : startMm + regrowthMm.value
  return {
    treatment: {
      rootDistanceMm: near.rootDistanceMm,
      strand: { from, to: isFromRoot ? Math.max(to, shareTo(leastMm, lengthCm)) : to },
    },
  }
}
