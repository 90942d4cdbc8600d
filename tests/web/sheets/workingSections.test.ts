import { beforeAll, describe, expect, it } from "vitest"
import { workingStarts } from "../../../presets/placement/workingSections"
import { startWorkingSections } from "../../../web/core/edits/working/addWorkingPartings"
import { printPlan } from "../../../web/sheets/printPlan"
import { framePlan } from "../../support/framePlan"
import { readPdfText } from "../../support/pdfText"
import { done } from "../../support/samples"
import { readFont } from "../../support/sheetFonts"

const print = (plan: typeof framePlan) =>
  printPlan(plan, { sheet: "placement", paper: "a4", mirror: false, language: "en-GB" }, readFont)

describe("the printed map of a divided head", () => {
  let text = ""
  beforeAll(async () => {
    text = await readPdfText(await print(done(startWorkingSections(workingStarts[0]), framePlan)))
  }, 60_000)
  it("lists the working sections in order, with their foils, grams and minutes", () => {
    expect(text).toContain("Sections of the head, in order")
    expect(text).toMatch(/I\s+Front right: foils [\d, and]+; [\d.]+–[\d.]+ g; \d+–\d+ min/)
    expect(text).toMatch(/Back right, IV Back left: no foils/)
  })
  it("says nothing of them on a head that is not divided", async () => {
    expect(await readPdfText(await print(framePlan))).not.toContain("Sections of the head")
  })
})
