import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { Question } from "../../document/consultation"
import type { CautionCode } from "./cautionCode"
import { caution, type Rule, said, stop, type Visit, when } from "./rule"
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
