/** The mixes that some foil is coated with, in their own order. */
export const mixesUsed = <M extends { id: string }>(
  mixes: readonly M[],
  foils: readonly { mix: string }[],
): M[] => mixes.filter(({ id }) => foils.some(({ mix }) => mix === id))
