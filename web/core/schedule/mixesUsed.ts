import { type Coated, isCoatedWith } from "../../../geometry/section/section"

/** The mixes that some foil is coated with, in their own order. */
export const mixesUsed = <M extends { id: string }>(mixes: readonly M[], foils: readonly Coated[]): M[] =>
  mixes.filter(({ id }) => foils.some((foil) => isCoatedWith(foil, id)))
