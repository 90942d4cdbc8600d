import { describe, expect, it } from "vitest"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { leftOf } from "../../../../geometry/surface/surfacePath"
import { walk } from "../../../../geometry/surface/surfaceWalk"
import { hairlineHairMm } from "../../../../presets/client/hairlines"
import { visitOf } from "../../../../web/core/cautions/visitOfPlan"
import { leastBehindMm, takesAtHairline } from "../../../../web/core/figures/hairAtHairline"
import { headOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"

// Hair within 10 mm of the hairline counts as hairline hair: common practice, no source.
const plan = examplePlan()
const head = headOf(plan)

/** A slice whose parting lies so far behind centre front and takes what is in front of it. */
const sliceBehind = (mm: number, depthMm: number, taken: "front" | "behind"): Section => {
  const foil = plan.sections.filter(isFoil)[0]
  const line = [-40, -20, 0, 20, 40].map(head.hairline.pointAlong)
  const parting = line.map(
    (at, i) => walk(head.surface, { at, heading: leftOf(head.surface, line, i) }, -mm).at,
  )
  return { ...foil, id: `at-${mm}`, parting, taken, depthMm: { start: depthMm, end: depthMm } }
}

describe("hair taken near the hairline", () => {
  it("counts wherever the parting lies: a parting at 30 mm that takes 25 mm in front of it", () => {
    const deep = sliceBehind(30, 25, "front")
    expect(leastBehindMm(deep, head)).toBeCloseTo(5, 0)
    expect(takesAtHairline(deep, head)).toBe(true)
  })

  it("does not count where a parting at 30 mm takes 3 mm, or what is behind it", () => {
    expect(takesAtHairline(sliceBehind(30, 3, "front"), head)).toBe(false)
    expect(takesAtHairline(sliceBehind(30, 25, "behind"), head)).toBe(false)
  })

  it("counts within 10 mm and not beyond", () => {
    expect(hairlineHairMm.value).toBe(10)
    expect(takesAtHairline(sliceBehind(9, 3, "behind"), head)).toBe(true)
    expect(takesAtHairline(sliceBehind(12, 3, "behind"), head)).toBe(false)
  })

  it("is what the rules of a mix judge by", () => {
    const deep = { ...sliceBehind(30, 25, "front"), mix: "A" } as Section
    const [a] = visitOf({ ...plan, sections: [deep] }, { moment: "2026-03-09T10:00:00Z", zone: "UTC" }).mixes
    expect(a.near.hairline).toBe(true)
  })
})
