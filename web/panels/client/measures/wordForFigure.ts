import type { Figure } from "../../../../presets/figure/figure"

/** The words of a table of figures, in its order. */
export const wordsOf = <Word extends string>(table: Readonly<Record<Word, unknown>>) =>
  Object.keys(table) as Word[]

/** The word that stands for a figure, or null when it lies between words. */
export const wordFor = <Word extends string>(
  table: Readonly<Record<Word, Figure>>,
  value: number,
): Word | null => wordsOf(table).find((word) => table[word].value === value) ?? null
