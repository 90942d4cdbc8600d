import { letters } from "./limits"

/** A name with words about it, cut so that the whole stays a name: what the words say is never cut. */
export function nameWithin(name: string, named: (name: string) => string): string {
  const kept = [...name]
  while (kept.length > 0 && [...named(kept.join(""))].length > letters.name) kept.pop()
  return named(kept.join(""))
}
