import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { isFoil } from "../../../geometry/section/section"
import { mirrored } from "../../../geometry/surface/frames"
import { examplePlanText } from "../../../presets/plans/examplePlan"
import { measured } from "../../../web/core/figures/measured"
import { openPlan, savePlan } from "../../../web/core/file/planFile"
import { en } from "../../support/words"

const opened = openPlan(examplePlanText)
if (!opened.ok) throw new Error(en.problems.sentence(opened.problems[0]))
const { plan } = opened

describe("the example", () => {
  it("is a file as Partline saves it", () => {
    const file = readFileSync(
      new URL("../../../presets/plans/examplePlan.partline.json", import.meta.url),
      "utf8",
    )
    expect(savePlan(plan)).toBe(file)
  })
  it("frames the face: 9 foils of one sheet each, hairline first, baby hairs and a veil left out", () => {
    const foils = plan.sections.filter(isFoil)
    expect(foils.map(({ kind }) => kind)).toEqual([
      ...["slice", "slice", "slice", "backcomb"],
      ...["slice", "slice", "slice", "backcomb"],
      "weave",
    ])
    expect(plan.sections.filter((section) => !isFoil(section)).length).toBe(3)
    expect(measured(plan).totals.foils).toBe(9)
  })
  it("is the same on both sides", () => {
    for (let i = 0; i < 5; i++) {
      const [right, left] = [plan.sections[i], plan.sections[i + 5]]
      expect(left.parting).toEqual(right.parting.map(mirrored))
      expect([left.kind, left.depthMm]).toEqual([right.kind, right.depthMm])
    }
  })
  it("needs a bowl of common practice: a frame of 6 to 10 foils takes 20 to 40 g at the upper figure", () => {
    const { high } = measured(plan).totals.productG
    expect(high).toBeGreaterThan(20)
    expect(high).toBeLessThan(40)
  })
})
