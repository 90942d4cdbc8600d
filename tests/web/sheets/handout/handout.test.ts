import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { papers } from "../../../../presets/sheets/papers"
import type { Technique } from "../../../../presets/techniques/technique"
import { newPlan } from "../../../../web/core/document/newPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { stepLines } from "../../../../web/core/teaching/stepLines"
import { teachingSteps } from "../../../../web/core/teaching/teachingSteps"
import { techniqueLaid } from "../../../../web/core/teaching/techniqueLaid"
import { handout } from "../../../../web/sheets/handout/handout"
import { printPlan } from "../../../../web/sheets/printPlan"
import { loadWords } from "../../../../web/words/every/languages"
import { spanOf, texts } from "../../../support/pageTexts"
import { readPdfText } from "../../../support/pdfText"
import { readFont, sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { usualTechnique, usualTechniques } from "../../../support/techniques"

const laidOf = (technique: Technique): Plan => {
  const laid = layTechnique(technique)({ ...newPlan(new Date(2026, 2, 9)), name: technique.name })
  if ("refused" in laid) throw new Error(laid.refused.code)
  return laid
}
const fullHairline = usualTechnique("full-hairline")
const partialWeave = usualTechnique("partial-weave")
const lay = (plan: Plan, paper: (typeof papers)[keyof typeof papers] = papers.a4) =>
  handout(plan, sheetOptions({ paper, stops: "NOT CLEARED" }), sheetFonts)
const words = (plan: Plan) =>
  texts(lay(plan))
    .map(({ text }) => text)
    .join(" ")

describe("the technique handout", () => {
  it("keeps all of it inside the margins of either paper, in 11 points or more", () => {
    for (const paper of Object.values(papers))
      for (const plan of [examplePlan(), laidOf(fullHairline), laidOf(partialWeave)])
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
    expect(said).toContain("Mix A: powder lightener, 20 vol, 1 : 2")
    expect(said).toContain("I can see light through slices 1, 2, 3, 5, 6 and 7.")
  })
  it("tells one order with the map, the list and the clock", () => {
    for (const plan of [examplePlan(), ...usualTechniques.map(laidOf)])
      expect(teachingSteps(plan).flatMap(({ sections }) => sections)).toEqual(plan.sections)
  })
  it("shows a pair that follows one another as one step, and equal rows behind each other as one step", () => {
    const stacked = teachingSteps(laidOf(partialWeave))
    expect(stacked).toHaveLength(1)
    expect(stacked[0].rows).toHaveLength(5)
    expect(stacked[0].gapMm).toBeCloseTo(4, 0)
    const example = examplePlan()
    const pair = example.sections.filter(({ twin }) => twin).slice(0, 1)
    const twin = example.sections.filter(({ id }) => id === pair[0].twin)
    const [step, ...others] = teachingSteps({ ...example, sections: [...pair, ...twin] })
    expect(others).toEqual([])
    expect([step.isPair, step.isEachRow]).toEqual([true, true])
  })
  it("takes the words of a technique laid as it stands, and none once it was changed", () => {
    const laid = laidOf(fullHairline)
    expect(techniqueLaid(laid)?.house.id).toBe("full-hairline")
    expect(words(laid)).toContain("Fine slices all the way round")
    const changed = { ...laid, sections: laid.sections.slice(1) }
    expect(techniqueLaid(changed)).toBeNull()
    expect(words(changed)).toContain("Brighten")
  })
  it("prints a plan without foils too, and can be read as PDF", async () => {
    expect(words({ ...examplePlan(), sections: [] })).toContain("Nothing is drawn yet.")
    const text = await readPdfText(
      await printPlan(
        examplePlan(),
        { sheet: "technique", paper: "a4", mirror: true, language: "en-GB" },
        readFont,
      ),
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

it("numbers every foil on its step's drawing, near where it begins", () => {
  const plan = examplePlan()
  const figures = lay(plan).flatMap(({ items }) => items.filter(({ tag }) => tag?.role === "Figure"))
  const numbers = figures.flatMap((item) =>
    item.kind === "text" && /^\d+$/.test(item.text) ? [item.text] : [],
  )
  expect(numbers).toEqual(plan.sections.filter(isFoil).map(({ mapNumber }) => String(mapNumber)))
})

it("breaks no label of a step, whatever the language", async () => {
  for (const language of ["de", "es", "fr", "uk"] as const) {
    const words = await loadWords(language)
    const plan = laidOf(fullHairline)
    const printed = texts(handout(plan, sheetOptions({ words, language }), sheetFonts)).map(
      ({ text }) => text,
    )
    const labels = teachingSteps(plan).flatMap((step) => stepLines(step, plan).map(words.teaching.stepLabels))
    expect(labels.filter((label) => !printed.includes(label))).toEqual([])
  }
})

it("keeps the label of each line of a step clear of its words", () => {
  const labelled = lay(examplePlan()).flatMap((page) => {
    const printed = texts([page])
    return printed.filter(({ text }) => text === "Backcomb").map((label) => ({ label, printed }))
  })
  expect(labelled.length).toBeGreaterThan(0)
  for (const { label, printed } of labelled) {
    const beside = printed.filter(
      ({ at }) => at[1] === label.at[1] && at[0] > label.at[0] && at[0] < label.at[0] + 60,
    )
    for (const { at } of beside) expect(at[0]).toBeGreaterThan(spanOf(label)[1] + 1)
  }
})
