import { isFoil, type Section } from "../../../geometry/section/section"
import { viewPoint } from "../../../geometry/surface/frames"
import type { Plan } from "../../core/document/schema"
import type { InkName } from "../../drawing/inks"
import { labelRing, ringWithin } from "../../drawing/labelRings"
import type { Mark } from "../../drawing/mark"
import { bandRing, labelMarks, lineMarks, marksOfSection, planMarks, type Scene } from "../../drawing/marks"
import { wornMarks } from "../../drawing/wornMarks"
import type { Draft, DraftBox } from "../../session/draftStore"
import { type Camera, toScreen } from "./camera"
import { dividersAtRest, dividersInHand, workingSigns } from "./drawDividers"
import { drawMarks, type Pen } from "./drawMarks"
import { handlesOf } from "./handles"
import type { HeadPicture } from "./headPicture"
import type { PaneState } from "./paneState"

const labelHeightPx = 26

export const penOf = ({ camera, enlarged }: PaneState): Pen => ({
  camera,
  weight: enlarged ? 1 : 0.62,
  letters: enlarged ? 0.84 : 0.6,
})

/** The head and every section of the plan, with their numbers where there is room. */
export function drawSettled(context: CanvasRenderingContext2D, pane: PaneState) {
  const { picture, plan, camera } = pane
  drawShade(context, picture, camera)
  const pen = penOf(pane)
  drawMarks(context, picture.lines, pen)
  drawMarks(context, wornMarks(plan, picture.scene), pen)
  drawMarks(context, dividersAtRest(pane), pen)
  drawMarks(context, pane.isInTime ? leftOutMarks(plan, picture.scene) : planMarks(plan, picture.scene), pen)
  drawMarks(context, workingSigns(pane), pen)
  if (pane.enlarged) drawMarks(context, numbers(pane, plan), pen)
}

const leftOutMarks = (plan: Plan, scene: Scene): Mark[] =>
  plan.sections
    .filter((section) => !isFoil(section))
    .flatMap((section) => [...marksOfSection(section, plan, scene)])

/** The numbers round the head, none of them beyond the edge of the pane while the head is where it belongs. */
function numbers({ name, head, picture, camera }: PaneState, plan: Plan): Mark[] {
  const heightMm = labelHeightPx / camera.pxPerMm
  const [halfWidthMm, halfHeightMm] = [camera.width, camera.height].map((px) => px / camera.pxPerMm / 2)
  const ring = ringWithin(
    labelRing(name, head.axes),
    camera.centre,
    halfWidthMm - heightMm,
    halfHeightMm - heightMm,
  )
  return labelMarks(plan, picture.scene, ring, heightMm)
}

export function drawShade(context: CanvasRenderingContext2D, { shade }: HeadPicture, camera: Camera) {
  if (shade) drawOverShade(context, shade.image, shade, camera)
}

/** An image where the shade of a head lies, as large. */
export function drawOverShade(
  context: CanvasRenderingContext2D,
  image: HTMLCanvasElement,
  { left, top, width, height }: NonNullable<HeadPicture["shade"]>,
  camera: Camera,
) {
  const [x, y] = toScreen(camera, viewPoint(left, top))
  context.imageSmoothingEnabled = true
  context.imageSmoothingQuality = "high"
  context.drawImage(image, x, y, width * camera.pxPerMm, height * camera.pxPerMm)
}

/** What is in hand: the selection, its handles, the sections as they would be, and a box drawn round some. */
export function drawInHand(
  context: CanvasRenderingContext2D,
  pane: PaneState,
  { draft, box }: { draft: Draft | null; box: DraftBox | null },
) {
  const { picture, selectedIds } = pane
  const pen = penOf(pane)
  const plan = draft?.plan ?? pane.plan
  if (draft)
    for (const section of draft.changed) drawMarks(context, marksOfSection(section, plan, picture.scene), pen)
  drawMarks(context, dividersInHand(pane, draft), pen)
  if (draft?.hint && pane.enlarged)
    drawMarks(context, lineMarks(draft.hint.guide, "guide", picture.scene), pen)
  const selected = draft ? draft.changed : plan.sections.filter(({ id }) => selectedIds.includes(id))
  const ink = selected.length > 1 ? "selected-many" : "selected"
  for (const section of selected) drawMarks(context, ringMarks(section, plan, picture.scene, ink), pen)
  if (!draft && pane.enlarged && selected.length === 1)
    drawMarks(context, handleMarks(selected[0], plan, picture.scene), pen)
  if (box?.viewName === pane.name) drawMarks(context, [boxMark(box)], pen)
}

function boxMark({ from: [left, top], to: [right, bottom] }: DraftBox): Mark {
  const corners = [
    viewPoint(left, top),
    viewPoint(right, top),
    viewPoint(right, bottom),
    viewPoint(left, bottom),
  ]
  return { kind: "line", path: corners, closed: true, ink: "box" }
}

/** A ring round a section; a fine one when there are many, so that what each is taken up as stays to be seen. */
const ringMarks = (section: Section, plan: Plan, scene: Scene, ink: InkName): Mark[] =>
  bandRing(section, plan, scene).map((path) => ({ kind: "line", path, closed: true, ink }))

/** Where a hand could take hold of a section. */
const handleMarks = (section: Section, plan: Plan, scene: Scene): Mark[] =>
  handlesOf(section, plan, scene).map(({ at }) => ({ kind: "dot", at, ink: "handle" }))
