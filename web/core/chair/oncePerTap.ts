import { rememberedLast } from "../memory/remembered"
import type { Chair } from "./chair"

/** What does not change while only time goes by. */
type Still = Pick<Chair, "foils" | "log" | "bowls" | "toners" | "heatMin">

/** Works a thing out once for each tap, and anew where the plan under it has changed: a second in between costs nothing. */
export function oncePerTap<C extends Pick<Chair, "foils" | "log"> & Partial<Still>, T>(
  work: (chair: C) => T,
): (chair: C) => T {
  const worked = rememberedLast(
    (before: C, now: C) => parts.every((part) => before[part] === now[part]),
    (_: Chair["log"], chair: C) => work(chair),
  )
  return (chair) => worked(chair.log, chair)
}

const parts = ["foils", "bowls", "toners", "heatMin"] as const
