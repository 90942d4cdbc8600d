import { type CoatPart, coatsOf, type RootCoat } from "../../../geometry/section/section"

/** A mix on a strand as it is told: on which stretch, and where the roots end, mm from the scalp; null where it is all of one. */
export type CoatCode = { part: CoatPart; mix: string; rootsToMm: number | null }

/** What a strand is coated with, in the order it goes on. */
export const coatCodes = (foil: { mix: string; roots?: RootCoat | undefined }): CoatCode[] =>
  coatsOf(foil).map((coat) => ({ ...coat, rootsToMm: foil.roots?.toMm ?? null }))

/** The letters alone, where there is no room for more: "A + B" in the order they go on. */
export const coatLetters = (coats: readonly { mix: string }[]) => coats.map(({ mix }) => mix).join(" + ")
