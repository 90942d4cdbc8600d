import { type ViewPoint, viewPoint } from "../../geometry/surface/frames"

/** The oval round a drawing on which numbers stand, mm of the view. */
export type LabelRing = { centre: ViewPoint; halfWidthMm: number; halfHeightMm: number }

/**
 * Where to write each label so that none covers another or the drawing: on the ring, in the direction of its
 * anchor, pushed along the ring until neighbours are `gapMm` apart. Same order as the anchors; view mm.
 */
export function placeLabels(anchors: readonly ViewPoint[], ring: LabelRing, gapMm: number): ViewPoint[] {
  const order = anchors
    .map((anchor, index) => ({ index, angle: angleOf(anchor, ring) }))
    .sort((a, b) => a.angle - b.angle || a.index - b.index)
  const circumference = Math.PI * (ring.halfWidthMm + ring.halfHeightMm)
  const gap = Math.min((gapMm / circumference) * 2 * Math.PI, (2 * Math.PI) / Math.max(anchors.length, 1))
  const angles = spread(
    order.map(({ angle }) => angle),
    gap,
  )
  const places = new Array<ViewPoint>(anchors.length)
  for (const [rank, { index }] of order.entries()) places[index] = onRing(angles[rank], ring)
  return places
}

const angleOf = ([x, y]: ViewPoint, { centre, halfWidthMm, halfHeightMm }: LabelRing) =>
  Math.atan2((x - centre[0]) / halfWidthMm, (y - centre[1]) / halfHeightMm)

const onRing = (angle: number, { centre, halfWidthMm, halfHeightMm }: LabelRing) =>
  viewPoint(centre[0] + Math.sin(angle) * halfWidthMm, centre[1] + Math.cos(angle) * halfHeightMm)

/** Rising angles moved as little as possible, cluster by cluster, so that each is `gap` from the next. */
function spread(angles: readonly number[], gap: number): number[] {
  const clusters: { centre: number; count: number }[] = []
  for (const angle of angles) {
    let last = { centre: angle, count: 1 }
    for (let before = clusters.at(-1); before && overlaps(before, last, gap); before = clusters.at(-1)) {
      clusters.pop()
      const count = before.count + last.count
      last = { centre: (before.centre * before.count + last.centre * last.count) / count, count }
    }
    clusters.push(last)
  }
  return clusters.flatMap(({ centre, count }) =>
    Array.from({ length: count }, (_, i) => centre + (i - (count - 1) / 2) * gap),
  )
}

const overlaps = (a: { centre: number; count: number }, b: { centre: number; count: number }, gap: number) =>
  b.centre - a.centre < ((a.count + b.count) / 2) * gap
