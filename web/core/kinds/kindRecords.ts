import type { Foil, FoilKind, Section, SectionKind } from "../../../geometry/section/section"
import { backcomb } from "./backcomb"
import type { FoilTraits, KindRecord, Piece, ValuesGiven, ValuesHad } from "./kindRecord"
import { leftOut } from "./leftOut"
import { painted } from "./painted"
import { slice } from "./slice"
import { weave } from "./weave"

/** The kinds of section, one record each. */
export const kindRecords: { readonly [K in SectionKind]: KindRecord<K> } = {
  slice,
  weave,
  backcomb,
  painted,
  "left-out": leftOut,
}

export const sectionKindNames = Object.keys(kindRecords) as SectionKind[]

/** A kind that is coated, by its name alone. */
export const isFoilKind = (kind: SectionKind): kind is FoilKind => kindRecords[kind].traits !== null
/** The kinds that are coated. */
export const foilKinds: readonly FoilKind[] = sectionKindNames.filter(isFoilKind)

/** Something of every kind that is coated. */
export const byFoilKind = <Each>(make: (kind: FoilKind) => Each): Record<FoilKind, Each> =>
  Object.fromEntries(foilKinds.map((kind) => [kind, make(kind)])) as Record<FoilKind, Each>

/** How the hair of a foil behaves once it is coated. */
export const traitsOf = ({ kind }: Pick<Foil, "kind">): FoilTraits => kindRecords[kind].traits

/** The record of a section's own kind, for a section of any kind. */
const recordOf = <K extends SectionKind>(section: Section<K>): KindRecord<K> => kindRecords[section.kind]

/** What a section has that not every section has, by group. */
export const valuesOf = <K extends SectionKind>(section: Section<K>): ValuesHad =>
  recordOf(section).values(section)

/** A section with new values, of which it takes those of its kind. */
export const withValues = <K extends SectionKind>(section: Section<K>, given: ValuesGiven): Section<K> =>
  recordOf(section).take(section, given)

/** What some foils are called together; what was written down without its kind lay in foil. */
export function pieceOf(foils: readonly { kind?: FoilKind | undefined }[]): Piece {
  const pieces = new Set(foils.map(({ kind }) => (kind ? traitsOf({ kind }).piece : "foil")))
  const [first = "foil"] = pieces
  return pieces.size > 1 ? "both" : first
}
