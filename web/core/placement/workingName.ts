import type { WorkingKind, WorkingSide } from "../../../geometry/working/workingSectionKind"

/**
 * What a part of the divided head is called: by the name it was given, or by where it lies. `nth` counts those of one
 * name in the order of working, from 1.
 */
export type WorkingNameCode =
  | { code: "own-name"; name: string; nth: number }
  | { code: "by-place"; kind: WorkingKind; side: WorkingSide; nth: number }

type Unnumbered<T> = T extends { nth: number } ? Omit<T, "nth"> : never

/** Names told apart by a number where two are the same. */
export const numbered = (names: readonly Unnumbered<WorkingNameCode>[]): WorkingNameCode[] =>
  names.map((name, i) => {
    const key = JSON.stringify(name)
    return { ...name, nth: names.slice(0, i + 1).filter((other) => JSON.stringify(other) === key).length }
  })
