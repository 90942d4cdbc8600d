import type { CommonWords } from "../../words/en/common/common"

const keysOf = <Key extends string>(table: Readonly<Record<Key, unknown>>) => Object.keys(table) as Key[]

/** Choices by their labels. */
export const labelledOptions = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  keysOf(labels).map((value) => ({ value, label: labels[value] }))

/** Choices by names that are written as within a sentence. */
export const namedOptions = <Value extends string>(
  names: Readonly<Record<Value, string>>,
  { figures }: CommonWords,
) => keysOf(names).map((value) => ({ value, label: figures.capital(names[value]) }))
