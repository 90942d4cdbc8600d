import { describe, expect, it } from "vitest"
import type { NotAsked, NotKnown } from "../../../web/core/cautions/asking/notAsked"
import { rules } from "../../../web/core/cautions/cautions"
import type { Clearance } from "../../../web/core/cautions/clearance"
import type { AlertTestFault } from "../../../web/core/cautions/rules/alertTest"
import type { CautionCode } from "../../../web/core/cautions/rules/cautionCode"
import { say } from "../../../web/words/say"
import { everyLanguage } from "../../support/words"

const product = "House toner (invented)"
const testFaults: { [C in AlertTestFault["code"]]: Extract<AlertTestFault, { code: C }> } = {
  "no-test": { code: "no-test", product, hours: 48 },
  "no-time": { code: "no-time", product },
  "in-future": { code: "in-future", product },
  "too-young": { code: "too-young", product, hoursOn: 47, hours: 48, readFrom: "2026-06-03T10:00" },
  unread: { code: "unread", product },
  reacted: { code: "reacted", product },
  "reader-missing": { code: "reader-missing", product },
  "read-in-future": { code: "read-in-future", product },
  "read-early": { code: "read-early", product, hours: 48 },
  "out-of-date": { code: "out-of-date", product, lastDay: "2026-06-09" },
  "changed-since": { code: "changed-since", product },
  "too-old": { code: "too-old", product, appliedOn: "2026-03-09", mostDays: 14 },
  "other-visit": { code: "other-visit", product, madeFor: "2026-03-09" },
  "before-henna": { code: "before-henna", product, tattooOn: "2026-03-09" },
  "henna-undated": { code: "henna-undated", product },
}
const found: { [C in CautionCode["code"]]: Extract<CautionCode, { code: C }> } = {
  "under-age": { code: "under-age", youngestYears: 16 },
  "past-reaction": { code: "past-reaction", product },
  "breathing-reaction": { code: "breathing-reaction" },
  "scalp-hurt": { code: "scalp-hurt", scalp: "broken" },
  "sensitive-scalp": { code: "sensitive-scalp" },
  "face-rash": { code: "face-rash" },
  "alert-test-wanting": { code: "alert-test-wanting", fault: testFaults["too-young"] },
  "toner-not-chosen": { code: "toner-not-chosen", wanting: ["toner", "root-shade"], testHours: 48 },
  expecting: { code: "expecting" },
  "scalp-condition": { code: "scalp-condition" },
  chemotherapy: { code: "chemotherapy" },
  asthma: { code: "asthma" },
  medicines: { code: "medicines" },
  "mixer-breathing": { code: "mixer-breathing" },
  "dye-allergy": { code: "dye-allergy" },
  "other-allergy": { code: "other-allergy" },
  "card-dye-allergy": { code: "card-dye-allergy", to: ["PPD", ""] },
  "card-allergy": { code: "card-allergy", to: ["nickel"] },
  "scalp-today": { code: "scalp-today" },
  "unknown-content": { code: "unknown-content" },
  extensions: { code: "extensions" },
  "black-henna": { code: "black-henna" },
  "hairline-loss": { code: "hairline-loss" },
  eyes: { code: "eyes" },
  "metallic-salts": { code: "metallic-salts" },
  henna: { code: "henna" },
  "strand-test-failed": { code: "strand-test-failed", product },
  "over-stretched": { code: "over-stretched" },
  "recent-relaxer": { code: "recent-relaxer" },
  "strand-test-first": { code: "strand-test-first" },
  overlap: { code: "overlap" },
  "coated-twice": { code: "coated-twice", foils: [1, 4], fromMm: 43.1, toMm: 240 },
  porous: { code: "porous" },
  "over-legal-limit": { code: "over-legal-limit", mix: "B", onHeadPercent: 13.5, mostPercent: 12 },
  "hairline-strength": { code: "hairline-strength", mix: "B", volume: 30, mostVolume: 20 },
  "strong-developer": { code: "strong-developer", mix: "A", volume: 40, usualMostVolume: 30 },
  "developer-not-on-sheet": {
    code: "developer-not-on-sheet",
    mix: "root-shade",
    product,
    volume: 30,
    listed: [5, 10],
  },
  "ratio-not-on-sheet": { code: "ratio-not-on-sheet", mix: "toner", product, parts: 3, low: 1.5, high: 2.5 },
  "off-scalp-product": { code: "off-scalp-product", mix: "A", product },
  heat: { code: "heat", mix: "A", heatMin: 15, allowedMin: 10 },
  "heat-time": { code: "heat-time", mix: "A", heatMin: 15, usualMostMin: 10 },
  "heat-place": { code: "heat-place", mix: "A", forbiddenVolume: 30 },
  "open-air-dries": { code: "open-air-dries", mix: "A" },
  "stronger-roots": { code: "stronger-roots", mix: "B", volume: 30, endsMix: "A", endsVolume: 20 },
  "no-sheet": { code: "no-sheet", mix: "A", product },
  "sheet-silent": { code: "sheet-silent", mix: "A", product, gaps: ["longest-time", "pot-life"] },
}
const unknown: { [C in NotKnown["code"]]: NotKnown } = {
  "target-level": { code: "target-level" },
  finish: { code: "finish" },
  brightest: { code: "brightest" },
  "root-distance": { code: "root-distance" },
  grey: { code: "grey" },
  upkeep: { code: "upkeep" },
  level: { code: "level", parts: null },
  porosity: { code: "porosity", parts: ["midLengths"] },
}
const open: { [C in NotAsked["code"]]: NotAsked } = {
  age: { code: "age" },
  scalp: { code: "scalp", before: "2026-03-09" },
  question: { code: "question", question: "asthma", before: null, isOld: true },
  "which-allergy": { code: "which-allergy" },
  "black-henna-date": { code: "black-henna-date" },
  "changed-since": { code: "changed-since", product },
  history: { code: "history", parts: ["roots", "ends"] },
  stretch: { code: "stretch", parts: null },
}
const told = (state: Clearance["state"]) => ({
  state,
  day: "2026-03-09",
  stops: [1, 2],
  notAsked: [1],
  by: { answers: 20, tests: 1, letters: 1, overrides: 2, askedBy: "M." },
})

