import type {
  Backcombing,
  Band,
  CarrierKind,
  FoilKind,
  KindValues,
  Section,
  SectionKind,
  Stitching,
  Treatment,
} from "../../../geometry/section/section"
import type { Consistency } from "../../../presets/formula/consistency"
import type { MeasureLabel } from "../../../presets/techniques/technique"

/** What the next section drawn starts from, whichever kind it will be. */
export type NextSection = {
  taken: Band["taken"]
  depthMm: Readonly<Record<SectionKind, number>>
  treatment: Omit<Treatment, "mapNumber">
  stitching: Readonly<Record<"weave" | "backcomb", Stitching>>
  backcombing: Backcombing
  leftOutName: string
}

/** Values by their group, of which a section has those of its kind. */
export type ValuesHad = { readonly [Group in keyof KindValues]?: KindValues[Group] }
/** New values by their group; a section takes those of its kind and passes over the rest. */
export type ValuesGiven = { readonly [Group in keyof KindValues]?: Partial<KindValues[Group]> | undefined }

/** A group of fields that the editor shows for a kind, beside those of every foil. */
export type FieldGroup = keyof KindValues

/** What the trade knows of a kind of section, in one record: nothing else asks which kind one is. */
export type KindRecord<K extends SectionKind> = {
  /** A section of this kind along a band, from what the next one starts from. */
  make(band: Band, treatment: Treatment, next: NextSection): Section<K>
  /** What it has that not every section has. */
  values(section: Section<K>): ValuesHad
  take(section: Section<K>, given: ValuesGiven): Section<K>
  /** How deep the first one drawn is, mm. */
  depthMm: number
  /** How deep the next one is can be said by a word beside the tools. */
  isDepthWorded: boolean
  /** What its depth is called where a technique is varied by it. */
  depthLabel: MeasureLabel
  /** The key that takes up its tool. */
  key: string
  fields: readonly FieldGroup[]
  traits: K extends FoilKind ? FoilTraits : null
}

/** What sections are called together: what lies in foil, what is painted, or some of each. */
export type Piece = "foil" | "panel" | "both"

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
  /** What it can lie in, the usual first. */
  carriers: readonly CarrierKind[]
  /** What of its treatment goes by the kind, so that it stays behind when the hair is taken up another way. */
  ownTreatment: readonly (keyof Treatment)[]
  /** Its roots can have a mix of their own. */
  takesRoots: boolean
  /** What one of it is called where it is counted. */
  piece: Exclude<Piece, "both">
}

/** What lies in foil as a rule. */
export const foiled = {
  carriers: ["foil", "board", "open-air"],
  ownTreatment: [],
  takesRoots: true,
  piece: "foil",
} as const satisfies Partial<FoilTraits>
