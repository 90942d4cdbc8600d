import { backcomb } from "./backcomb"
import type { KindRow, Stitch } from "./kindRow"
import { leftOut } from "./leftOut"
import { painted } from "./painted"
import type { Section, SectionKind } from "./section"
import { slice } from "./slice"
import { weave } from "./weave"

/** The kinds of section, one row each. */
export const sectionKinds: { [K in SectionKind]: KindRow<K> } = {
  slice,
  weave,
  backcomb,
  painted,
  "left-out": leftOut,
}

/** The row of a section's own kind, for a section of any kind. */
export const kindOf = <K extends SectionKind>(section: Section<K>): KindRow<K> => sectionKinds[section.kind]

/** Of the hair within a section's pick-ups the share that is coated, 0 to 1. */
export const takenShare = <K extends SectionKind>(section: Section<K>): number =>
  kindOf(section).takenShare(section)

/** Of that hair the share, 0 to 1, that is gone for every later section. */
export const heldShare = <K extends SectionKind>(section: Section<K>): number =>
  kindOf(section).heldShare(section)

/** How deep a section's pick-ups reach, mm from the parting; infinite when as deep as its band. */
export const dipMm = <K extends SectionKind>(section: Section<K>): number => kindOf(section).dipMm(section)

/** The pick-ups of a section along a parting of this length, in order. */
export const stitches = <K extends SectionKind>(section: Section<K>, partingMm: number): Stitch[] =>
  kindOf(section).stitches(section, partingMm)
