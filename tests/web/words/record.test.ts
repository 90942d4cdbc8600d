import { describe, expect, it } from "vitest"
import type { DoneCode } from "../../../web/core/record/doneToday"
import type { LookCode } from "../../../web/core/record/recordFoils"
import type { RecordLine } from "../../../web/core/record/recordLines"
import { say } from "../../../web/words/say"
import { isSentence, type SamplesOf, samplesOf } from "../../support/sentences"
import { en, everyLanguage } from "../../support/words"

const told: SamplesOf<DoneCode> = {
  foils: {
    code: "foils",
    count: 2,
    piece: "foil",
    places: ["hairline", "sides"],
    kinds: [{ kind: "backcomb", count: 2 }],
  },
  lightened: { code: "lightened", products: ["A", "B"] },
  toned: { code: "toned", products: ["C"] },
}
const looks: SamplesOf<LookCode> = {
  checked: {
    code: "checked",
    onMin: 10,
    level: null,
    stretch: "soft",
    comfort: "warm",
    moist: null,
    by: null,
  },
  "not-checked": { code: "not-checked", times: 2 },
  "re-coated": { code: "re-coated", times: 2 },
  "roots-on": { code: "roots-on", afterMin: 15, by: null },
  "roots-never": { code: "roots-never" },
}
const lines: SamplesOf<RecordLine> = {
  measures: { code: "measures", densityPerCm2: 200, fibreUm: 70, frontCm: 20, sidesCm: 25.5, backCm: 30 },
  "no-consultation": { code: "no-consultation" },
  hair: {
    code: "hair",
    zones: ["top", "back"],
    runs: [{ parts: ["ends"], state: { level: 8, history: ["lightened"], porosity: "high", stretch: null } }],
  },
  wanted: { code: "wanted", liftToLevel: 9, finish: "cool", upkeepWeeks: 8, greyShare: 0.1 },
  health: { code: "health", scalp: null, ageYears: null, yes: ["asthma"], no: 2, open: 12 },
  "patch-test": {
    code: "patch-test",
    product: "C",
    place: "",
    applied: null,
    result: { outcome: "reacted", readBy: "", read: { day: "2026-03-08", time: "11:30" } },
  },
  "strand-test": { code: "strand-test", product: "A", outcome: "failed" },
  letter: { code: "letter", rule: "asthma", from: "Dr A.", dated: "2026-03-01" },
  withdrawn: {
    code: "withdrawn",
    rule: "past-reaction",
    about: "House toner (invented)",
    at: { day: "2026-03-09", time: "10:00" },
    by: "M.",
  },
  "asked-by": { code: "asked-by", by: "M." },
  "asked-aloud": {
    code: "asked-aloud",
    by: "Ana",
    at: { day: "2026-03-09", time: "10:00" },
    questions: 12,
  },
  people: {
    code: "people",
    people: [
      { who: 1, name: "Ana Berg", initials: "AB" },
      { who: 2, name: "", initials: "" },
    ],
  },
  override: {
    code: "override",
    rule: "heat",
    mix: "A",
    about: null,
    by: "M.",
    on: "2026-03-09",
    reason: "short",
  },
}

describe.each(everyLanguage)("the record in %s", (_, { record }) => {
  it("has a sentence for every code", () => {
    const said = [
      ...samplesOf(told).flatMap((each) => [say(record.told.done, each), say(record.told.planned, each)]),
      ...samplesOf(looks).map((each) => say(record.looks, each)),
      ...samplesOf(lines).map((each) => say(record.lines, each)),
      ...lines.people.people.flatMap((by) => [record.placedBy(by), record.mixedBy(by)]),
    ]
    expect(said.filter((each) => !isSentence(each))).toEqual([])
  })
})

describe("the record in English", () => {
  it("never takes what nobody saw for fine", () => {
    expect(say(en.record.looks, looks.checked)).toBe("10 min: checked, limp, scalp warm")
    const by = { who: 2 as const, name: "Mia Lund", initials: "ML" }
    expect(say(en.record.looks, { ...looks.checked, by })).toBe("10 min: checked by ML, limp, scalp warm")
    expect(say(en.record.looks, { ...looks.checked, level: 8, by })).toBe(
      "10 min: level 8, limp, scalp warm, checked by ML",
    )
    expect(en.record.mixedBy({ who: 1, initials: "" })).toBe("by the colourist")
    expect(say(en.record.lines, lines.health)).toBe(
      "Scalp not asked; age not asked; yes: Asthma?; 2 answered no; 12 not asked",
    )
  })
  it("says who worked, and who asked and signed", () => {
    expect(say(en.record.lines, lines.people)).toBe("Colourist Ana Berg (AB), assistant")
    expect(lines.people.people.map(en.record.placedBy)).toEqual(["placed by AB", "placed by the assistant"])
    expect(say(en.record.lines, lines["asked-aloud"])).toBe("Ana, 9 March 2026, 10:00: no to 12 questions")
  })
})
