import type { TechniqueParting } from "../../geometry/placing/technique"
import type { Band, KindValues, SectionKind, Treatment } from "../../geometry/section/section"
import type { Figure } from "../figure/figure"
import type { StitchWord } from "../placement/foils"

/** A way of working told by the hairline, so that it can be laid on any head. All of it is data: it travels as it is. */
export type Technique = {
  id: string
  name: string
  aim: string
  /** For whom it is, and what to look out for. */
  notes: string
  /** What the hands do, in order, a sentence or two each. */
  steps: readonly string[]
  sections: readonly TechniqueSection[]
}

/** A section of a technique, on the head's right and laid again on the left unless it is single. */
export type TechniqueSection = Pick<Band, "taken" | "depthMm"> & {
  kind: SectionKind
  parting: TechniqueParting
  /** Laid as it stands, without a twin on the other side. */
  single?: true | undefined
  /** Two single sections that bear the same number are laid as a pair. */
  pair?: number | undefined
  /** How the hair is held, coated and wrapped; without it as usual. */
  treatment?: TechniqueTreatment | undefined
  /** What left-out hair is called. */
  name?: string | undefined
  /** What belongs to its kind; without it as usual. */
} & { [Group in keyof KindValues]?: KindValues[Group] | undefined }
export type TechniqueTreatment = Omit<Treatment, "mapNumber" | "mix">

/** What may be varied before a technique is laid, and the sections that come of it. */
export type VariedTechnique = {
  parameters: TechniqueParameters
  shape(values: TechniqueValues): { sections: readonly TechniqueSection[] }
}

/** A technique of the house: its name, aim, notes and steps are in the words, which are told the figures of the steps. */
export type TechniquePreset<Told> = {
  id: HouseTechniqueId
  parameters: TechniqueParameters
  shape(values: TechniqueValues): { sections: readonly TechniqueSection[]; told: Told }
}

export type HouseTechniqueId =
  | "bright-frame"
  | "temple-to-temple"
  | "full-hairline"
  | "fringe-panel"
  | "off-centre-frame"
  | "unequal-sides"
  | "fan-frame"
  | "grey-blend"
  | "coil-frame"
  | "partial-weave"
  | "crown-halo"
  | "nape-peek"

/** Each measure with its usual value and its span, which stitch is usual, and the ways it can be done, the usual first. */
export type TechniqueParameters = Partial<Record<MeasureName, Measure>> & {
  stitch?: StitchWord
  ways?: readonly TechniqueWay[]
}
export type MeasureName = "depthMm" | "gapMm" | "count"
export type Measure = Figure & { label: MeasureLabel; step: number }
export type TechniqueValues = Record<MeasureName, number> & { stitch: StitchWord; way: TechniqueWay }

/** What a measure is called. */
export type MeasureLabel =
  | "depth"
  | "slice-depth"
  | "weave-depth"
  | "backcomb-depth"
  | "gap"
  | "rows"
  | "rows-a-side"
  | "slices-a-side"
  | "weaves"
  | "rows-over-forehead"
  | "rows-on-heavy-side"

/** How a technique is done where there is more than one way. */
export const techniqueWays = [
  "only",
  "bright-edge",
  "soft-edge",
  "in-turn",
  "melted",
  "parted-left",
  "parted-right",
  "heavy-right",
  "heavy-left",
] as const
export type TechniqueWay = (typeof techniqueWays)[number]

/** What is varied when nobody has varied it. A measure it does not have is nothing. */
export const usualValues = ({
  parameters: { depthMm, gapMm, count, stitch, ways },
}: Pick<VariedTechnique, "parameters">): TechniqueValues => ({
  depthMm: depthMm?.value ?? 0,
  gapMm: gapMm?.value ?? 0,
  count: count?.value ?? 0,
  stitch: stitch ?? "fine",
  way: ways?.[0] ?? "only",
})
