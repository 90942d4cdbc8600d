import type { TechniqueParting } from "../../geometry/placing/technique"
import type { Band, SectionKind, Stitching, Treatment } from "../../geometry/section/section"
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
  /** Of a weave or a backcombed section; without it as usual. */
  stitching?: Stitching | undefined
  backcombing?: Backcombing | undefined
  /** How the hair is held, coated and wrapped; without it as usual. */
  treatment?: TechniqueTreatment | undefined
  /** What left-out hair is called. */
  name?: string | undefined
}
export type Backcombing = { base: "slice" | "weave"; pushedShare: number; cushionMm: number }
export type TechniqueTreatment = Omit<Treatment, "mapNumber" | "mix">

/** A technique of the house, with what may be varied before it is laid. */
export type TechniquePreset = Pick<Technique, "id" | "name" | "aim" | "notes"> & {
  parameters: TechniqueParameters
  shape(values: TechniqueValues): Pick<Technique, "steps" | "sections">
}

/** What may be varied: each measure with its usual value and its span, and which stitch is usual. */
export type TechniqueParameters = Partial<Record<MeasureName, Measure>> & { stitch?: StitchWord }
export type MeasureName = "depthMm" | "gapMm" | "count"
export type Measure = Figure & { name: string; step: number }
export type TechniqueValues = Record<MeasureName, number> & { stitch: StitchWord }

/** What a preset is varied by when nobody has varied it. A measure it does not have is nothing. */
export const usualValues = ({
  parameters: { depthMm, gapMm, count, stitch },
}: TechniquePreset): TechniqueValues => ({
  depthMm: depthMm?.value ?? 0,
  gapMm: gapMm?.value ?? 0,
  count: count?.value ?? 0,
  stitch: stitch ?? "fine",
})

/** The technique that a preset makes of the values chosen. */
export const techniqueOf = (preset: TechniquePreset, values = usualValues(preset)): Technique => ({
  id: preset.id,
  name: preset.name,
  aim: preset.aim,
  notes: preset.notes,
  ...preset.shape(values),
})
