/** What a catalogue laid over another one holds: any of its messages. */
export type Differing<T> = T extends string | readonly unknown[] | ((...given: never[]) => unknown)
  ? T
  : { [K in keyof T]?: Differing<T[K]> }

/** A catalogue with another laid over it. */
export function joined<T>(under: T, over: Differing<T>): T {
  if (typeof over !== "object" || over === null || Array.isArray(over)) return (over ?? under) as T
  const entries = Object.entries(over).map(([key, value]) => [
    key,
    joined(under[key as keyof T], value as Differing<T[keyof T]>),
  ])
  return { ...under, ...Object.fromEntries(entries) }
}
