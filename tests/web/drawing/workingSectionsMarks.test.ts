import { describe, expect, it } from "vitest"
import { straightParting } from "../../../geometry/parting/parting"
import { placeOf } from "../../../geometry/placing/technique"
import { fixedViews } from "../../../geometry/surface/views"
import { workingStarts } from "../../../presets/placement/workingSections"
import { newSection } from "../../../web/core/document/newSection"
import type { Plan } from "../../../web/core/document/schema"
import { addSections } from "../../../web/core/edits/sections/addSections"
import { startWorkingSections } from "../../../web/core/edits/working/addWorkingPartings"
import { headOf } from "../../../web/core/figures/measured"
import { dividingOf } from "../../../web/core/figures/workingSections"
import { pictureOf } from "../../../web/drawing/headDrawing"
import type { Mark } from "../../../web/drawing/mark"
import type { Scene } from "../../../web/drawing/marks"
import {
  crossingMarks,
  dividerHandles,
  dividerMarks,
  workingNumberMarks,
} from "../../../web/drawing/workingSectionsMarks"
import { done, emptyPlan } from "../../support/samples"

const head = headOf(emptyPlan)
const four = done(startWorkingSections(workingStarts[0]), emptyPlan)
const flat: Scene = { head, view: fixedViews.unrolled, hides: () => false }
const labels = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === "label" ? [mark.text] : []))
const lines = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === "line" ? [mark] : []))

describe("dividing partings on a page", () => {
  it("run in their own ink down the middle of the front, as far as it can be seen", () => {
    const [profile] = lines(dividerMarks(four, pictureOf(head, "front").scene))
    expect(profile.ink).toBe("divider")
    expect(profile.path.every(([x]) => Math.abs(x) < 0.5)).toBe(true)
    // From the hairline, 82 mm up on the unscaled head, to the top of the head.
    expect(Math.min(...profile.path.map(([, y]) => y))).toBeCloseTo(82 * head.axes[2], -1)
  })
  it("run whole over the scalp laid flat, from edge to edge", () => {
    const [profile, radial] = lines(dividerMarks(four, flat))
    const { points } = head.hairline
    const [front, nape] = [points[0], points[points.length >> 1]].map(
      ([, v]) => v * fixedViews.unrolled.radiusMm,
    )
    const ends = [profile.path[0], profile.path[profile.path.length - 1]].map(([, y]) => y)
    expect(Math.max(...ends)).toBeCloseTo(front, 0)
    expect(Math.min(...ends)).toBeCloseTo(nape, 0)
    const xs = radial.path.map(([x]) => x)
    expect(Math.max(...xs)).toBeCloseTo(-Math.min(...xs), 0)
  })
  it("are taken hold of at their ends and their middle", () => {
    expect(dividerHandles(dividingOf(four).dividers[0], flat)).toHaveLength(3)
  })
})

describe("the numbers of working sections", () => {
  it("stand where the working section can be seen, right on the left of the front", () => {
    expect(labels(workingNumberMarks(four, pictureOf(head, "front").scene, 5))).toEqual(["I", "II"])
    expect(labels(workingNumberMarks(four, pictureOf(head, "back").scene, 5))).toEqual(["III", "IV"])
    const [right, left] = workingNumberMarks(four, pictureOf(head, "front").scene, 5).filter(
      (mark) => mark.kind === "label",
    )
    expect(right.at[0]).toBeLessThan(0)
    expect(left.at[0]).toBeGreaterThan(0)
  })
  it("are none on a head that is not divided", () => {
    expect(workingNumberMarks(emptyPlan, flat, 5)).toEqual([])
    expect(dividerMarks(emptyPlan, flat)).toEqual([])
  })
})

describe("a foil across a dividing parting", () => {
  const made = straightParting(
    head,
    placeOf(head, { landmark: 0.5, behindMm: 30 }),
    placeOf(head, { landmark: -1, behindMm: 30 }),
  )
  if ("refused" in made) throw new Error(made.refused)
  const plan: Plan = done(addSections(newSection("slice", made.parting, four)), four)
  it("has a cross on the parting it crosses, and none once it may", () => {
    const [cross] = crossingMarks(plan, flat)
    if (cross.kind !== "hatch") throw new Error("no cross")
    const xs = cross.segments.flat().map(([x]) => x)
    expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(0, 0)
    const allowed = { ...plan, sections: plan.sections.map((each) => ({ ...each, mayCross: true as const })) }
    expect(crossingMarks(allowed, flat)).toEqual([])
  })
})
