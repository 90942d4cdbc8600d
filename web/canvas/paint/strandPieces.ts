import { pointsEach } from "../../../geometry/strands/grow"
import type { Vec3 } from "../../../geometry/surface/vec3"
import type { OrthographicView } from "../../../geometry/surface/views"
import type { Fall } from "../../core/fall/fall"
import type { PaneState } from "./paneState"

/** A stretch of one strand that is drawn in one stroke: its first and last point, by place in the list of all points. */
type Stretches = number[]
/** Stretches by tone, from the darkest. */
export type Layer = { dark: Stretches[]; tip: Stretches[]; light: Stretches[] }
/** The hair as one page shows it: pixels of every point, and from the farthest layer to the nearest what lies behind the head and before it. */
export type Pieces = { xy: Float32Array; behind: Layer[]; before: Layer[] }

export const tonesEach = 6
const stretchSteps = 5
const layerCount = 44

/** Sorts the hair into layers, each piece with the tone that light from above gives it; leaves out what other hair covers. */
export function strandPieces(
  pane: PaneState,
  view: OrthographicView,
  { strands, light }: Fall,
  grownMm: number,
): Pieces {
  const page = layOnPage(pane, view, strands.points)
  const isCovered = coverOf(page)
  const [behind, before] = [emptyLayers(), emptyLayers()]
  const { points, lengthsMm, count } = strands
  const { scene } = pane.picture
  for (let strand = 0; strand < count; strand++) {
    const stepMm = lengthsMm[strand] / (pointsEach - 1)
    const own = ((strand * 0.618034) % 1) - 0.5
    let isBehind = false
    for (let k = 0; k < pointsEach - 1; k += stretchSteps) {
      const first = strand * pointsEach + k
      const last = Math.min(first + stretchSteps, (strand + 1) * pointsEach - 1)
      const middle = (first + last) >> 1
      if (isCovered(middle)) continue
      const shine = 0.32 + 0.5 * (lightOn(points, first, last, view) - 0.5) + 0.42 * own
      // What has gone behind the head comes out behind it.
      isBehind = isBehind && k >= hangsFrom
      isBehind ||= [first, middle, last].some((point) => scene.hides(placeOf(points, point), earMm))
      const layer = (isBehind ? behind : before)[page.layerOf(depthAbout(page.depth, strand, middle))]
      const isTip = k + stretchSteps >= pointsEach - 1
      const [from, to] = lightBetween(light, strand, { stepMm, grownMm })
      const natural = (a: number, b: number) => {
        if (b > a) layer[isTip ? "tip" : "dark"][toneOf(shine, false)].push(a, b)
      }
      const begins = Math.min(last, Math.max(first, strand * pointsEach + from))
      const ends = Math.min(last, Math.max(begins, strand * pointsEach + to))
      natural(first, begins)
      if (ends > begins) layer.light[toneOf(shine, true)].push(begins, ends)
      natural(ends, last)
    }
  }
  return { xy: page.xy, behind, before }
}

/** The points of a strand that its light begins and ends nearest to: none where it has no light. */
function lightBetween(
  { by, fromMm, toMm }: Fall["light"],
  strand: number,
  { stepMm, grownMm }: { stepMm: number; grownMm: number },
): [number, number] {
  if (by[strand] < 0) return [0, 0]
  const place = (mm: number) => Math.min(pointsEach - 1, Math.round((mm + grownMm) / stepMm))
  return [place(fromMm[strand]), place(toMm[strand])]
}

/** Hair that lies this near behind a part of the head is drawn over it: it covers the ears. */
const earMm = 12

const placeOf = (points: Float32Array, point: number): Vec3 => [
  points[3 * point],
  points[3 * point + 1],
  points[3 * point + 2],
]

const emptyLayers = (): Layer[] =>
  Array.from({ length: layerCount }, () => ({ dark: emptyTones(), tip: emptyTones(), light: emptyTones() }))
const emptyTones = (): Stretches[] => Array.from({ length: tonesEach }, () => [])

type Page = { xy: Float32Array; depth: Float32Array; pxPerMm: number; layerOf(depthMm: number): number }