const whole = (sentence: string) => {
  expect(sentence.trim()).not.toBe("")
  expect(sentence).not.toMatch(/undefined|NaN|\[object|\bnull\b/)
}

describe.each(everyLanguage)("in %s", (_, { cautions }) => {
  it("has a sentence for all that a rule finds", () => {
    for (const code of Object.values(found)) whole(say(cautions.why, code))
  })

  it("has a sentence for every fault of a patch test", () => {
    for (const fault of Object.values(testFaults)) whole(say(cautions.testFaults, fault))
  })

  it("names all that is not known", () => {
    for (const thing of Object.values(unknown)) whole(say(cautions.notKnown, thing))
    for (const thing of Object.values(open)) whole(say(cautions.notAsked, thing))
  })

  it("tells each state of a plan in words of its own", () => {
    const { pill, head, sentence } = cautions.clearance
    for (const tell of [pill, head, sentence]) {
      const each = (["stop", "not-asked", "cleared"] as const).map((state) => tell(told(state)))
      each.forEach(whole)
      expect(new Set(each).size).toBe(3)
    }
  })

  it("names every row, who decides and its source", () => {
    for (const { rule, decides, source } of rules) {
      whole(cautions.rules[rule])
      whole(cautions.authority(decides, source))
    }
  })

  it("tells heat as the sheet has it: silent, forbidden, or shorter", () => {
    const told = [null, 0, 5].map((allowedMin) => say(cautions.why, { ...found.heat, allowedMin }))
    expect(new Set(told).size).toBe(3)
  })
})
