import { describe, expect, it } from "vitest"
import { placeOf } from "../../../../geometry/placing/technique"
import { surfacePoint } from "../../../../geometry/surface/frames"
import { dividerHandleTool, dividerTool } from "../../../../web/canvas/tools/dividerTool"
import { divideTool } from "../../../../web/canvas/tools/divideTool"
import type { Tool } from "../../../../web/canvas/tools/tool"
import type { Plan } from "../../../../web/core/document/schema"
import { headOf } from "../../../../web/core/figures/measured"
import { dividingOf, workingSectionsOf } from "../../../../web/core/figures/workingSections"
import { pointerAt, situationOf } from "../../../support/pointers"
import { done, emptyPlan } from "../../../support/samples"

const head = headOf(emptyPlan)
const across = [surfacePoint(-0.9, 0.1), surfacePoint(0, 0.25), surfacePoint(0.95, 0.12)] as const

function stroke<Draft>(
  tool: Tool<Draft>,
  plan: Plan,
  places: readonly ReturnType<typeof surfacePoint>[],
  dividerId: string | null = null,
) {
  const world = situationOf(plan, dividerId)
  const start = tool.start(pointerAt(plan, places[0]), world)
  if (start === null) return null
  const drawn = places
    .slice(1)
    .reduce((draft: Draft, at) => tool.move(draft, pointerAt(plan, at), world), start)
  return tool.finish(drawn, world)
}

const edited = (finished: ReturnType<typeof stroke>, plan: Plan) => {
  if (!finished || !("edit" in finished)) throw new Error("nothing came of the stroke")
  return done(finished.edit, plan)
}

const divided = edited(stroke(divideTool("straight"), emptyPlan, across), emptyPlan)
const [line] = dividingOf(divided).dividers

describe("the divide tool", () => {
  it("draws a straight line from edge to edge that parts the head in two", () => {
    expect(stroke(divideTool("straight"), emptyPlan, across)).toMatchObject({
      label: { chapter: "placement", code: "draw-section-line" },
      divider: "d1",
    })
    expect(workingSectionsOf(divided)).toHaveLength(2)
    const ends = [line.parting[0], line.parting[line.parting.length - 1]]
    for (const at of ends) expect(Math.abs(head.hairline.coordinates(at).behindMm)).toBeLessThan(2)
  })

  it("names the next line by the number above all in use", () => {
    const second = stroke(divideTool("straight"), divided, [
      surfacePoint(0.02, 0.9),
      surfacePoint(-0.03, -0.9),
    ])
    expect(second).toMatchObject({ divider: "d2" })
    expect(workingSectionsOf(edited(second, divided))).toHaveLength(4)
  })

  it("follows the hairline at the hand's distance, and never nearer than a centimetre", () => {
    for (const [behindMm, kept] of [
      [24, 24],
      [3, 10],
    ] as const) {
      const places = [0.3, 2.5].map((landmark) => placeOf(head, { landmark, behindMm }))
      const { parting } = dividingOf(edited(stroke(divideTool("hairline"), emptyPlan, places), emptyPlan))
        .dividers[0]
      const middle = head.hairline.coordinates(parting[parting.length >> 1]).behindMm
      expect(Math.abs(middle - kept)).toBeLessThan(2)
    }
  })

  it("says why nothing came of a stroke, and begins none beside the head", () => {
    const at = surfacePoint(0.2, 0.4)
    expect(stroke(divideTool("freehand"), emptyPlan, [at, at])).toEqual({ refused: { code: "too-short" } })
    expect(divideTool("straight").start(pointerAt(emptyPlan, null), situationOf(emptyPlan))).toBeNull()
  })
})

describe("a section line in hand", () => {
  const middle = line.parting[line.parting.length >> 1]

  it("is only selected by a hand that does not move", () => {
    expect(stroke(dividerTool, divided, [middle, middle])).toEqual({ divider: "d1" })
  })

  it("goes with the hand, as far as the hand goes", () => {
    const to = surfacePoint(middle[0], middle[1] + 0.15)
    const moved = stroke(dividerTool, divided, [middle, to])
    expect(moved).toMatchObject({ label: { code: "move-section-line" }, divider: "d1" })
    const { parting } = dividingOf(edited(moved, divided)).dividers[0]
    const nearest = Math.min(...parting.map((at) => Math.hypot(at[0] - to[0], at[1] - to[1])))
    expect(nearest).toBeLessThan(0.06)
  })

  it("is bent by a handle of the one in hand, and by none of another", () => {
    const to = surfacePoint(middle[0], middle[1] + 0.12)
    expect(stroke(dividerHandleTool, divided, [middle, to], "d1")).toMatchObject({
      label: { code: "bend-section-line" },
    })
    expect(stroke(dividerHandleTool, divided, [middle, to], null)).toBeNull()
  })

  it("is not taken hold of where there is none", () => {
    expect(stroke(dividerTool, divided, [surfacePoint(0.1, 0.8), surfacePoint(0.1, 0.6)])).toBeNull()
    expect(stroke(dividerTool, emptyPlan, [middle, middle])).toBeNull()
  })
})
