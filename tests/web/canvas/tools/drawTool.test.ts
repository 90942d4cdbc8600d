import { describe, expect, it } from "vitest"
import { placeOf } from "../../../../geometry/placing/technique"
import { type SurfacePoint, surfacePoint } from "../../../../geometry/surface/frames"
import { type Drawn, drawTool } from "../../../../web/canvas/tools/drawTool"
import { usualSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { headOf } from "../../../../web/core/figures/measured"
import { pointerAt, situationOf } from "../../../support/pointers"
import { done, emptyPlan } from "../../../support/samples"

const head = headOf(emptyPlan)
const place = (landmark: number, behindMm: number) => placeOf(head, { landmark, behindMm })
const along: Drawn = { way: "hairline", next: usualSection, snaps: true, gapMm: 4 }

/** A stroke through places, from the hand's coming down to its lifting. */
function drawn(
  kind: "slice" | "weave",
  session: Drawn,
  places: readonly SurfacePoint[],
  plan: Plan = emptyPlan,
  alt = false,
) {
  const tool = drawTool(kind, session)
  const world = situationOf(plan)
  const start = tool.start(pointerAt(plan, places[0], alt), world)
  if (!start) throw new Error("the stroke was not begun")
  const stroke = places
    .slice(1)
    .reduce((draft, at) => tool.move(draft, pointerAt(plan, at, alt), world), start)
  return tool.finish(stroke, world)
}

const made = (finished: ReturnType<typeof drawn>, plan: Plan = emptyPlan) => {
  if (!("edit" in finished)) throw new Error("nothing came of the stroke")
  const section = done(finished.edit, plan).sections.at(-1)
  if (!section) throw new Error("no section")
  return section
}

const behindMm = (parting: readonly SurfacePoint[]) =>
  parting.map((at) => head.hairline.coordinates(at).behindMm)

describe("the draw tool along the hairline", () => {
  it("keeps the distance at which the hand came down, whatever it does later", () => {
    const section = made(drawn("slice", along, [place(0.4, 11), place(1, 30), place(1.8, 22)]))
    for (const mm of behindMm(section.parting)) expect(Math.abs(mm - 11)).toBeLessThan(1)
    expect(section.kind).toBe("slice")
  })

  it("leaves room for the hair it takes in front of the parting", () => {
    const next = { ...usualSection, depthMm: { ...usualSection.depthMm, weave: 7 } }
    const section = made(drawn("weave", { ...along, next }, [place(0.4, 2), place(1.8, 2)]))
    for (const mm of behindMm(section.parting)) expect(mm).toBeGreaterThan(6.5)
    expect(section.depthMm).toEqual({ start: 7, end: 7 })
  })

  it("says what it made, and why nothing came of it", () => {
    expect(drawn("slice", along, [place(0.4, 11), place(1.8, 11)])).toMatchObject({
      label: { chapter: "placement", code: "draw-section", kind: "slice" },
    })
    expect(drawn("slice", along, [place(0.4, 11), place(0.4, 11)])).toEqual({
      refused: { code: "too-short" },
    })
  })

  it("does not begin beside the head, and forgets nothing when the hand strays off it", () => {
    const tool = drawTool("slice", along)
    const world = situationOf(emptyPlan)
    expect(tool.start(pointerAt(emptyPlan, null), world)).toBeNull()
    const start = tool.start(pointerAt(emptyPlan, place(0.4, 11)), world)
    const on = start && tool.move(start, pointerAt(emptyPlan, place(1.8, 11)), world)
    const off = on && tool.move(on, pointerAt(emptyPlan, null), world)
    expect(off && on && off.points).toEqual(on?.points)
  })
})

describe("the draw tool, straight and freehand", () => {
  const straight: Drawn = { ...along, way: "straight", snaps: false }
  const freehand: Drawn = { ...along, way: "freehand", snaps: false }
  const [from, past, to] = [surfacePoint(0.1, 0.8), surfacePoint(0.4, 0.95), surfacePoint(0.7, 0.5)]

  it("straight forgets where the hand went between, freehand keeps it", () => {
    const stray = (way: Drawn) => {
      const { parting } = made(drawn("slice", way, [from, past, to]))
      return Math.min(...parting.map((at) => Math.hypot(at[0] - past[0], at[1] - past[1])))
    }
    expect(stray(straight)).toBeGreaterThan(0.1)
    expect(stray(freehand)).toBeLessThan(0.1)
  })

  it("snaps beside the last parting with the gap of the session, and not while Alt is held", () => {
    const first = made(drawn("slice", { ...along, snaps: false }, [place(0.3, 8), place(1.9, 8)]))
    const plan = { ...emptyPlan, sections: [first] }
    const near = 8 + 4 + usualSection.depthMm.slice + 1
    const stroke = [0.4, 0.8, 1.2, 1.6, 1.8].map((landmark) => place(landmark, near))
    const snaps: Drawn = { ...freehand, snaps: true }
    const snapped = drawn("slice", snaps, stroke, plan)
    expect(snapped).toMatchObject({ hint: { to: "last parting", gapMm: 4 } })
    for (const mm of behindMm(made(snapped, plan).parting))
      expect(Math.abs(mm - (near - 1))).toBeLessThan(1.2)
    expect("hint" in drawn("slice", snaps, stroke, plan, true)).toBe(false)
  })
})
