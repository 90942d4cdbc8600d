import {
  type FlatPanel,
  type PanelPoint,
  paintedBands,
  paintedShare,
} from "../../../geometry/painted/flatPanel"
import type { BandName } from "../../../geometry/painted/painting"
import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { flatPanelOf } from "../../core/figures/flatPanelOf"
import type { Item, Path } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { beside } from "../setting/stack"
import { letters, rectangle, rulePt, strokes, type, wrap } from "../setting/typesetting"

/** Paper for life: a panel of 40 cm is 4 cm long. */
const scale = 0.1
const textGapMm = 3
const lineMm = 4.2

/** Greys that copy: thin at the edge, full below. */
const greys: Record<BandName, string> = { soft: "#d8d2c8", middle: "#9d958a", full: "#4a443c" }

/** Every painted panel laid flat at one scale, root at the top, two abreast. */
export function paintedBlocks(plan: Plan, { width, press }: { width: number; press: Press }): Block[] {
  const cells = plan.sections.flatMap((section) => {
    const panel = flatPanelOf(section, plan)
    return panel && isFoil(section) ? [panelCell(panel, section.mapNumber, width / 2, press)] : []
  })
  const rows = cells.flatMap((_, i) => (i % 2 === 0 ? [cells.slice(i, i + 2)] : []))
  return rows.map((row) => beside(...row.map((block, i) => ({ block, leftMm: (i * width) / 2 }))))
}

function panelCell(panel: FlatPanel, number: number, width: number, press: Press): Block {
  const said = press.words.sheets.map.painted
  const [wide, high] = [panel.widthMm * scale, panel.lengthMm * scale]
  const left = Math.min(wide, width / 2) + textGapMm
  const lines = [said.of({ ...panel, share: paintedShare(panel) }), said.key].flatMap((text) =>
    wrap(text, width - left - 1, type.small, press),
  )
  const onPaper = (outline: readonly PanelPoint[]): Path => outline.map(([x, y]) => [x * scale, y * scale])
  const items: Item[] = [
    ...paintedBands(panel).map(
      ({ band, outline }): Item => ({
        kind: "area",
        path: onPaper(outline),
        ink: greys[band],
      }),
    ),
    strokes([rectangle(0, 0, wide, high)], rulePt.medium, true),
    letters(press.figures.capital(press.words.common.foil(number, "panel")), [left, 3], type.strong),
    ...lines.map((line, i) => letters(line, [left, 3 + lineMm * (i + 1)], type.small)),
  ]
  return { heightMm: Math.max(high, lineMm * (lines.length + 1)) + 3, items }
}
