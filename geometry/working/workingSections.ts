import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import { contains } from "../surface/surfacePatch"
import { lengthMm, type SurfacePath } from "../surface/surfacePath"
import { type Face, facesOf } from "./workingSectionFaces"
import { dividingLine } from "./workingSectionLine"
import { netOf, pruned, type Stretch } from "./workingSectionNet"

/** The scalp inside the hairline as dividing partings part it, in the scalp map. */
export type Division = {
  areas: readonly DividedArea[]
  /** What each dividing parting comes to, in the order they were given. */
  dividers: readonly Divider[]
}

/** One of the areas, its outline walked to the left, and the box round it. */
export type DividedArea = {
  ring: SurfacePath
  /** Stretches of the hairline it borders, mm along it; see HairlineCoordinates. `to` may pass once round. */
  edges: readonly { fromMm: number; toMm: number }[]
  /** The dividing partings it borders, by their place in the list. */
  dividers: readonly number[]
  low: readonly [number, number]
  high: readonly [number, number]
}

/** The part of a dividing parting that divides, from edge to edge; empty when it divides nothing. And mm of it left over past each end of that part. */
export type Divider = { path: SurfacePath; looseMm: readonly [start: number, end: number] }

/**
 * Cut the scalp of a head along dividing partings. Each goes straight on over the last `reachMm` to the hairline or to
 * another; what is left over past the last edge it meets divides nothing.
 */
export function divideScalp(head: Head, partings: readonly SurfacePath[]): Division {
  const { surface, hairline } = head
  const lines = partings.map((parting) => dividingLine(surface, parting))
  const net = pruned(netOf(hairline.points, lines, hairline.contains))
  const faces = net.stretches.some(({ line }) => line >= 0) ? facesOf(net) : []
  return {
    areas: faces.length > 0 ? faces.map((face) => areaOf(face, head)) : [wholeScalp(head)],
    dividers: lines.map((line, i) =>
      dividerOf(
        head,
        line,
        net.stretches.filter((stretch) => stretch.line === i),
      ),
    ),
  }
}

/** Which of the areas a place lies in; -1 outside all. */
export const areaAt = ({ areas }: Division, at: SurfacePoint): number =>
  areas.findIndex(
    ({ ring, low, high }) =>
      at[0] >= low[0] && at[0] <= high[0] && at[1] >= low[1] && at[1] <= high[1] && contains(ring, at),
  )

function wholeScalp({ hairline: { points, lengthMm: toMm } }: Head): DividedArea {
  return { ring: points.toReversed(), edges: [{ fromMm: 0, toMm }], dividers: [], ...boxRound(points) }
}

function areaOf({ ring, sides }: Face, { hairline }: Head): DividedArea {
  const mmEach = hairline.lengthMm / hairline.points.length
  const edges = sides
    .filter(({ line }) => line < 0)
    .map(({ fromAt, toAt }) => ({ fromMm: fromAt * mmEach, toMm: toAt * mmEach }))
  const dividers = [...new Set(sides.map(({ line }) => line).filter((line) => line >= 0))]
  return { ring, edges, dividers, ...boxRound(ring) }
}

function boxRound(ring: SurfacePath): Pick<DividedArea, "low" | "high"> {
  const [us, vs] = [ring.map(([u]) => u), ring.map(([, v]) => v)]
  return { low: [Math.min(...us), Math.min(...vs)], high: [Math.max(...us), Math.max(...vs)] }
}

function dividerOf({ surface }: Head, line: SurfacePath, kept: readonly Stretch[]): Divider {
  if (kept.length === 0) return { path: [], looseMm: [0, 0] }
  const [first, last] = [kept[0], kept[kept.length - 1]]
  const drawn = line.slice(1, -1)
  const before = drawn.slice(0, Math.ceil(first.fromAt) - 1)
  const after = drawn.slice(Math.max(0, Math.floor(last.toAt)))
  return {
    path: kept.flatMap(({ path }, i) => (i === 0 ? path : path.slice(1))),
    looseMm: [
      before.length > 0 ? lengthMm(surface, [...before, first.path[0]]) : 0,
      after.length > 0 ? lengthMm(surface, [last.path[last.path.length - 1], ...after]) : 0,
    ],
  }
}
