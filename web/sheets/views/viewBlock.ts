import type { HeadLine } from "../../../geometry/portrait/headLine"
import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Overlap } from "../../core/figures/overlaps"
import type { PaperView, Picture } from "../../drawing/headDrawing"
import type { InkName } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import { hairlineMarks, planMarks } from "../../drawing/marks"
import { overlapMarks } from "../../drawing/overlapMarks"
import { wornMarks } from "../../drawing/wornMarks"
import type { Fonts } from "../pens/fontFile"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { letters, rectangle, type } from "../setting/typesetting"
import type { ViewFrame } from "./viewFrame"
import { markItems, type ToPaper } from "./viewItems"
import { viewLabels } from "./viewLabels"
import { workingItems } from "./workingItems"

export type ViewSetting = {
  plan: Plan
  /** Hair that two sections take, told by a hatch and, where there is room, by a word. */
  overlaps: readonly Overlap[]
  name: PaperView
  picture: Picture
  frame: ViewFrame
  /** The sections whose number or name is written at this view. */
  named: readonly Section[]
  scale: number
  /** Left and right changed over, as in the mirror. */
  flipped: boolean
  /** The side of the view toward the edge of the page. */
  outer: "left" | "right"
  widthMm: number
  fonts: Fonts
}

const lineInks: Record<HeadLine["weight"], InkName> = {
  bold: "head-bold",
  medium: "head-medium",
  fine: "head-fine",
}

/** One view of the head with the sections on it, its sides named in words. */
export function viewBlock(setting: ViewSetting): Block {
  const { plan, overlaps, picture, frame, named, scale, widthMm, fonts } = setting
  const { drawing, toPaper, heightMm } = viewDrawing(setting)
  const labels = viewLabels(named, {
    plan,
    overlaps,
    scene: picture.scene,
    rings: { ...frame, scale },
    toPaper,
    widthMm,
    fonts,
  })
  return { heightMm, items: [drawing, ...labels, ...captions(setting, heightMm)] }
}

type Drawn = Pick<ViewSetting, "plan" | "overlaps" | "picture" | "frame" | "scale" | "flipped" | "widthMm">

/** The head and the sections on it, without a word. */
export function viewDrawing({ plan, overlaps, picture, frame, scale, flipped, widthMm }: Drawn) {
  const { scene, lines } = picture
  const drawnMm = (frame.right - frame.left) * scale
  const heightMm = (frame.top - frame.bottom) * scale
  const indent = (widthMm - drawnMm) / 2
  const toPaper: ToPaper = ([x, y]) => [
    indent + (flipped ? frame.right - x : x - frame.left) * scale,
    (frame.top - y) * scale,
  ]
  const headMarks = lines.map(({ path, weight }): Mark => ({ kind: "line", path, ink: lineInks[weight] }))
  const head = markItems([...headMarks, ...hairlineMarks(scene), ...wornMarks(plan, scene)], toPaper)
  const sections = markItems([...planMarks(plan, scene), ...overlapMarks(overlaps, scene)], toPaper)
  const working = workingItems(plan, scene, { scale, toPaper })
  const drawing: Item = {
    kind: "clipped",
    path: rectangle(0, 0, widthMm, heightMm),
    items: [
      ...working.washes,
      ...sections.tones,
      ...head.lines,
      ...working.under,
      ...sections.lines,
      ...working.over,
    ],
  }
  return { drawing, toPaper, heightMm }
}

const below = 3.6

/** What the view is, and which side of the client is where, in words in the corners that the head leaves free. */
function captions({ name, flipped, outer, widthMm }: ViewSetting, heightMm: number): Item[] {
  const outerX = outer === "left" ? 0 : widthMm
  if (name === "left" || name === "right")
    return [letters(`CLIENT’S ${name.toUpperCase()}`, [outerX, below], type.strong, outer)]
  const rightFirst = (name === "front") !== flipped
  const [first, second] = rightFirst ? ["RIGHT", "LEFT"] : ["LEFT", "RIGHT"]
  return [
    letters(name.toUpperCase(), [0, below], type.strong),
    ...(flipped ? [letters("IN THE MIRROR", [0, below + 5], type.strong)] : []),
    letters("CLIENT’S", [0, heightMm - 5], type.strong),
    letters(first, [0, heightMm], type.strong),
    letters("CLIENT’S", [widthMm, heightMm - 5], type.strong, "right"),
    letters(second, [widthMm, heightMm], type.strong, "right"),
  ]
}
