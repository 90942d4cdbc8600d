import type { EdgeShape, Painting } from "./painting"

/** The bends of an edge: how far across the panel, 0 to 1, and how low it hangs there, 0 to 1. */
type Bend = readonly [across: number, low: number]

const even = (lows: readonly number[]): Bend[] =>
  lows.map((low, i) => [lows.length > 1 ? i / (lows.length - 1) : 0, low])

const roundSteps = 24
/** A parabola, as low in the middle as a V, by its chords. */
const round = Array.from({ length: roundSteps + 1 }, (_, i) => 1 - (2 * (i / roundSteps) - 1) ** 2)

const bendsOf: Record<EdgeShape, (painting: Painting) => Bend[]> = {
  straight: () => even([0, 0]),
  v: () => even([0, 1, 0]),
  w: () => even([0, 1, 0, 1, 0]),
  u: () => even(round),
  freehand: ({ drawn }) => even(drawn.length > 1 ? drawn : [0, 0]),
}

/** Where the edge bends: how far across the panel, and its share of the hair's length from the root. */
export const edgeBends = (painting: Painting, fromShare: number): Bend[] =>
  bendsOf[painting.edge](painting).map(([across, low]) => [
    across,
    Math.min(1, fromShare + painting.dropShare * low),
  ])

/** The share of the hair's length at which product begins, so far across the panel. */
export function edgeAt(painting: Painting, fromShare: number, across: number): number {
  const bends = edgeBends(painting, fromShare)
  const after = bends.findIndex(([at]) => at >= across)
  if (after <= 0) return (bends[Math.max(0, after)] ?? bends[0])[1]
  const [[fromAt, from], [toAt, to]] = [bends[after - 1], bends[after]]
  return from + ((to - from) * (across - fromAt)) / (toAt - fromAt)
}

/** An edge drawn by hand, as shares of the length at even steps across: where it starts, how far it drops, and its run. */
export function edgeDrawn(
  shares: readonly number[],
): { fromShare: number } & Pick<Painting, "edge" | "dropShare" | "drawn"> {
  const fromShare = Math.min(...shares)
  const dropShare = Math.max(...shares) - fromShare
  const drawn = shares.map((share) => (dropShare > 0 ? (share - fromShare) / dropShare : 0))
  return { edge: "freehand", fromShare, dropShare, drawn }
}
