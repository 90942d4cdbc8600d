import { expect, it } from "vitest"
import { areaCm2, contains } from "../../../../geometry/surface/surfacePatch"
import { between } from "../../../../geometry/surface/surfacePath"
import { fixedViews } from "../../../../geometry/surface/views"
import { newSection } from "../../../../web/core/document/newSection"
import { repeatBehind } from "../../../../web/core/edits/lay/repeatBehind"
import { moveSections } from "../../../../web/core/edits/parting/moveSections"
import { addSections } from "../../../../web/core/edits/sections/addSections"
import { headOf, measured } from "../../../../web/core/figures/measured"
import { overlapArea } from "../../../../web/core/figures/overlapArea"
import { overlapMarks, overlapMiddles } from "../../../../web/drawing/overlapMarks"
import { done, emptyPlan, rightParting } from "../../../support/samples"

const apart = done(
  repeatBehind("s1", 4),
  done(addSections(newSection("weave", rightParting, emptyPlan)), emptyPlan),
)
const plan = done(moveSections(["s2"], { alongMm: 0, behindMm: -7 }), apart)
const head = headOf(plan)
const [overlap] = measured(plan).overlaps
const { outlines, strokes } = overlapArea(overlap.later, [overlap.earlier], head)

it("outlines the very area that both take", () => {
  const outlined = outlines.reduce((sum, outline) => sum + areaCm2(head.surface, outline), 0)
  expect(outlined / overlap.areaCm2).toBeGreaterThan(0.9)
  expect(outlined / overlap.areaCm2).toBeLessThan(1.05)
})

it("hatches it both ways and nothing beside it", () => {
  const slants = new Set(strokes.map(([from, to]) => Math.sign((to[0] - from[0]) * (to[1] - from[1]))))
  expect([...slants].sort()).toEqual(expect.arrayContaining([-1, 1]))
  const middles = strokes.map(([from, to]) => between(from, to, 0.5))
  const inside = middles.filter((at) => outlines.some((outline) => contains(outline, at)))
  expect(inside.length / middles.length).toBeGreaterThan(0.95)
})

it("is drawn where the page shows it and only there", () => {
  const seen = { head, view: fixedViews.right, hides: () => false }
  const away = { head, view: fixedViews.left, hides: () => false }
  expect(new Set(overlapMarks([overlap], seen).map(({ ink }) => ink))).toEqual(
    new Set(["twice-edge", "twice-hatch"]),
  )
  expect(overlapMiddles([overlap], seen).length).toBe(1)
  expect(overlapMarks([overlap], away)).toEqual([])
  expect(overlapMiddles([overlap], away)).toEqual([])
})
