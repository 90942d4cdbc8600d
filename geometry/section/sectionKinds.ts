import { backcomb } from "./backcomb"
import type { KindRow, Stitch } from "./kindRow"
import { leftOut } from "./leftOut"
import type { Section, SectionKind } from "./section"
import { slice } from "./slice"
import { weave } from "./weave"

/** The kinds of section, one row each. */
export const sectionKinds: { [K in SectionKind]: KindRow<K> } = {
  slice,
  weave,
  backcomb,
  "left-out": leftOut,
}

/** The row of a section's own kind, for a section of any kind. */
export const kindOf = <K extends SectionKind>(section: Section<K>): KindRow<K> => sectionKinds[section.kind]

/** The share of the band's hair that is coated, 0 to 1; with the ribs' true depths (mm) where the hairline cuts the band. */
export const takenShare = <K extends SectionKind>(
  section: Section<K>,
  depthsMm?: ArrayLike<number>,
): number => kindOf(section).takenShare(section, depthsMm)

/** The share of the band's hair, 0 to 1, that is gone for every later section; ribs' depths in mm as above. */
export const heldShare = <K extends SectionKind>(section: Section<K>, depthsMm?: ArrayLike<number>): number =>
  kindOf(section).heldShare(section, depthsMm)

/** The pick-ups of a section along a parting of this length, in order. */
export const stitches = <K extends SectionKind>(section: Section<K>, partingMm: number): Stitch[] =>
  kindOf(section).stitches(section, partingMm)
