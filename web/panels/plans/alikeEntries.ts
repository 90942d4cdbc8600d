import type { ShelfEntry } from "../../storage/records"

/** Of plans with the same name and initials, which of them each is, the same whatever was opened last. */
export function alikeEntries(entries: readonly ShelfEntry[]): ReadonlyMap<string, number> {
  const idsOf = new Map<string, string[]>()
  for (const { id, name, initials } of entries) {
    const called = `${name.trim()}\n${initials}`
    idsOf.set(called, [...(idsOf.get(called) ?? []), id])
  }
  const alike = [...idsOf.values()].filter((ids) => ids.length > 1)
  return new Map(alike.flatMap((ids) => ids.sort().map((id, i) => [id, i + 1] as const)))
}
