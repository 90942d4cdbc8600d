import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { Question } from "../../document/consultation"
import { plainLetters } from "../../text/plainLetters"
import type { CautionCode } from "./cautionCode"
import { caution, type Found, type Rule, said, stop, type Visit, when } from "./rule"
import { isLightener } from "./tonerKinds"

const { youngestYears } = visitLimits

/** A stop of its own for each answer: a letter that answers one answers no other. */
const askDoctor = (question: Question, why: CautionCode): Rule =>
  stop({
    decides: "doctor",
    letter: true,
    isPublic: false,
    field: `question-${question}`,
    source: "common-practice",
    finds: (visit) => when(said(visit, question), why),
  })

/** What the client's skin, breath, age and day say. */
export const clientRules = {
  "under-16": stop({
    decides: "law",
    isPublic: false,
    field: "age",
    source: "label-words-and-trade-body",
    finds: ({ consultation: { ageYears } }) =>
      when(ageYears !== null && ageYears < youngestYears, { code: "under-age", youngestYears }),
  }),
  "past-reaction": stop({
    decides: "law",
    isPublic: false,
    field: "question-pastReaction",
    source: "label-words",
    finds: pastReactions,
  }),
  "breathing-reaction": stop({
    decides: "doctor",
    isPublic: false,
    field: "question-breathingReaction",
    source: "persulfates-at-work",
    finds: (visit) => when(said(visit, "breathingReaction"), { code: "breathing-reaction" }),
  }),
  "mixer-breathing": stop({
    decides: "doctor",
    isPublic: false,
    field: "question-colouristBreathing",
    source: "persulfates-at-work",
    finds: (visit) => when(said(visit, "colouristBreathing"), { code: "mixer-breathing" }),
  }),
  "dye-allergy": stop({
    decides: "doctor",
    isPublic: false,
    field: "question-dyeAllergy",
    source: "label-words",
    finds: (visit) => when(said(visit, "dyeAllergy"), { code: "dye-allergy" }),
  }),
  scalp: stop({
    decides: "law",
    isPublic: false,
    field: "scalp",
    source: "label-words",
    finds: ({ consultation: { scalp } }) =>
      scalp?.seen === "irritated" || scalp?.seen === "broken"
        ? [{ why: { code: "scalp-hurt", scalp: scalp.seen } }]
        : [],
  }),
  "scalp-today": stop({
    decides: "law",
    isPublic: false,
    field: "question-scalpToday",
    source: "label-words",
    finds: (visit) => when(said(visit, "scalpToday"), { code: "scalp-today" }),
  }),
  "sensitive-scalp": stop({
    decides: "law",
    isPublic: false,
    field: "scalp",
    source: "label-words",
    finds: ({ consultation: { scalp } }) => when(scalp?.seen === "sensitive", { code: "sensitive-scalp" }),
  }),
  "face-rash": stop({
    decides: "law",
    isPublic: false,
    field: "question-faceRash",
    source: "label-words",
    finds: (visit) => when(said(visit, "faceRash"), { code: "face-rash" }),
  }),
  expecting: askDoctor("expecting", { code: "expecting" }),
  "scalp-condition": askDoctor("scalpCondition", { code: "scalp-condition" }),
  medicines: askDoctor("medicines", { code: "medicines" }),
  chemotherapy: askDoctor("chemotherapy", { code: "chemotherapy" }),
  asthma: stop({
    decides: "doctor",
    letter: true,
    isPublic: false,
    field: "question-asthma",
    source: "asthma",
    finds: (visit) => when(said(visit, "asthma") && visit.mixes.some(isLightener), { code: "asthma" }),
  }),
  allergy: stop({
    decides: "colourist",
    isPublic: false,
    field: "allergy",
    source: "label-words",
    finds: (visit) =>
      said(visit, "otherAllergy")
        ? [{ why: { code: "other-allergy" }, about: visit.consultation.otherAllergy.which.trim() }]
        : [],
  }),
  "card-dye-allergy": stop({
    decides: "doctor",
    isPublic: false,
    field: "question-dyeAllergy",
    source: "label-words",
    finds: (visit) => (said(visit, "dyeAllergy") ? [] : standing(visit, "card-dye-allergy")),
  }),
  "card-allergy": stop({
    decides: "colourist",
    isPublic: false,
    field: "question-otherAllergy",
    source: "label-words",
    finds: (visit) => standing(visit, "card-allergy"),
  }),
  "hairline-loss": caution({
    decides: "colourist",
    isPublic: true,
    field: "question-hairlineLoss",
    source: "common-practice",
    finds: (visit) => when(said(visit, "hairlineLoss"), { code: "hairline-loss" }),
  }),
  eyes: caution({
    decides: "colourist",
    isPublic: true,
    field: "question-lenses",
    source: "eyes",
    finds: (visit) => when(said(visit, "lenses", "browsOrLashes"), { code: "eyes" }),
  }),
} satisfies Record<string, Rule>

/**
 * What stands on the card holds whatever is answered today: a no says that card and client disagree. What nobody knows
 * the kind of is held like hair dye. Another allergy that is told today by name is held by that answer.
 */
function standing(visit: Visit, code: "card-dye-allergy" | "card-allergy"): readonly Found[] {
  const isOther = code === "card-allergy"
  const told = said(visit, "otherAllergy") ? plainLetters(visit.consultation.otherAllergy.which) : ""
  const to = visit.standing
    .filter(({ kind, to: what }) => (kind === "other") === isOther && !(isOther && isNamed(what, told)))
    .map(({ to: what }) => what)
  return to.length === 0 ? [] : [{ why: { code, to }, about: to.join(", ") }]
}

const isNamed = (what: string, told: string) => plainLetters(what) !== "" && told.includes(plainLetters(what))

/** One finding for what the client told, one for each patch test that reacted. */
function pastReactions(visit: Visit) {
  const told = said(visit, "pastReaction", "blackHennaReaction")
  return [
    ...when(told, { code: "past-reaction", product: null }),
    ...visit.consultation.alertTests
      .filter(({ result }) => result?.outcome === "reacted")
      .map(({ product }) => ({ why: { code: "past-reaction" as const, product }, about: product })),
  ]
}
