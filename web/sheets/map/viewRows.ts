import { type PaperView, pictureOf } from "../../drawing/headDrawing"
import type { Block } from "../setting/block"
import { apart, beside, lowered, split, spreadGroups } from "../setting/stack"
import { viewBlock } from "../views/viewBlock"
import { frameOf } from "../views/viewFrame"
import { gutterMm, halfMm, type MapSetting } from "./mapSetting"
import { scaleBar } from "./scaleBar"

/** The rows of views a map prints: the front alone beside the side column, the two sides, then those at need. */
export function rowsOf({ named, mirror }: MapSetting): PaperView[][] {
  const extra = [...named.keys()].filter((view) => view === "top" || view === "back")
  return [["front"], mirror ? ["left", "right"] : ["right", "left"], ...(extra.length > 0 ? [extra] : [])]
}

/** Height of a row of views at a scale, mm of paper; infinite where a view is too wide for its half of the page. */
export function rowHeightMm(row: readonly PaperView[], scale: number, setting: MapSetting): number {
  const frames = row.map((name) => viewFrame(name, scale, setting))
  const tooWide = frames.some(({ left, right }) => (right - left) * scale > halfMm(setting))
  return tooWide ? Infinity : Math.max(...frames.map(({ top, bottom }) => (top - bottom) * scale))
}

const viewFrame = (name: PaperView, scale: number, { figures, named }: MapSetting) =>
  frameOf(name, pictureOf(figures.head, name), { scale, names: named.get(name)?.length ?? 0 })

/** One row of views; a view alone leaves the other half of the page free. */
export function viewRow(row: readonly PaperView[], scale: number, setting: MapSetting): Block {
  const { plan, figures, named, mirror, press } = setting
  const widthMm = halfMm(setting)
  const blocks = row.map((name, column) =>
    viewBlock({
      plan,
      overlaps: figures.overlaps,
      name,
      picture: pictureOf(figures.head, name),
      frame: viewFrame(name, scale, setting),
      named: named.get(name) ?? [],
      scale,
      flipped: mirror && name === "front",
      outer: column === 0 ? "left" : "right",
      widthMm,
      press,
    }),
  )
  return beside(...blocks.map((block, i) => ({ block, leftMm: i * (widthMm + gutterMm) })))
}

/** The front view with the side column beside it: what fits there above the scale bar, and what is left over. */
export function frontRow(
  scale: number,
  side: readonly Block[],
  setting: MapSetting,
): [row: Block, rest: Block[]] {
  const front = viewRow(["front"], scale, setting)
  const bar = scaleBar(scale, setting.press)
  const roomMm = front.heightMm - bar.heightMm
  const count = split(apart(side), roomMm)[0].length
  const [fitting, rest] = [side.slice(0, count), side.slice(count)]
  const leftMm = halfMm(setting) + gutterMm
  return [
    beside(
      { block: front, leftMm: 0 },
      { block: spreadGroups(fitting, roomMm), leftMm },
      { block: lowered(bar, roomMm), leftMm },
    ),
    rest,
  ]
}
