import { edgeBends } from "./edge"
import type { BandName, Painting } from "./painting"

/** A point of a panel laid flat, mm: across it from the start of the parting, and down the hair from the root. */
export type PanelPoint = readonly [acrossMm: number, downMm: number]
export type PaintedBand = { band: BandName; outline: readonly PanelPoint[] }
/** A panel as wide as its parting and as long as its hair, and how it is painted: mm. */
export type FlatPanel = {
  widthMm: number
  lengthMm: number
  /** Product keeps off the scalp by so much. */
  startMm: number
  strand: { from: number; to: number }
  painting: Painting
}

/** The three bands of a painted panel as outlines, from the soft edge on; those that the hair is too short for are left out. */
export function paintedBands(panel: FlatPanel): PaintedBand[] {
  const half = panel.painting.featherMm / 2
  const bands: readonly [BandName, number, number][] = [
    ["soft", 0, half],
    ["middle", half, 2 * half],
    ["full", 2 * half, Number.POSITIVE_INFINITY],
  ]
  return bands.flatMap(([band, fromMm, toMm]) => {
    const outline = between(panel, fromMm, toMm)
    return areaMm2(outline) > 1e-6 ? [{ band, outline }] : []
  })
}

/** All that is painted, as one outline. */
export const paintedOutline = (panel: FlatPanel): PanelPoint[] => between(panel, 0, Number.POSITIVE_INFINITY)

/** The share of the panel's face that is painted, however full. */
export const paintedShare = (panel: FlatPanel): number => {
  const whole = panel.widthMm * panel.lengthMm
  return whole > 0 ? areaMm2(paintedOutline(panel)) / whole : 0
}

/** The area within an outline, mm2. */
export const areaMm2 = (outline: readonly PanelPoint[]): number =>
  Math.abs(
    outline.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = outline[(i + 1) % outline.length]
      return sum + x * nextY - nextX * y
    }, 0),
  ) / 2

/** What lies between two distances below the edge, no farther down than product goes. */
function between(panel: FlatPanel, fromMm: number, toMm: number): PanelPoint[] {
  const lowestMm = panel.strand.to * panel.lengthMm
  const edge = startEdge(panel)
  const upper = within(
    edge.map(([x, y]): PanelPoint => [x, y + fromMm]),
    lowestMm,
  )
  const lower =
    toMm === Number.POSITIVE_INFINITY
      ? [edge[0], edge[edge.length - 1]].map(([x]): PanelPoint => [x, lowestMm])
      : within(
          edge.map(([x, y]): PanelPoint => [x, y + toMm]),
          lowestMm,
        )
  return [...upper, ...lower.toReversed()]
}

/** The edge across the panel, mm, never nearer to the scalp than product may go. */
function startEdge({ painting, strand, widthMm, lengthMm, startMm }: FlatPanel): PanelPoint[] {
  const bends = edgeBends(painting, strand.from).map(
    ([across, share]): PanelPoint => [across * widthMm, share * lengthMm],
  )
  return cutAt(bends, startMm).map(([x, y]) => [x, Math.max(y, startMm)])
}

/** A line that goes no lower than a depth: where it would, it runs along it. */
const within = (line: readonly PanelPoint[], lowestMm: number): PanelPoint[] =>
  cutAt(line, lowestMm).map(([x, y]) => [x, Math.min(y, lowestMm)])

/** The same line with a point more wherever it crosses a depth. */
function cutAt(line: readonly PanelPoint[], atMm: number): PanelPoint[] {
  return line.flatMap((point, i): PanelPoint[] => {
    const next = line[i + 1]
    if (!next || (point[1] - atMm) * (next[1] - atMm) >= 0) return [point]
    const share = (atMm - point[1]) / (next[1] - point[1])
    return [point, [point[0] + (next[0] - point[0]) * share, atMm]]
  })
}
