import type { Section, SectionKind, Stitching } from "../../../geometry/section/section"

/** The stitches that are picked out of a section, mm, or null where all of it is taken. One row a kind. */
const rows: { [K in SectionKind]: (section: Section<K>) => Stitching | null } = {
  slice: () => null,
  weave: (section) => section,
  backcomb: (section) => (section.base === "weave" ? section : null),
  painted: () => null,
  "left-out": () => null,
}

export function stitchesOf<K extends SectionKind>(section: Section<K>): Stitching | null {
  const row: (section: Section<K>) => Stitching | null = rows[section.kind]
  return row(section)
}
