import { shareOfCrossing } from "./crossing"
import type { SurfacePoint } from "./frames"
import { between, type SurfacePath } from "./surfacePath"

/** A line of the scalp map without its loops: where it meets an earlier piece of itself it goes on from the meeting place. */
export function cutLoops(path: SurfacePath): SurfacePath {
  const line: SurfacePoint[] = []
  for (const at of path) {
    const met = line.length > 2 ? firstMeeting(line, at) : null
    if (met) line.splice(met.after + 1, line.length, met.at)
    line.push(at)
  }
  return line
}

/** Where the piece from the end of a line to a new point first meets the line. */
function firstMeeting(line: SurfacePath, at: SurfacePoint): { after: number; at: SurfacePoint } | null {
  const end = line[line.length - 1]
  for (let i = 1; i < line.length - 1; i++) {
    const share = shareOfCrossing(line[i - 1], line[i], end, at)
    if (share !== null) return { after: i - 1, at: between(line[i - 1], line[i], share) }
  }
  return null
}
