import { expect, it } from "vitest"
import { reactionWords } from "../../../web/words/every/reactionWords"
import { say } from "../../../web/words/say"
import { everyLanguage, foilWord } from "../../support/words"

const panel = { piece: "panel" as const }
const stretch = { fromMm: 43, toMm: 240 }
const seen = ["burning", "stretch-stop", "limp"] as const

it.each(everyLanguage)(
  "calls a painted panel no foil in refusals, alarms, reactions and regrowth, in %s",
  (language, words) => {
    const { problems, cautions, cards, chair } = words
    const told = (piece: { piece?: "panel" }) => [
      say(problems.refusals, { code: "no-new-growth", foil: 3, ...piece }),
      say(problems.refusals, { code: "mix-in-use", mix: "A", foils: [3], ...piece }),
      say(problems.refusals, { code: "mix-in-use", mix: "A", foils: [3, 4], ...piece }),
      say(problems.refusals, { code: "foil-without-mix", foil: 3, ...piece }),
      cautions.why["coated-twice"]({ code: "coated-twice", foils: [3], ...piece, ...stretch }),
      cautions.why["coated-twice"]({ code: "coated-twice", foils: [3, 4], ...piece, ...stretch }),
      ...seen.map((code) => reactionWords({ code, foil: 3, ...piece }, words)),
      reactionWords({ code: "alarm", alarm: { what: "burning" }, foils: [3], ...piece }, words),
      cards.regrowth.foil(3, piece.piece),
      cards.regrowth.twice({ foil: 3, ...piece, on: "2026-03-09", ...stretch }),
    ]
    const isOfFoil = (sentence: string) => foilWord[language.slice(0, 2)].test(sentence)
    expect([...told(panel), chair.emergencies.steps.burning["foils-off"]].filter(isOfFoil)).toEqual([])
    expect(told({}).filter((sentence) => !isOfFoil(sentence))).toEqual([])
  },
)