function layOnPage(
  { camera }: PaneState,
  { right, up, toward }: OrthographicView,
  points: Float32Array,
): Page {
  const count = points.length / 3
  const xy = new Float32Array(2 * count)
  const depth = new Float32Array(count)
  const { centre, pxPerMm } = camera
  let [near, far] = [-1e9, 1e9]
  for (let i = 0; i < count; i++) {
    const x = points[3 * i]
    const y = points[3 * i + 1]
    const z = points[3 * i + 2]
    xy[2 * i] = camera.width / 2 + (right[0] * x + right[1] * y + right[2] * z - centre[0]) * pxPerMm
    xy[2 * i + 1] = camera.height / 2 - (up[0] * x + up[1] * y + up[2] * z - centre[1]) * pxPerMm
    const toViewer = toward[0] * x + toward[1] * y + toward[2] * z
    depth[i] = toViewer
    if (toViewer > near) near = toViewer
    if (toViewer < far) far = toViewer
  }
  const layerOf = (mm: number) =>
    Math.min(layerCount - 1, Math.floor(((mm - far) / (near - far)) * layerCount))
  return { xy, depth, pxPerMm, layerOf }
}

const hangsFrom = 12
const [aboutBefore, aboutAfter] = [3, 8]

/** The mean depth of a strand about one of its points; where it hangs, of all that hangs, so that neighbours do not cross by turns. */
function depthAbout(depth: Float32Array, strand: number, point: number) {
  const root = strand * pointsEach
  const isHanging = point - root >= hangsFrom
  const from = isHanging ? root + hangsFrom : Math.max(root, point - aboutBefore)
  const to = isHanging ? root + pointsEach - 1 : point + aboutAfter
  let sum = 0
  for (let i = from; i <= to; i++) sum += depth[i]
  return sum / (to - from + 1)
}

const cellMm = 6
const skinMm = 9
const coverPoints = 9

/** Whether so much hair lies within 9 mm of the nearest, over a point and its 6 mm of page, that nothing farther shows. */
function coverOf({ xy, depth, pxPerMm }: Page) {
  const cellPx = cellMm * pxPerMm
  const cellOf = (point: number) =>
    (Math.floor(xy[2 * point] / cellPx) & 255) + 256 * (Math.floor(xy[2 * point + 1] / cellPx) & 255)
  const nearest = new Float32Array(65536).fill(-1e9)
  const covers = new Uint16Array(65536)
  for (let i = 0; i < depth.length; i++) nearest[cellOf(i)] = Math.max(nearest[cellOf(i)], depth[i])
  for (let i = 0; i < depth.length; i++) if (depth[i] > nearest[cellOf(i)] - skinMm) covers[cellOf(i)] += 1
  return (point: number) =>
    covers[cellOf(point)] >= coverPoints && depth[point] < nearest[cellOf(point)] - 2 * skinMm
}

/** Where the light is, as the viewer has it: a little to the right, above and on the viewer's side. */
const [lampRight, lampUp, lampToward] = [0.28, 0.3, 0.91]
const middleY = -12
const highest = 45

/**
 * How bright a stretch is, about 0 to 1: hair shines square to its own way (Kajiya and Kay 1989), and a head of hair is
 * round, so that what turns away from the viewer is darker.
 */
function lightOn(points: Float32Array, first: number, last: number, { right, up, toward }: OrthographicView) {
  const [a, b] = [3 * first, 3 * last]
  const x = points[b] - points[a]
  const y = points[b + 1] - points[a + 1]
  const z = points[b + 2] - points[a + 2]
  const size = Math.sqrt(x * x + y * y + z * z) || 1
  const to = (way: readonly [number, number, number]) => (way[0] * x + way[1] * y + way[2] * z) / size
  const along = lampRight * to(right) + lampUp * to(up) + lampToward * to(toward)
  const out = [points[b], points[b + 1] - middleY, Math.max(0, points[b + 2] - highest)]
  const reach = Math.hypot(out[0], out[1], out[2]) || 1
  const round = (out[0] * toward[0] + out[1] * toward[1] + out[2] * toward[2]) / reach
  const lit = (out[0] * up[0] + out[1] * up[1] + out[2] * up[2]) / reach
  return 0.75 * (1 - along * along) ** 2 + 0.35 * round + 0.15 * lit
}

const toneOf = (share: number, isLight: boolean) => {
  const tone = Math.floor((isLight ? share + 0.25 : share) * tonesEach)
  return Math.max(0, Math.min(tonesEach - 1, tone))
}
