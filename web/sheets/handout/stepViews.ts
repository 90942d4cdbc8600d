import type { Head } from "../../../geometry/scalp/head"
import { isFoil, type Section } from "../../../geometry/section/section"
import { facing, fixedViews } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { type PaperView, pictureOf } from "../../drawing/headDrawing"
import { tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { beside } from "../setting/stack"
import { letters, rectangle, type } from "../setting/typesetting"
import { viewDrawing } from "../views/viewBlock"
import { frameOf, type ViewFrame } from "../views/viewFrame"
import { type Earlier, earlierSections } from "./earlierSections"

/** A plan with nothing on it of the client: no usual parting, no whorl, no working sections. */
export const bareOf = (plan: Plan): Plan => ({
  ...plan,
  sections: [],
  workingSections: undefined,
  head: { size: plan.head.size, hairline: plan.head.hairline },
})

type ViewsSetting = { widthMm: number; scale: number; mirror: boolean; press: Press }

/** Views of a head side by side: the sections of the plan strong, those before them light, each view named below it. */
export function headViews(
  names: readonly PaperView[],
  drawn: { plan: Plan; before: Earlier },
  { widthMm, scale, mirror, press }: ViewsSetting,
): Block {
  const eachMm = widthMm / names.length
  const views = names.map((name) => oneView(name, drawn, { widthMm: eachMm, scale, mirror, press }))
  const highMm = Math.max(...views.map(({ heightMm }) => heightMm))
  return beside(
    ...views.map((block, i) => ({
      block: { heightMm: highMm, items: block.items },
      leftMm: i * eachMm,
    })),
  )
}

const captionMm = 5.6

function oneView(
  name: PaperView,
  { plan, before }: { plan: Plan; before: Earlier },
  { widthMm, scale, mirror, press }: ViewsSetting,
): Block {
  const picture = pictureOf(headOf(plan), name)
  const frame = closeFrame(frameOf(name, picture, { scale, names: 0 }))
  const flipped = mirror && name === "front"
  const setting = { overlaps: [], picture, frame, scale, flipped, widthMm }
  const { drawing, heightMm, toPaper } = viewDrawing({ ...setting, plan })
  const place = { name: [name, flipped, widthMm, scale].join(" "), plan, scene: picture.scene, toPaper }
  return {
    heightMm: heightMm + captionMm,
    items: tagged(
      [
        { kind: "clipped", path: rectangle(0, 0, widthMm, heightMm), items: earlierSections(before, place) },
        drawing,
        letters(viewWords(name, flipped, press), [widthMm / 2, heightMm + 4], type.strong, "center"),
      ],
      "Figure",
      press.words.sheets.pictures.view(
        viewWords(name, flipped, press),
        plan.sections.filter(isFoil).map(({ mapNumber }) => mapNumber),
      ),
    ),
  }
}

/** A frame without the room for numbers round the head. */
const closeFrame = (frame: ViewFrame): ViewFrame => {
  const { centre, halfWidthMm, halfHeightMm } = frame.ring
  const top = centre[1] + halfHeightMm
  const edge = 2
  return {
    ...frame,
    left: centre[0] - halfWidthMm - edge,
    right: centre[0] + halfWidthMm + edge,
    top: top - edge,
  }
}

const viewWords = (name: PaperView, flipped: boolean, { words }: Press): string =>
  flipped ? words.sheets.views.frontInMirror : words.sheets.views.captions[name]

const choices: readonly PaperView[] = ["front", "right", "left", "back", "top"]

/** The two views that show a section best, in the order they are always shown. */
export function twoViews({ parting }: Section, head: Head): PaperView[] {
  const middle = parting[parting.length >> 1]
  const seen = (name: PaperView) => facing(fixedViews[name], head.surface, middle)
  const best = choices.toSorted((one, other) => seen(other) - seen(one)).slice(0, 2)
  return choices.filter((name) => best.includes(name))
}
