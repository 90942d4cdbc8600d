import type {
  Band,
  FoilKind,
  Section,
  SectionKind,
  Stitching,
  Treatment,
} from "../../../geometry/section/section"
import type { Consistency } from "../../../presets/formula/consistency"

/** What the next section drawn starts from, whichever kind it will be. */
export type NextSection = {
  taken: Band["taken"]
  depthMm: Readonly<Record<SectionKind, number>>
  treatment: Omit<Treatment, "mapNumber">
  stitching: Readonly<Record<"weave" | "backcomb", Stitching>>
  backcombing: { base: "slice" | "weave"; pushedShare: number; cushionMm: number }
  leftOutName: string
}

/** A group of fields that the editor shows for a kind, beside those of every foil. */
export type FieldGroup = "stitching" | "backcombing"

/** What the trade knows of a kind of section, in one record: nothing else asks which kind one is. */
export type KindRecord<K extends SectionKind> = {
  /** A section of this kind along a band, from what the next one starts from. */
  make(band: Band, treatment: Treatment, next: NextSection): Section<K>
  /** How deep the first one drawn is, mm. */
  depthMm: number
  fields: readonly FieldGroup[]
  traits: K extends FoilKind ? FoilTraits : null
}

/** How hair of a kind behaves once it is coated. */
export type FoilTraits = {
  /** All hair of the band is taken side by side, so that it can be too deep for product to reach the middle. */
  isSolid: boolean
  /** Stitches are picked out of the band by the tail of the comb. */
  isWoven: boolean
  /** Pushed hair makes a cushion at the root: brushed out after rinsing, never coated. */
  hasCushion: boolean
  /** The consistency it is mixed to whatever it lies in; null where that goes by what it lies in. */
  consistency: Consistency | null
}
