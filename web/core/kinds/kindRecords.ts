import type { Foil, SectionKind } from "../../../geometry/section/section"
import { backcomb } from "./backcomb"
import type { FoilTraits, KindRecord } from "./kindRecord"
import { leftOut } from "./leftOut"
import { slice } from "./slice"
import { weave } from "./weave"

/** The kinds of section, one record each. */
export const kindRecords: { readonly [K in SectionKind]: KindRecord<K> } = {
  slice,
  weave,
  backcomb,
  "left-out": leftOut,
}

export const sectionKindNames = Object.keys(kindRecords) as SectionKind[]

/** How the hair of a foil behaves once it is coated. */
export const traitsOf = ({ kind }: Pick<Foil, "kind">): FoilTraits => kindRecords[kind].traits
