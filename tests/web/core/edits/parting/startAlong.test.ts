import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { mirrored } from "../../../../../geometry/surface/frames"
import type { SurfacePath } from "../../../../../geometry/surface/surfacePath"
import { isRefusal } from "../../../../../web/core/document/edit"
import { newPlan } from "../../../../../web/core/document/newPlan"
import { newSection } from "../../../../../web/core/document/newSection"
import { setStartAlong, startAlong } from "../../../../../web/core/edits/parting/startAlong"
import { headOf } from "../../../../../web/core/figures/measured"

const empty = newPlan(new Date())
const head = headOf(empty)
const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 75, behindMm: 8 })
if ("refused" in made) throw new Error(made.refused)
const right = made.parting
const left = right.map(mirrored)

function after(parting: SurfacePath, mm: number) {
  const section = newSection("slice", parting, empty)
  return setStartAlong(section.id, mm)({ ...empty, sections: [section] })
}
function moved(parting: SurfacePath, mm: number): SurfacePath {
  const plan = after(parting, mm)
  if (isRefusal(plan)) throw new Error(plan.refused.code)
  return plan.sections[0].parting
}

describe("where a parting starts along the hairline", () => {
  it.each([
    ["right", right],
    ["left", left],
    ["right", right.toReversed()],
    ["left", left.toReversed()],
  ])("is told from the centre front on the %s, whichever way it was drawn", (side, parting) => {
    const start = startAlong(parting, head)
    expect(start.side).toBe(side)
    expect(start.mm).toBeCloseTo(20, 0)
  })
  it.each([5, 33.3, 60])(
    "is put %s mm from the centre front, on its own side, as far behind the hairline",
    (mm) => {
      for (const [side, parting] of [
        ["right", right],
        ["left", left],
      ] as const) {
        const start = startAlong(moved(parting, mm), head)
        expect(start.mm).toBeCloseTo(mm, 1)
        expect(start.side).toBe(side)
        for (const at of moved(parting, mm)) expect(head.hairline.coordinates(at).behindMm).toBeCloseTo(8, 0)
      }
    },
  )
  it("is refused, with what to do, where the hair has no such place", () => {
    const across = hairlineParting(head, { fromAlongMm: -20, toAlongMm: 40, behindMm: 8 })
    if ("refused" in across) throw new Error(across.refused)
    expect(after(across.parting, 120)).toEqual({
      refused: { code: "no-start-along", side: expect.stringMatching(/^(left|right)$/), wantedMm: 120 },
    })
  })
})
