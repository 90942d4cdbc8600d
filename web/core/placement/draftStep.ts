import type { Head } from "../../../geometry/scalp/head"
import type { Section, SectionKind } from "../../../geometry/section/section"
import { measurePath } from "../../../geometry/surface/surfacePath"
import { type PlaceCode, placeOf } from "./places"

/** A step to begin from: where a section was parted, how long and how far behind the hairline, and what was taken of it; mm. */
export type DraftStepCode = {
  kind: SectionKind
  at: PlaceCode
  lengthMm: number
  behindMm: number
  taken: "front" | "behind"
  depthMm: { start: number; end: number }
}

/** Steps of what was drawn, in the order of application. */
export const draftStepsOf = (sections: readonly Section[], head: Head): DraftStepCode[] =>
  sections.map((section) => {
    const { kind, parting, taken, depthMm } = section
    return {
      kind,
      at: placeOf(section, head),
      lengthMm: measurePath(head.surface, parting).lengthMm,
      behindMm: head.hairline.coordinates(parting[parting.length >> 1]).behindMm,
      taken,
      depthMm,
    }
  })
