import { type CoatPart, coatsOf, type RootCoat, rootsAfterMin } from "../../../geometry/section/section"

/** A mix on a strand as it is told: on which stretch, and where the roots end, mm from the scalp; null where it is all of one. */
export type CoatCode = {
  part: CoatPart
  mix: string
  rootsToMm: number | null
  /** Minutes after the one before it; none in one visit. */
  afterMin?: number
}

/** What a strand is coated with, in the order it goes on. */
export const coatCodes = (foil: { mix: string; roots?: RootCoat | undefined }): CoatCode[] =>
  coatsOf(foil).map((coat) => {
    const afterMin = coat.part === "roots" ? rootsAfterMin(foil.roots) : 0
    return { ...coat, rootsToMm: foil.roots?.toMm ?? null, ...(afterMin > 0 && { afterMin }) }
  })

/** The letters alone, where there is no room for more: "A + B" in the order they go on. */
export const coatLetters = (coats: readonly { mix: string }[]) => coats.map(({ mix }) => mix).join(" + ")
