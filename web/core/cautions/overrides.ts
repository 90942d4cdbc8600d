import type { Pass } from "../document/consultation"

/**
 * The overrides with one more. It takes the place of what was written of the same finding for the same visit; what was
 * written of another mix, of another thing that the rule found, or for another visit stays in the record.
 */
export const withOverride = (passes: readonly Pass[], pass: Pass): Pass[] => [
  ...passes.filter((other) => !isOfSame(other, pass)),
  pass,
]

const isOfSame = (a: Pass, b: Pass) =>
  a.rule === b.rule && a.mix === b.mix && a.about === b.about && a.visit === b.visit
