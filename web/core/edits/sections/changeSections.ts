import {
  type Band,
  isFoil,
  type Section,
  type Stitching,
  type Treatment,
} from "../../../../geometry/section/section"
import type { Edit } from "../../document/edit"
import { replaceSections } from "./replaceSections"

/** New values by what they belong to. A section takes those its kind has and passes over the rest. */
export type SectionPatch = {
  band?: Partial<Omit<Band, "id">>
  treatment?: Partial<Treatment>
  stitching?: Partial<Stitching>
  backcombing?: { base?: "slice" | "weave"; pushedShare?: number; cushionMm?: number }
}

export const changeSection = (id: string, patch: SectionPatch): Edit => changeSections([id], patch)

export const changeSections = (ids: readonly string[], patch: SectionPatch): Edit =>
  replaceSections(ids, (section) => withBackcombing(withStitching(withBand(section, patch), patch), patch))

function withBand(section: Section, { band, treatment }: SectionPatch): Section {
  return isFoil(section) ? { ...section, ...band, ...treatment } : { ...section, ...band }
}

const withStitching = (section: Section, { stitching }: SectionPatch): Section =>
  "stitchMm" in section ? { ...section, ...stitching } : section

const withBackcombing = (section: Section, { backcombing }: SectionPatch): Section =>
  "pushedShare" in section ? { ...section, ...backcombing } : section
