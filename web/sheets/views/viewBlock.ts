import type { HeadLine } from "../../../geometry/portrait/headLine"
import { isFoil, type Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Overlap } from "../../core/figures/overlaps"
import type { PaperView, Picture } from "../../drawing/headDrawing"
import type { InkName } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import { hairlineMarks, planMarks } from "../../drawing/marks"
import { overlapMarks } from "../../drawing/overlapMarks"
import { wornMarks } from "../../drawing/wornMarks"
import { type Align, type Item, type StampPart, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, rectangle, type } from "../setting/typesetting"
import type { Edges, ViewFrame } from "./viewFrame"
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
  press: Press
}

const lineInks: Record<HeadLine["weight"], InkName> = {
  bold: "head-bold",
  medium: "head-medium",
  fine: "head-fine",
}

/** One view of the head with the sections on it, its sides named in words. */
export function viewBlock(setting: ViewSetting): Block {
  const { plan, overlaps, picture, frame, named, scale, widthMm, press } = setting
  const { drawing, toPaper, heightMm } = viewDrawing(setting)
  const labels = viewLabels(named, {
    plan,
    overlaps,
    scene: picture.scene,
    rings: { ...frame, scale },
    toPaper,
    widthMm,
    press,
  })
  const { pictures, views } = press.words.sheets
  const foils = named.filter(isFoil).map(({ mapNumber }) => mapNumber)
  const alt = pictures.view(views.captions[setting.name], foils)
  return { heightMm, items: tagged([drawing, ...labels, ...captions(setting, heightMm)], "Figure", alt) }
}

type Drawn = Pick<ViewSetting, "plan" | "overlaps" | "picture" | "scale" | "flipped" | "widthMm"> & {
  frame: Edges
}

/** The head and the sections on it, without a word. */
export function viewDrawing({ plan, overlaps, picture, frame, scale, flipped, widthMm }: Drawn) {
  const { scene } = picture
  const drawnMm = (frame.right - frame.left) * scale
  const heightMm = (frame.top - frame.bottom) * scale
  const indent = (widthMm - drawnMm) / 2
  const toPaper: ToPaper = ([x, y]) => [
    indent + (flipped ? frame.right - x : x - frame.left) * scale,
    (frame.top - y) * scale,
  ]
  const place = [indent, flipped, frame.left, frame.right, frame.top, scale].join(" ")
  const worn = markItems(wornMarks(plan, scene), toPaper)
  const sections = markItems([...planMarks(plan, scene), ...overlapMarks(overlaps, scene)], toPaper)
  const working = workingItems(plan, scene, { scale, toPaper })
  const drawing: Item = {
    kind: "clipped",
    path: rectangle(0, 0, widthMm, heightMm),
    items: [
      ...working.washes,
      ...sections.tones,
      { kind: "stamp", parts: headLines(picture, place, toPaper), at: [0, 0] },
      ...worn.lines,
      ...working.under,
      ...sections.lines,
      ...working.over,
    ],
  }
  return { drawing, toPaper, heightMm }
}

const linesOf = new WeakMap<Picture, Map<string, readonly StampPart[]>>()

/** The head itself, one and the same for all drawings of it that lie alike: paper keeps it once. */
function headLines(picture: Picture, place: string, toPaper: ToPaper): readonly StampPart[] {
  const ofPicture = linesOf.get(picture) ?? new Map<string, readonly StampPart[]>()
  linesOf.set(picture, ofPicture)
  const { lines, scene } = picture
  const marks = lines.map(({ path, weight }): Mark => ({ kind: "line", path, ink: lineInks[weight] }))
  const made = ofPicture.get(place) ?? markItems([...marks, ...hairlineMarks(scene)], toPaper).lines
  ofPicture.set(place, made)
  return made
}

const below = 3.6

/** What the view is, and which side of the client is where, in words in the corners that the head leaves free. */
function captions({ name, flipped, outer, widthMm, press }: ViewSetting, heightMm: number): Item[] {
  const said = press.words.sheets.views
  const title = said.titles[name]
  if (name === "left" || name === "right")
    return [letters(title, [outer === "left" ? 0 : widthMm, below], type.strong, outer)]
  const rightFirst = (name === "front") !== flipped
  const [first, second] = rightFirst
    ? [said.sides.right, said.sides.left]
    : [said.sides.left, said.sides.right]
  const corner = ([above, below]: readonly string[], x: number, align: Align) => [
    letters(above, [x, heightMm - 5], type.strong, align),
    letters(below, [x, heightMm], type.strong, align),
  ]
  return [
    letters(title, [0, below], type.strong),
    ...(flipped ? [letters(said.inMirror, [0, below + 5], type.strong)] : []),
    ...corner(first, 0, "left"),
    ...corner(second, widthMm, "right"),
  ]
}
