import type { SurfacePoint } from "../surface/frames"
import { between, type SurfacePath } from "../surface/surfacePath"
import type { Hairline } from "./hairline"

/** The longest unbroken part of a finely cut line that lies inside the hairline, cut at the hairline; empty when none does. */
export function longestRunInside(hairline: Hairline, points: SurfacePath): SurfacePath {
  let longest: SurfacePoint[] = []
  let run: SurfacePoint[] = []
  points.forEach((at, i) => {
    const before = points[i - 1]
    if (hairline.contains(at)) {
      if (run.length === 0 && before) run.push(crossing(hairline, at, before))
      run.push(at)
    } else if (run.length > 0) {
      run.push(crossing(hairline, before, at))
      run = []
    }
    if (run.length > longest.length) longest = run
  })
  return longest
}

/** The last place inside the hairline on the way from a place inside to one outside. */
export function crossing(hairline: Hairline, inside: SurfacePoint, outside: SurfacePoint): SurfacePoint {
  return between(inside, outside, shareInside(hairline, inside, outside))
}

/** The share of that way that lies inside, good to a ten-thousandth. */
export function shareInside(hairline: Hairline, inside: SurfacePoint, outside: SurfacePoint): number {
  let [low, high] = [0, 1]
  for (let i = 0; i < 14; i++) {
    const middle = (low + high) / 2
    if (hairline.contains(between(inside, outside, middle))) low = middle
    else high = middle
  }
  return low
}
