import { isFoil, type Section } from "../../../geometry/section/section"
import { type Pair, type ViewPoint, viewPoint } from "../../../geometry/surface/frames"
import type { Plan } from "../../core/document/schema"
import type { Overlap } from "../../core/figures/overlaps"
import { bandMiddle, type Scene } from "../../drawing/marks"
import { overlapMiddles } from "../../drawing/overlapMarks"
import type { Item } from "../pens/page"
import type { Press } from "../setting/press"
import {
  capMm,
  firstLines,
  ink,
  letters,
  rectangle,
  rulePt,
  strokes,
  type Type,
  type,
  white,
  widthMm,
} from "../setting/typesetting"
import { type Name, placeNames, type Rings } from "./placeNames"
import type { ToPaper } from "./viewItems"

/** The number of a foil, or the name of hair left out in at most two lines. */
type Label = Name & { lines: readonly string[]; setting: Type }

type Setting = {
  plan: Plan
  overlaps: readonly Overlap[]
  scene: Scene
  rings: Rings
  toPaper: ToPaper
  widthMm: number
  press: Press
}

/** More names than this round one drawing crowd it. */
const mostLabels = 16
const nameMm = 22
const nameLines = 2
const nameLineMm = 4
const clearMm = 1.2
const groundMm = 0.4
const dotMm = 0.55

/** Numbers and names of sections round a drawing, each with a leader to its band. */
export function viewLabels(sections: readonly Section[], setting: Setting): Item[] {
  const names = sections.flatMap((section) => labelOf(section, setting))
  const doubled = overlapMiddles(setting.overlaps, setting.scene).map((at) => twiceLabel(at, setting))
  const labels = names.length + doubled.length > mostLabels ? names : [...names, ...doubled]
  const places = placeNames(labels, setting.rings)
  const items = labels.map((label, i) => {
    const [x, y] = setting.toPaper(places[i])
    const half = label.widthMm / 2
    return labelItems(label, setting.toPaper(label.anchor), [clamp(x, half, setting.widthMm - half), y])
  })
  return [...items.flatMap(({ leader }) => leader), ...items.flatMap(({ words }) => words)]
}

const clamp = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value))

function labelOf(section: Section, { plan, scene, press }: Setting): Label[] {
  const middle = bandMiddle(section, plan, scene)
  if (!middle) return []
  const { near, far } = middle
  const setting = isFoil(section) ? type.number : type.smallStrong
  const lines = isFoil(section)
    ? [String(section.mapNumber)]
    : firstLines(section.name || press.words.sheets.views.leftOut, nameLines, nameMm, setting, press)
  return [
    {
      anchor: viewPoint((near[0] + far[0]) / 2, (near[1] + far[1]) / 2),
      lines,
      setting,
      widthMm: Math.max(...lines.map((line) => widthMm(line, setting, press))),
      heightMm: capMm(setting) + (lines.length - 1) * nameLineMm,
    },
  ]
}

/** The word for hair that two sections take: the cross-hatch alone says it in a crowd. */
function twiceLabel(anchor: ViewPoint, { press }: Setting): Label {
  const [setting, text] = [type.smallStrong, press.words.sheets.views.twice]
  return { anchor, lines: [text], setting, widthMm: widthMm(text, setting, press), heightMm: capMm(setting) }
}

/** The leader, and the words on white so that no line runs through them. */
function labelItems(label: Label, anchor: Pair, [x, y]: Pair): { leader: Item[]; words: Item[] } {
  const { lines, setting } = label
  const [halfWidth, halfHeight] = [label.widthMm / 2, label.heightMm / 2]
  const end = edgeToward(anchor, [x, y], [halfWidth + clearMm, halfHeight + clearMm])
  const [groundX, groundY] = [halfWidth + groundMm, halfHeight + groundMm]
  const ground = rectangle(x - groundX, y - groundY, 2 * groundX, 2 * groundY)
  const base = y - halfHeight + capMm(setting)
  return {
    leader: [{ kind: "area", path: disc(anchor, dotMm), ink }, strokes([[anchor, end]], rulePt.fine)],
    words: [
      { kind: "area", path: ground, ink: white },
      ...lines.map((text, i) => letters(text, [x, base + i * nameLineMm], setting, "center")),
    ],
  }
}

/** Where a line from outside meets the oval round a label. */
function edgeToward([fromX, fromY]: Pair, [x, y]: Pair, [halfWidth, halfHeight]: Pair): Pair {
  const reach = Math.hypot((fromX - x) / halfWidth, (fromY - y) / halfHeight)
  return reach <= 1 ? [fromX, fromY] : [x + (fromX - x) / reach, y + (fromY - y) / reach]
}

const disc = ([x, y]: Pair, radius: number): Pair[] =>
  Array.from({ length: 12 }, (_, i) => [
    x + radius * Math.cos((i * Math.PI) / 6),
    y + radius * Math.sin((i * Math.PI) / 6),
  ])
