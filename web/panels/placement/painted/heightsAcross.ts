import type { FlatPanel, PanelPoint } from "../../../../geometry/painted/flatPanel"
import { drawnSteps } from "../../../../presets/placement/painting"
import { leastStrandShare } from "../../../core/fields/limits"

/** How much of the panel's width a stroke has to cross to be an edge. */
const leastAcross = 0.25

/**
 * A stroke as shares of the hair's length at even steps across the panel; past its ends it goes on level. Null where it
 * crosses too little of the panel to be an edge.
 */
export function heightsAcross(
  stroke: readonly PanelPoint[],
  { widthMm, lengthMm, strand }: FlatPanel,
): number[] | null {
  const line = stroke.toSorted(([a], [b]) => a - b)
  const [first, last] = [line[0], line[line.length - 1]]
  if (!first || !last || last[0] - first[0] < leastAcross * widthMm) return null
  const lowest = strand.to - leastStrandShare
  return Array.from({ length: drawnSteps }, (_, i) => {
    const share = downAt(line, (widthMm * i) / (drawnSteps - 1)) / lengthMm
    return Math.round(Math.min(lowest, share) * 1000) / 1000
  })
}

function downAt(line: readonly PanelPoint[], acrossMm: number): number {
  const after = line.findIndex(([x]) => x >= acrossMm)
  if (after < 0) return line[line.length - 1][1]
  if (after === 0) return line[0][1]
  const [[fromX, from], [toX, to]] = [line[after - 1], line[after]]
  return toX > fromX ? from + ((to - from) * (acrossMm - fromX)) / (toX - fromX) : to
}
