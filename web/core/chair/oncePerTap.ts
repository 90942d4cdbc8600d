import type { Chair } from "./chair"

/** What does not change while only time goes by. */
type Still = Pick<Chair, "foils" | "log" | "bowls" | "toners" | "heatMin">

/** Works a thing out once for each tap, and anew where the plan under it has changed: a second in between costs nothing. */
export function oncePerTap<C extends Pick<Chair, "foils" | "log"> & Partial<Still>, T>(
  work: (chair: C) => T,
): (chair: C) => T {
  const known = new WeakMap<Chair["log"], { still: Partial<Still>; result: T }>()
  return (chair) => {
    const found = known.get(chair.log)
    if (found && parts.every((part) => found.still[part] === chair[part])) return found.result
    const result = work(chair)
    known.set(chair.log, { still: chair, result })
    return result
  }
}

const parts = ["foils", "bowls", "toners", "heatMin"] as const
