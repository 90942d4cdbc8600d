import { describe, expect, it } from "vitest"
import type { WeighableCode } from "../../../web/core/bowls/weighables"
import type { TrustCode } from "../../../web/core/weighing/trust"
import type { ReadingProblem } from "../../../web/core/weighing/weighedBowl"
import type { ListProblem } from "../../../web/core/weighing/weighingCsv"
import { say } from "../../../web/words/say"
import { everySampleIn, type Samples } from "../../support/codes"
import { en, everyLanguage } from "../../support/words"

const readings: Samples<ReadingProblem> = {
  "not-read": { code: "not-read", beforeG: Number.NaN, afterG: 2 },
  gained: { code: "gained", beforeG: 178, afterG: 212 },
  "nothing-placed": { code: "nothing-placed", beforeG: 200, afterG: 200 },
}
const weighed: Samples<WeighableCode> = {
  bowl: { code: "bowl", mix: "A", bowl: 2, foils: [4, 5, 9] },
  foil: { code: "foil", foil: 7 },
  coat: { code: "coat", foil: 7, part: "roots", mix: "B" },
}
const trust: Samples<TrustCode> = {
  "no-agreement": { code: "no-agreement" },
  trusted: { code: "trusted", withinShare: 0.08 },
  "more-needed": { code: "more-needed", withinShare: 0.2, more: 1 },
  "too-many-needed": { code: "too-many-needed", withinShare: 0.6 },
}
const cell = { line: 3, column: "hairG", found: "x" }
const slips: Samples<ListProblem> = {
  "file-too-large": { code: "file-too-large", mostMb: 5 },
  "header-empty": { code: "header-empty" },
  "header-separator": { code: "header-separator", separator: "tabs" },
  "columns-missing": { code: "columns-missing", columns: ["hairG", "productG"] },
  "column-unknown": { code: "column-unknown", column: "note" },
  cells: { code: "cells", line: 2, cells: 5, columns: 3 },
  "decimal-comma": { code: "decimal-comma", ...cell, found: "1,2", write: "1.2" },
  "no-number": { code: "no-number", ...cell, found: "" },
  negative: { code: "negative", ...cell, found: "-4" },
  "nothing-used": { code: "nothing-used", ...cell, found: "0" },
  "not-whole": { code: "not-whole", ...cell, found: "2.5" },
  "too-large": { code: "too-large", ...cell, found: "9999", most: 5000 },
  "more-slips": { code: "more-slips", count: 30 },
}

describe.each(everyLanguage)("weighing in %s", (_, { weighing }) => {
  it.each([
    ...everySampleIn(weighing.bowl.problem, readings),
    ...everySampleIn(weighing.bowl.name, weighed),
    ...everySampleIn(weighing.learnt.trust, trust),
    ...everySampleIn(weighing.list.problem, slips),
  ])("says %s", (_, sentence) => {
    expect(sentence).not.toMatch(/^$|undefined|NaN|\[object/)
  })
})

describe("a count", () => {
  it("is spoken of as one or as several", () => {
    expect(say(en.weighing.learnt.trust, trust["more-needed"])).toContain("One more weighing")
    expect(say(en.weighing.learnt.trust, { ...trust["more-needed"], more: 2 })).toContain("2 more weighings")
    expect(say(en.weighing.bowl.name, { ...weighed.bowl, foils: [4] })).toBe("Mix A, bowl 2: foil 4")
    expect(say(en.weighing.bowl.name, weighed.bowl)).toBe("Mix A, bowl 2: foils 4, 5 and 9")
  })
})
