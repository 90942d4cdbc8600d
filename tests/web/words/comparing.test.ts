import { describe, expect, it } from "vitest"
import { criteria } from "../../../web/core/compare/differences"
import type { ComparisonCode, DifferenceCode } from "../../../web/core/compare/remarks"
import { say } from "../../../web/words/say"
import { isSentence, type SamplesOf, samplesOf } from "../../support/sentences"
import { en, everyLanguage } from "../../support/words"

const differs: SamplesOf<DifferenceCode> = {
  "other-side": { code: "other-side" },
  "from-hairline": { code: "from-hairline", byMm: 3.24 },
  "moved-over": { code: "moved-over", byMm: -2.6 },
  slid: { code: "slid", byMm: 7, toward: "nape" },
  turned: { code: "turned", byDeg: 14.4 },
  longer: { code: "longer", byShare: -0.2 },
  deeper: { code: "deeper", byMm: 1.5 },
  starts: { code: "starts", byMm: -4 },
  "wrong-band": { code: "wrong-band", model: "front" },
  "other-kind": { code: "other-kind", model: "slice", learner: "weave" },
  "out-of-order": { code: "out-of-order", model: 2, learner: 5 },
}
const whole: SamplesOf<ComparisonCode> = {
  "laid-anew": { code: "laid-anew" },
  "no-room": { code: "no-room", sections: 1 },
  mirrored: { code: "mirrored" },
  matched: { code: "matched", matched: 3, of: 4 },
  missing: { code: "missing", sections: [{ code: "foil", number: 3 }] },
  extra: { code: "extra", sections: [{ code: "left-out", name: "" }] },
}

describe.each(everyLanguage)("a comparison in %s", (_, { comparing }) => {
  it("has a sentence for every code", () => {
    const said = [
      ...samplesOf(differs).map((each) => say(comparing.differs, each)),
      ...samplesOf(whole).map((each) => say(comparing.whole, each)),
      ...([null, "nape", "front", "left", "right"] as const).map((toward) =>
        say(comparing.differs, { code: "slid" as const, byMm: 7, toward }),
      ),
    ]
    expect(said.filter((each) => !isSentence(each))).toEqual([])
    expect(new Set(said).size).toBe(said.length - 1)
    expect(new Set(criteria.map((each) => comparing.criteria[each])).size).toBe(criteria.length)
  })
})

it("says which way a section is off", () => {
  const { differs: said } = en.comparing
  expect(say(said, differs["from-hairline"])).toBe("3.2 mm too far behind the hairline")
  expect(say(said, differs["moved-over"])).toBe("parting 2.6 mm too far forward")
  expect(say(said, differs.starts)).toBe("product starts 4 mm too close to the scalp")
  expect(say(said, differs.longer)).toBe("20% too short")
})
