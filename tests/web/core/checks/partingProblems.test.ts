import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../../geometry/surface/frames"
import { partingProblems } from "../../../../web/core/checks/partingProblems"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { headOf } from "../../../../web/core/figures/measured"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { emptyPlan, rightParting, samplePlan } from "../../../support/samples"
import { en } from "../../../support/words"

const planWith = (...pairs: [number, number][]): Plan => {
  const parting = pairs.map(([u, v]) => surfacePoint(u, v))
  const sections = [rightParting, parting].map((points, i) => ({
    ...newSection("left-out", points, emptyPlan),
    id: `s${i + 1}`,
  }))
  return { ...emptyPlan, sections }
}

describe("a parting that could not be combed", () => {
  it("lies on the face: the point is named", () => {
    expect(partingProblems(planWith([0, 1.1], [0.1, 1.9]))).toEqual([
      {
        path: "sections[1].parting[1]",
        code: "place-outside",
      },
    ])
  })
  it("leaves the hair between two places of its edge: over the bare ear", () => {
    const { landmarks } = headOf(emptyPlan).hairline
    const [before, after] = [landmarks.get("sideburn"), landmarks.get("behind ear")]
    if (!before || !after) throw new Error("no ear")
    expect(partingProblems(planWith([before[0], before[1]], [after[0], after[1]]))).toEqual([
      {
        path: "sections[1].parting",
        code: "line-outside",
      },
    ])
  })
  it("crosses itself", () => {
    expect(partingProblems(planWith([-0.2, 0], [0.2, 0.3], [0.2, 0], [-0.2, 0.3]))).toEqual([
      {
        path: "sections[1].parting",
        code: "line-crosses-itself",
      },
    ])
  })
  it("is no line at all", () => {
    expect(en.problems.clause(partingProblems(planWith([0.1, 0.2], [0.1, 0.2]))[0])).toBe(
      "section 2, parting: expected a line at least 2 mm long, found 0 mm",
    )
  })
})

describe("the file door", () => {
  it("finds nothing wrong with a good drawing, and looks at a bad one", () => {
    expect(partingProblems(samplePlan)).toEqual([])
    const opened = openPlan(savePlan(planWith([0, 1.1], [0.1, 1.9])))
    expect(!opened.ok && opened.problems.map(({ path }) => path)).toEqual(["sections[1].parting[1]"])
  })
  it("refuses a head whose measures do not go together", () => {
    const size = { kind: "tape", aroundMm: 470, overMm: 430, frontToNapeMm: 270 } as const
    const opened = openPlan(savePlan({ ...emptyPlan, head: { ...emptyPlan.head, size } }))
    expect(!opened.ok && opened.problems[0].path).toBe("head.size")
  })
})
