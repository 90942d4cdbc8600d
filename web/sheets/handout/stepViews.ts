import type { Head } from "../../../geometry/scalp/head"
import { isFoil } from "../../../geometry/section/section"
import { facing, fixedViews } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import type { TeachingStep } from "../../core/teaching/teachingSteps"
import { type PaperView, type Picture, pictureOf } from "../../drawing/headDrawing"
import { bandStart, type Scene } from "../../drawing/marks"
import { fitsHairlineFrame, hairlineFrame, hasHairlineFrame } from "../../drawing/workFrame"
import { type Item, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { beside } from "../setting/stack"
import { capMm, letters, rectangle, type, white, widthMm } from "../setting/typesetting"
import { viewDrawing } from "../views/viewBlock"
import { type Edges, frameOf } from "../views/viewFrame"
import type { ToPaper } from "../views/viewItems"
import { type Earlier, earlierSections, nothingEarlier } from "./earlierSections"

/** A plan with nothing on it of the client: no usual parting, no whorl, no working sections. */
export const bareOf = (plan: Plan): Plan => ({
  ...plan,
  sections: [],
  workingSections: undefined,
  head: { size: plan.head.size, hairline: plan.head.hairline },
})

type ViewsSetting = { widthMm: number; mirror: boolean; press: Press }
type Drawn = { plan: Plan; before: Earlier }

/** Whole heads side by side to draw on, each view named below it. */
export function blankHeads(
  names: readonly PaperView[],
  plan: Plan,
  { widthMm, scale, mirror, press }: ViewsSetting & { scale: number },
): Block {
  const eachMm = widthMm / names.length
  const drawn = { plan: bareOf(plan), before: nothingEarlier }
  return sideBySide(
    names.map((name) => oneView(name, drawn, { widthMm: eachMm, scale, frame: null, mirror, press })),
    eachMm,
  )
}

/** The largest that a step is drawn, of life size, and how high at most, mm of paper: two rows of steps to a page. */
const closest = 0.42
const highestMm = 52
/** Room over the drawing for its name. */
const nameMm = 2.6
const betweenMm = 7

/** Views of a step as close as the work is, its sections strong and numbered, those before them light, each named in its corner. */
export function stepHeads(names: readonly PaperView[], drawn: Drawn, setting: ViewsSetting): Block {
  const eachMm = (setting.widthMm - (names.length - 1) * betweenMm) / names.length
  const heads = names.map((name) => {
    const frame = workedFrame(name, drawn.plan)
    const [wide, high] = [frame.right - frame.left, frame.top - frame.bottom]
    const scale = Math.min(closest, eachMm / wide, highestMm / high)
    const withName = { ...frame, top: frame.top + nameMm / scale }
    return oneView(name, drawn, { ...setting, widthMm: eachMm, scale, frame: withName })
  })
  return sideBySide(heads, eachMm + betweenMm)
}

/** Brow to crown where the step lies within it, else the whole head. */
function workedFrame(name: PaperView, plan: Plan): Edges {
  const picture = pictureOf(headOf(plan), name)
  if (!hasHairlineFrame(name) || !fitsHairlineFrame(plan, name, picture.scene))
    return wholeFrame(name, picture)
  const [left, bottom, right, top] = hairlineFrame(name, picture.scene.head.axes)
  return { left, bottom, right, top: Math.min(top, wholeFrame(name, picture).top) }
}

function sideBySide(views: readonly Block[], eachMm: number): Block {
  const highMm = Math.max(...views.map(({ heightMm }) => heightMm))
  return beside(
    ...views.map((block, i) => ({
      block: { heightMm: highMm, items: block.items },
      leftMm: i * eachMm,
    })),
  )
}

const captionMm = 5.6
const afterMm = 1.4

/** One view: within a frame, named in the corner that the head leaves free; or whole, named below. */
function oneView(
  name: PaperView,
  { plan, before }: Drawn,
  setting: ViewsSetting & { scale: number; frame: Edges | null },
): Block {
  const { widthMm: wideMm, scale, mirror, press } = setting
  const picture = pictureOf(headOf(plan), name)
  const frame = setting.frame ?? wholeFrame(name, picture)
  const flipped = mirror && name === "front"
  const { drawing, heightMm, toPaper } = viewDrawing({
    overlaps: [],
    picture,
    frame,
    scale,
    flipped,
    widthMm: wideMm,
    plan,
  })
  const { left, right, bottom, top } = frame
  const place = {
    name: [name, flipped, wideMm, scale, left, right, bottom, top].join(" "),
    plan,
    scene: picture.scene,
    toPaper,
  }
  return {
    heightMm: heightMm + (setting.frame ? afterMm : captionMm),
    items: tagged(
      [
        { kind: "clipped", path: rectangle(0, 0, wideMm, heightMm), items: earlierSections(before, place) },
        drawing,
        ...numbers(plan, picture.scene, toPaper, press),
        setting.frame
          ? letters(viewWords(name, flipped, press), [0, 3.4], type.strong)
          : letters(viewWords(name, flipped, press), [wideMm / 2, heightMm + 4], type.strong, "center"),
      ],
      "Figure",
      press.words.sheets.pictures.view(
        viewWords(name, flipped, press),
        plan.sections.filter(isFoil).map(({ mapNumber }) => mapNumber),
      ),
    ),
  }
}

/** How far before its start a section's number is centred, mm of paper. */
const beforeStartMm = 3.4

/** The number of each section that can be seen, before its start, clear of what is drawn there. */
function numbers(plan: Plan, scene: Scene, toPaper: ToPaper, press: Press): Item[] {
  return plan.sections.filter(isFoil).flatMap((section): Item[] => {
    const start = bandStart(section, plan, scene)
    if (!start) return []
    const [at, on] = [toPaper(start.at), toPaper(start.on)]
    const long = Math.hypot(on[0] - at[0], on[1] - at[1]) || 1
    const [x, y] = [0, 1].map((axis) => at[axis] - ((on[axis] - at[axis]) / long) * beforeStartMm)
    const text = String(section.mapNumber)
    const [halfWide, halfHigh] = [widthMm(text, type.strong, press) / 2 + 0.5, capMm(type.strong) / 2 + 0.5]
    const under = rectangle(x - halfWide, y - halfHigh, 2 * halfWide, 2 * halfHigh)
    return [
      { kind: "area", path: under, ink: white },
      letters(text, [x, y + capMm(type.strong) / 2], type.strong, "center"),
    ]
  })
}

/** A whole view without the room for numbers round the head. */
function wholeFrame(name: PaperView, picture: Picture): Edges {
  const { ring, bottom } = frameOf(name, picture, { scale: 1, names: 0 })
  const top = ring.centre[1] + ring.halfHeightMm
  const edge = 2
  return {
    left: ring.centre[0] - ring.halfWidthMm - edge,
    right: ring.centre[0] + ring.halfWidthMm + edge,
    bottom,
    top: top - edge,
  }
}

const viewWords = (name: PaperView, flipped: boolean, { words }: Press): string =>
  flipped ? words.sheets.views.frontInMirror : words.sheets.views.captions[name]

const choices: readonly PaperView[] = ["front", "right", "left", "back", "top"]

/** The view that shows each side of a step best: one where both sides are seen in it, or there is one side. */
export function viewsOf({ rows: [first], sections, isPair }: TeachingStep, head: Head): PaperView[] {
  const twin = isPair ? sections.find(({ id }) => id === first.twin) : undefined
  const best = [first, ...(twin ? [twin] : [])].map(({ parting }) => {
    const middle = parting[parting.length >> 1]
    const seen = (name: PaperView) => facing(fixedViews[name], head.surface, middle)
    return choices.reduce((most, name) => (seen(name) > seen(most) ? name : most))
  })
  return choices.filter((name) => best.includes(name))
}
