import { expect, it } from "vitest"
import { checkVisit } from "../../../../../web/core/cautions/cautions"
import type { Visit } from "../../../../../web/core/cautions/rules/rule"
import type { Consultation, HairState, Question } from "../../../../../web/core/document/consultation"
import { answersOn, askedAll } from "../../../../support/answers"

const today = "2026-06-10"
const lightener = {
  id: "A",
  product: "From a tub",
  sheet: null,
  developerVolume: 20,
  ratio: { lightener: 1, developer: 2 },
  heatMin: 0,
  near: { hairline: false, scalp: false, cushion: false },
}
/** What is said beside that the product has no sheet. */
const told = (change: Partial<Consultation>, standing: Visit["standing"] = []) => {
  const { stops, cautions } = checkVisit({
    consultation: askedAll(today, change),
    standing,
    mixes: [lightener],
    twice: [],
    now: { moment: `${today}T10:00:00Z`, zone: "Europe/London" },
    days: { today, visit: today },
  })
  return [...stops, ...cautions].map(({ why }) => why).filter(({ code }) => code !== "no-sheet")
}
const yes = (question: Question) => told({ answers: answersOn(today, { [question]: "yes" }) })
const hair = (change: Partial<HairState>) =>
  told({
    hair: {
      top: { roots: { level: 7, history: [], porosity: "usual", stretch: "springs-back", ...change } },
    },
  })

it.each<[Question, string]>([
  ["breathingReaction", "breathing-reaction"],
  ["colouristBreathing", "mixer-breathing"],
  ["dyeAllergy", "dye-allergy"],
  ["otherAllergy", "other-allergy"],
  ["scalpToday", "scalp-today"],
  ["faceRash", "face-rash"],
  ["expecting", "expecting"],
  ["scalpCondition", "scalp-condition"],
  ["medicines", "medicines"],
  ["chemotherapy", "chemotherapy"],
  ["asthma", "asthma"],
  ["blackHennaTattoo", "black-henna"],
  ["hairlineLoss", "hairline-loss"],
  ["lenses", "eyes"],
  ["browsOrLashes", "eyes"],
  ["recentRelaxer", "recent-relaxer"],
  ["homeColour", "unknown-content"],
  ["extensions", "extensions"],
])("a yes to %s is told by its own sentence and no other", (question, code) => {
  expect(yes(question)).toEqual([{ code }])
})

it("a past reaction is told of the client, or of the product whose test reacted", () => {
  expect(yes("pastReaction")).toEqual([{ code: "past-reaction", product: null }])
  expect(yes("blackHennaReaction")).toEqual([{ code: "past-reaction", product: null }])
})

it("a patch test that was not read yet is no reaction", () => {
  const unread = {
    product: "Toner",
    place: "",
    appliedAt: "2026-06-08T10:00:00Z",
    result: null,
    validUntil: null,
    visit: today,
    changedSince: null,
  }
  expect(told({ alertTests: [unread] })).toEqual([])
})

it("age and scalp are told as they were seen", () => {
  expect(told({ ageYears: 15 })).toEqual([{ code: "under-age", youngestYears: 16 }])
  const scalp = (seen: "irritated" | "broken" | "sensitive" | "calm") => told({ scalp: { seen, on: today } })
  expect(scalp("irritated")).toEqual([{ code: "scalp-hurt", scalp: "irritated" }])
  expect(scalp("broken")).toEqual([{ code: "scalp-hurt", scalp: "broken" }])
  expect(scalp("sensitive")).toEqual([{ code: "sensitive-scalp" }])
  expect(scalp("calm")).toEqual([])
})

it("hair is told by what it has been through", () => {
  const strandFirst = { code: "strand-test-first" }
  expect(hair({ history: ["metallic-salts"] })).toEqual([{ code: "metallic-salts" }])
  expect(hair({ history: ["henna"] })).toEqual([{ code: "henna" }])
  for (const history of ["coloured", "permed", "relaxed"] as const)
    expect(hair({ history: [history] })).toEqual([strandFirst])
  expect(hair({ history: ["lightened"] })).toEqual([strandFirst, { code: "overlap" }])
  expect(hair({ stretch: "breaks" })).toEqual([{ code: "over-stretched" }])
  expect(hair({ stretch: "stays-stretched" })).toEqual([{ code: "over-stretched" }])
  expect(hair({ porosity: "high" })).toEqual([{ code: "porous" }])
})

it("each strand that failed is told by its product; one that held is not", () => {
  const strandTests: Consultation["strandTests"] = [
    { product: "Tub", outcome: "failed" },
    { product: "Tube", outcome: "held" },
  ]
  expect(told({ strandTests })).toEqual([{ code: "strand-test-failed", product: "Tub" }])
})

it("what stands on the card is told in its words, of which kind nobody knows as hair dye", () => {
  const standing = [
    { kind: "other", to: "nickel", since: "" },
    { kind: "other", to: "latex", since: "" },
    { kind: "not-known", to: "a cream", since: "" },
  ] as const
  expect(told({}, standing)).toEqual([
    { code: "card-dye-allergy", to: ["a cream"] },
    { code: "card-allergy", to: ["nickel", "latex"] },
  ])
  const named = { answers: answersOn(today, { otherAllergy: "yes" as const }) }
  const otherAllergy = { which: "Nickel", when: "2019", how: "rash" }
  expect(told({ ...named, otherAllergy }, standing)).toEqual([
    { code: "other-allergy" },
    { code: "card-dye-allergy", to: ["a cream"] },
    { code: "card-allergy", to: ["latex"] },
  ])
  // What has no name yet cannot be named by an answer.
  const unnamed = [{ kind: "other", to: " ", since: "" }] as const
  expect(told({ ...named, otherAllergy }, unnamed).map(({ code }) => code)).toContain("card-allergy")
})
