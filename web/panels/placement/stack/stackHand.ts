import type { SurfacePoint } from "../../../../geometry/surface/frames"
import { nearestOnPath } from "../../../../geometry/surface/nearestOnPath"
import { measurePath } from "../../../../geometry/surface/surfacePath"
import { isInReach } from "../../../drawing/landmarkPlaces"
import type { Scene } from "../../../drawing/marks"
import type { StackInHand } from "../../../session/stackStore"

/** The parting of a row on one side of a stack, counted from 1; null where there is none. */
const partingOf = ({ rows, sides }: StackInHand, row: number, side: number) =>
  row < 1 ? null : (rows(row)[(row - 1) * sides + side]?.parting ?? null)

/** Where a hand can take hold of a row: as near the middle of its parting as the page shows it. */
export function holdOf(stack: StackInHand, row: number, scene: Scene) {
  for (let side = 0; side < stack.sides; side += 1) {
    const parting = partingOf(stack, row, side) ?? []
    const middle = (parting.length - 1) / 2
    const [at] = parting
      .map((place, i) => ({ place, aside: Math.abs(i - middle) }))
      .toSorted((a, b) => a.aside - b.aside)
      .filter(({ place }) => isInReach(place, scene))
    if (at) return { side, at: at.place }
  }
  return null
}

/** The row that lies nearest to a hand, found from the one shown by going on as long as the next lies nearer: no more are made. */
export function rowUnder(at: SurfacePoint, stack: StackInHand, side: number, scene: Scene): number {
  const { surface } = scene.head
  const hand = surface.pointAt(at)
  const farMm = (row: number) => {
    const parting = row > stack.most || !holdOf(stack, row, scene) ? null : partingOf(stack, row, side)
    return parting
      ? nearestOnPath(surface, measurePath(surface, parting))(hand).chordMm
      : Number.POSITIVE_INFINITY
  }
  let row = stack.shown
  const step = farMm(row + 1) < farMm(row) ? 1 : -1
  while (farMm(row + step) < farMm(row)) row += step
  return row
}
