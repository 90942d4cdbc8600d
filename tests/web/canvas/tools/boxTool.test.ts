import { expect, it } from "vitest"
import { viewPoint } from "../../../../geometry/surface/frames"
import { fixedViews, fromView } from "../../../../geometry/surface/views"
import { boxTool } from "../../../../web/canvas/tools/boxTool"
import { selectTool } from "../../../../web/canvas/tools/selectTool"
import type { Pointer, Situation } from "../../../../web/canvas/tools/tool"
import { headOf } from "../../../../web/core/figures/measured"
import { bandMiddle } from "../../../../web/drawing/marks"
import { samplePlan } from "../../../support/samples"

const head = headOf(samplePlan)
const scene = { head, view: fixedViews.top, hides: () => false }
const pointerAt = (x: number, y: number, adds = true): Pointer => ({
  viewName: "top",
  scene,
  page: viewPoint(x, y),
  at: fromView(scene.view, head.surface, viewPoint(x, y)),
  reachMm: 3,
  shift: false,
  alt: false,
  adds,
})
const situation = (selectedIds: readonly string[]): Situation => ({
  plan: samplePlan,
  head,
  selectedIds,
  dividerId: null,
})
const middle = (i: number) => bandMiddle(samplePlan.sections[i], samplePlan, scene)?.near ?? viewPoint(0, 0)

it("a box takes what it touches into the selection, and is drawn where it is", () => {
  const [x, y] = middle(0)
  const start = boxTool.start(pointerAt(x - 30, y - 30), situation(["s4"]))
  if (!start) throw new Error("the box was not begun")
  const drawn = boxTool.move(start, pointerAt(x + 5, y + 5), situation(["s4"]))
  const finished = boxTool.finish(drawn, situation(["s4"]))
  expect(finished).toMatchObject({ box: { viewName: "top", from: [x - 30, y - 30], to: [x + 5, y + 5] } })
  expect("select" in finished && finished.select).toEqual(["s4", "s1", "s3"])
})

it("a touch that adds takes one in or out; a plain one takes it alone", () => {
  const [x, y] = middle(3)
  const touch = (selectedIds: readonly string[], adds: boolean) => {
    const world = situation(selectedIds)
    const hold = selectTool.start(pointerAt(x, y, adds), world)
    return hold && selectTool.finish(hold, world)
  }
  const id = "s4"
  expect(touch([], false)).toEqual({ select: [id] })
  expect(touch(["s1"], true)).toEqual({ select: ["s1", id] })
  expect(touch(["s1", id], true)).toEqual({ select: ["s1"] })
  expect(touch(["s1", id], false)).toEqual({ select: [id] })
})
