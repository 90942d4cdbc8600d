/** A stretch of a list, both ends included; in a closed list `to` may pass the end and go on from the start. */
export type Run = { from: number; to: number }

/** The stretches of equal neighbours in a list, in order; a closed list starts at its first change. */
export function runsOf<T>(values: readonly T[], isClosed: boolean): (Run & { value: T })[] {
  const count = values.length
  const firstChange = values.findIndex((value, i) => value !== values.at(i - 1))
  const start = isClosed ? Math.max(0, firstChange) : 0
  const runs: (Run & { value: T })[] = []
  for (let i = start; i < start + count; i++) {
    const value = values[i % count]
    const last = runs.at(-1)
    if (last && last.value === value) last.to = i
    else runs.push({ from: i, to: i, value })
  }
  return runs
}

/** The items of a run. */
export const stretch = <T>(list: readonly T[], { from, to }: Run): T[] =>
  Array.from({ length: to - from + 1 }, (_, i) => list[(from + i) % list.length])

/** Gives stretches of `value` shorter than `least` items the value of the stretch before them. */
export function withoutShort<T>(
  values: readonly T[],
  { value, least, isClosed }: { value: T; least: number; isClosed: boolean },
): T[] {
  const cleaned = [...values]
  const runs = runsOf(values, isClosed)
  runs.forEach((run, index) => {
    const before = runs[index - 1] ?? (isClosed ? runs.at(-1) : runs[index + 1])
    if (run.value !== value || run.to - run.from + 1 >= least || !before) return
    for (let i = run.from; i <= run.to; i++) cleaned[i % values.length] = before.value
  })
  return cleaned
}
