import { shareOfCrossing } from "./crossing"
import type { SurfacePath } from "./surfacePath"

/** Whether two pieces of a line that are not neighbours meet, in the scalp map. */
export function crossesItself(path: SurfacePath): boolean {
  for (let i = 1; i < path.length; i++)
    for (let j = i + 2; j < path.length; j++)
      if (shareOfCrossing(path[i - 1], path[i], path[j - 1], path[j]) !== null) return true
  return false
}
