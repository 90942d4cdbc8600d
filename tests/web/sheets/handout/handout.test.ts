import { describe, expect, it } from "vitest"
import { fullHairline } from "../../../../presets/techniques/fullHairline"
import { halfHeadWeave } from "../../../../presets/techniques/halfHeadWeave"
import { techniqueOf } from "../../../../presets/techniques/technique"
import { newPlan } from "../../../../web/core/document/newPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { teachingSteps } from "../../../../web/core/teaching/teachingSteps"
import { techniqueLaid } from "../../../../web/core/teaching/techniqueLaid"
import { handout } from "../../../../web/sheets/handout/handout"
import { papers } from "../../../../web/sheets/pens/page"
import { printPlan } from "../../../../web/sheets/printPlan"
import { spanOf, texts } from "../../../support/pageTexts"
import { readPdfText } from "../../../support/pdfText"
import { readFont, sheetFonts } from "../../../support/sheetFonts"

const laidOf = (preset: typeof fullHairline): Plan => {
  const laid = layTechnique(techniqueOf(preset))({ ...newPlan(new Date(2026, 2, 9)), name: preset.name })
  if ("refused" in laid) throw new Error(laid.refused)
  return laid
}
const lay = (plan: Plan, paper: (typeof papers)[keyof typeof papers] = papers.a4) =>
  handout(plan, { paper, mirror: false, stops: "NOT CLEARED", zone: "UTC" }, sheetFonts)
const words = (plan: Plan) =>
  texts(lay(plan))
    .map(({ text }) => text)
    .join(" ")

describe("the technique handout", () => {
  it("keeps all of it inside the margins of either paper, in 11 points or more", () => {
    for (const paper of Object.values(papers))
      for (const plan of [examplePlan(), laidOf(fullHairline), laidOf(halfHeadWeave)])
        for (const item of texts(lay(plan, paper))) {
          const [left, right] = spanOf(item)
          expect(item.sizePt).toBeGreaterThanOrEqual(11)
          expect(left).toBeGreaterThanOrEqual(paper.marginMm - 1e-6)
          expect(right).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 1e-6)
          expect(item.at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm)
        }
  })
  it("prints no initials, no date, no note, no stop and no product name", () => {
    const said = words({ ...examplePlan(), note: "asthma in childhood" })
    expect(said).not.toMatch(/E\.V\.|2026|asthma|NOT CLEARED|House powder|Falls over the top foil/)
    expect(said).not.toMatch(/\b(safe|guaranteed?|no damage)\b/i)
    expect(said).toContain("Mix A: powder lightener, 20 volume, 1 : 2")
    expect(said).toContain("I can see light through slices 1, 2, 3, 5, 6 and 7.")
  })
  it("shows a pair as one step, and equal rows behind each other as one step", () => {
    const example = examplePlan()
    const steps = teachingSteps(example)
    expect(steps.map(({ sections }) => sections.length).reduce((sum, count) => sum + count)).toBe(
      example.sections.length,
    )
    expect(steps.filter(({ isPair }) => isPair)).toHaveLength(5)
    const stacked = teachingSteps(laidOf(halfHeadWeave))
    expect(stacked).toHaveLength(1)
    expect(stacked[0].rows).toHaveLength(5)
    expect(stacked[0].gapMm).toBeCloseTo(4, 0)
    expect(teachingSteps(laidOf(fullHairline))).toHaveLength(5)
  })
  it("takes the words of a technique laid as it stands, and none once it was changed", () => {
    const laid = laidOf(fullHairline)
    expect(techniqueLaid(laid)?.id).toBe("full-hairline")
    expect(words(laid)).toContain("Fine slices all the way round")
    const changed = { ...laid, sections: laid.sections.slice(1) }
    expect(techniqueLaid(changed)).toBeNull()
    expect(words(changed)).toContain("Brighten")
  })
  it("prints a plan without foils too, and can be read as PDF", async () => {
    expect(words({ ...examplePlan(), sections: [] })).toContain("Nothing is drawn yet.")
    const text = await readPdfText(
      await printPlan(examplePlan(), { sheet: "technique", paper: "a4", mirror: true }, readFont),
    )
    for (const part of [
      "Technique handout",
      "Step by step",
      "Front, in the mirror",
      "Common faults",
      "Signature",
    ])
      expect(text).toContain(part)
  })
})
