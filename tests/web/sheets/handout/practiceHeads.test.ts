import { describe, expect, it } from "vitest"
import { papers } from "../../../../presets/sheets/papers"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { handout } from "../../../../web/sheets/handout/handout"
import { loadWords } from "../../../../web/words/every/languages"
import { texts } from "../../../support/pageTexts"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { en } from "../../../support/words"

describe("the head to draw on", () => {
  it("is there from five sides, with lines for a name and a date, on the page with its aim", async () => {
    const { captions } = en.sheets.views
    const w = en.sheets.handout
    const [first] = handout(examplePlan(), sheetOptions(), sheetFonts)
    const seen = texts([first]).map(({ text }) => text)
    for (const name of [captions.right, captions.front, captions.left, captions.back, captions.top])
      expect(seen.filter((text) => text === name)).toHaveLength(1)
    expect(seen).toEqual(expect.arrayContaining([w.aim, w.draw, w.student, w.date]))
  })

  it("becomes smaller rather than push the cautions from its page", async () => {
    const words = await loadWords("de")
    for (const paper of Object.values(papers)) {
      const [first] = handout(examplePlan(), sheetOptions({ words, paper }), sheetFonts)
      const seen = texts([first]).map(({ text }) => text)
      expect(seen).toEqual(
        expect.arrayContaining([words.sheets.handout.draw, words.sheets.cautions.localRule]),
      )
    }
  })
})
