import { expect, test } from "vitest"
import { type RuleName, rules } from "../../../../../web/core/cautions/cautions"
import type { Rule } from "../../../../../web/core/cautions/rules/rule"

/** The names of the rows, sorted by what a column of theirs says. */
const by = <Said extends string>(told: (row: Rule) => Said) => {
  const groups: Partial<Record<Said, RuleName[]>> = {}
  for (const row of rules) groups[told(row)] = [...(groups[told(row)] ?? []), row.rule].toSorted()
  return groups
}

test("law, label and maker are not the colourist’s to overrule; a health answer is the doctor’s ground", () => {
  expect(by(({ decides }) => decides)).toEqual({
    law: [
      "face-rash",
      "over-legal-limit",
      "past-reaction",
      "scalp",
      "scalp-today",
      "sensitive-scalp",
      "under-16",
    ],
    doctor: [
      "asthma",
      "breathing-reaction",
      "card-dye-allergy",
      "chemotherapy",
      "dye-allergy",
      "expecting",
      "medicines",
      "mixer-breathing",
      "scalp-condition",
    ],
    maker: [
      "alert-test",
      "developer-not-on-sheet",
      "heat",
      "metallic-salts",
      "off-scalp-product",
      "open-air-dries",
      "over-stretched",
      "overlap",
      "ratio-not-on-sheet",
      "sheet-silent",
      "strand-test-failed",
      "toner-not-chosen",
    ],
    colourist: [
      "allergy",
      "black-henna",
      "card-allergy",
      "coated-twice",
      "extensions",
      "eyes",
      "hairline-loss",
      "hairline-strength",
      "heat-place",
      "heat-time",
      "henna",
      "no-sheet",
      "porous",
      "recent-relaxer",
      "strand-test-first",
      "strong-developer",
      "stronger-roots",
      "unknown-content",
    ],
  })
})

test("what tells of age, skin, breath or health is named on no sheet that hangs where others read it", () => {
  expect(by(({ isPublic }) => (isPublic ? "public" : "private")).private).toEqual([
    "allergy",
    "asthma",
    "black-henna",
    "breathing-reaction",
    "card-allergy",
    "card-dye-allergy",
    "chemotherapy",
    "dye-allergy",
    "expecting",
    "face-rash",
    "medicines",
    "mixer-breathing",
    "past-reaction",
    "scalp",
    "scalp-condition",
    "scalp-today",
    "sensitive-scalp",
    "under-16",
  ])
})

test("each leads to the field that answers it", () => {
  expect(by(({ field }) => field)).toEqual({
    age: ["under-16"],
    scalp: ["scalp", "sensitive-scalp"],
    allergy: ["allergy"],
    "black-henna-date": ["black-henna"],
    "patch-tests": ["alert-test"],
    "strand-tests": ["strand-test-failed", "strand-test-first"],
    history: ["henna", "metallic-salts", "overlap"],
    stretch: ["over-stretched"],
    porosity: ["porous"],
    regrowth: ["coated-twice"],
    timing: ["heat", "heat-place", "heat-time"],
    formula: [
      "developer-not-on-sheet",
      "hairline-strength",
      "no-sheet",
      "off-scalp-product",
      "open-air-dries",
      "over-legal-limit",
      "ratio-not-on-sheet",
      "sheet-silent",
      "strong-developer",
      "stronger-roots",
      "toner-not-chosen",
    ],
    "question-asthma": ["asthma"],
    "question-breathingReaction": ["breathing-reaction"],
    "question-chemotherapy": ["chemotherapy"],
    "question-colouristBreathing": ["mixer-breathing"],
    "question-dyeAllergy": ["card-dye-allergy", "dye-allergy"],
    "question-expecting": ["expecting"],
    "question-extensions": ["extensions"],
    "question-faceRash": ["face-rash"],
    "question-hairlineLoss": ["hairline-loss"],
    "question-homeColour": ["unknown-content"],
    "question-lenses": ["eyes"],
    "question-medicines": ["medicines"],
    "question-otherAllergy": ["card-allergy"],
    "question-pastReaction": ["past-reaction"],
    "question-recentRelaxer": ["recent-relaxer"],
    "question-scalpCondition": ["scalp-condition"],
    "question-scalpToday": ["scalp-today"],
  })
})

test("what is common practice without a source says so; the others name the source they were taken from", () => {
  expect(by(({ source }) => source)).toEqual({
    "label-words-and-trade-body": ["under-16"],
    "label-words": [
      "allergy",
      "card-allergy",
      "card-dye-allergy",
      "dye-allergy",
      "face-rash",
      "past-reaction",
      "scalp",
      "scalp-today",
      "sensitive-scalp",
    ],
    "legal-strength": ["over-legal-limit"],
    "alert-test-hours": ["alert-test", "toner-not-chosen"],
    "trade-body": ["black-henna"],
    eyes: ["eyes"],
    "persulfates-at-work": ["breathing-reaction", "mixer-breathing"],
    asthma: ["asthma"],
    "dye-diffusion": ["coated-twice", "overlap"],
    "heat-burns": ["heat"],
    "product-sheet": [
      "developer-not-on-sheet",
      "no-sheet",
      "off-scalp-product",
      "ratio-not-on-sheet",
      "sheet-silent",
    ],
    "common-practice": [
      "chemotherapy",
      "expecting",
      "extensions",
      "hairline-loss",
      "hairline-strength",
      "heat-place",
      "heat-time",
      "henna",
      "medicines",
      "metallic-salts",
      "open-air-dries",
      "over-stretched",
      "porous",
      "recent-relaxer",
      "scalp-condition",
      "strand-test-failed",
      "strand-test-first",
      "strong-developer",
      "stronger-roots",
      "unknown-content",
    ],
  })
})
