import { describe, expect, it } from "vitest"
import { legalLimitPercent } from "../../../presets/formula/developers"
import { checkPlan } from "../../../web/core/cautions/visitOfPlan"
import { examplePlan } from "../../../web/core/file/examplePlan"
import { stopsAtPrintTime } from "../../../web/sheets/stopsAtPrintTime"
import { say } from "../../../web/words/say"
import { en, everyLanguage } from "../../support/words"

const now = { moment: "2026-03-09T10:00:00+00:00", zone: "Europe/London" }

/** 60 vol in 1 : 3 is 18 % on the label and 13.5 % on the head. */
const tooStrong = () => {
  const plan = examplePlan()
  const strong = { developerVolume: 60, ratio: { lightener: 1, developer: 3 } }
  return { ...plan, mixes: plan.mixes.map((mix, at) => (at === 0 ? { ...mix, ...strong } : mix)) }
}

/** "12 % in the EU and the UK": the figure and whose law it is stand together, whatever space comes before the sign. */
const limit = {
  "en-GB": /12 % in the EU and the UK/,
  "en-US": /12 ?% in the EU and the UK/,
  de: /12\s?% in der EU und im Vereinigten Königreich/,
  es: /12\s?% en la UE y el Reino Unido/,
  fr: /12\s?% dans l’UE et au Royaume-Uni/,
  uk: /12\s?% у ЄС і Великій Британії/,
} as const

describe("the law’s limit of a developer", () => {
  it.each(everyLanguage)(
    "is told as such wherever it is told, in %s",
    (language, { cautions, command, formula }) => {
      const [stop] = checkPlan(tooStrong(), now).stops.filter(({ rule }) => rule === "over-legal-limit")
      const impossible = {
        code: "developer-impossible",
        volume: 60,
        mostVolume: 40,
        mostPercent: 12,
      } as const
      for (const said of [
        say(cautions.why, stop.why),
        command.overLegalLimit(legalLimitPercent),
        say(formula.productSheets.problem, impossible),
      ])
        expect(said).toMatch(limit[language])
    },
  )
  it("stands on the sheets", () => {
    expect(stopsAtPrintTime(tooStrong(), en).stops).toMatch(limit["en-GB"])
  })
})
