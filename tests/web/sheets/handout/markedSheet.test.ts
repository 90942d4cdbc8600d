import { describe, expect, it } from "vitest"
import { papers } from "../../../../presets/sheets/papers"
import { compare } from "../../../../web/core/compare/compare"
import { usualTolerances } from "../../../../web/core/compare/differences"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { markedSheet } from "../../../../web/sheets/handout/markedSheet"
import { optionsOf } from "../../../../web/sheets/optionsOf"
import { languageNames, loadWords } from "../../../../web/words/every/languages"
import { spanOf, texts } from "../../../support/pageTexts"
import { emptyPlan } from "../../../support/samples"
import { sheetFonts } from "../../../support/sheetFonts"
import { usualTechniques } from "../../../support/techniques"

const empty: Plan = { ...emptyPlan, sections: [], client: { initials: "K.W." }, note: "asthma" }

describe("the sheet to mark", () => {
  it.each(languageNames)(
    "has a box for each way of each step, a line to sign, and no client, in %s",
    async (language) => {
      const words = await loadWords(language)
      for (const paper of ["a4", "letter"] as const)
        for (const technique of usualTechniques) {
          const laid = layTechnique(technique)(empty)
          if ("refused" in laid) throw new Error(technique.id)
          const plan = laid as Plan
          const learner = {
            ...plan,
            sections: plan.sections.slice(1).map((each) => ({ ...each, twin: undefined })),
          }
          const marked = {
            plan: learner,
            comparison: compare({ technique }, learner),
            allowed: usualTolerances,
            title: technique.name,
            learner: "A.B.",
          }
          const options = optionsOf(learner, { paper, mirror: false, language, words })
          const { pages } = markedSheet(marked, options, sheetFonts)
          const said = texts(pages)
          const text = said.map((each) => each.text).join(" ")
          for (const part of ["A.B.", words.comparing.sheet.notYet, words.comparing.sheet.signature])
            expect(text).toContain(part)
          expect(text).toContain(words.comparing.missing)
          expect(text).not.toContain("K.W.")
          expect(text).not.toContain("asthma")
          const { heightMm, widthMm, marginMm } = papers[paper]
          for (const each of said) {
            expect(each.at[1]).toBeLessThan(heightMm - marginMm + 0.1)
            expect([each.text, spanOf(each)[1] < widthMm - marginMm + 0.1]).toEqual([each.text, true])
          }
          expect(pages.length).toBeLessThanOrEqual(2)
        }
    },
  )
})
