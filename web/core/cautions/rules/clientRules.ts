import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { Question } from "../../document/consultation"
import { alertTestWanting } from "./alertTest"
import type { CautionCode, ToneWanting } from "./cautionCode"
import {
  caution,
  eachMix,
  finalStop,
  type PlannedMix,
  type Rule,
  stop,
  tonerIds,
  type Visit,
  when,
} from "./rule"

const { youngestYears, alertTestHours } = visitLimits

const said = ({ consultation }: Visit, ...asked: readonly Question[]) =>
  asked.some((question) => consultation.answers[question] === "yes")

/** A stop of its own for each answer: a reason that passes one passes no other. */
const askDoctor = (question: Question, why: CautionCode): Rule =>
  stop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "common-practice",
    finds: (visit) => when(said(visit, question), why),
  })

/** What the client's skin, breath, age and day say. */
export const clientRules = {
  "under-16": finalStop({
    decides: "law",
    isPublic: false,
    at: "ask",
    source: "label-words-and-trade-body",
    finds: ({ consultation: { ageYears } }) =>
      when(ageYears !== null && ageYears < youngestYears, { code: "under-age", youngestYears }),
  }),
  "past-reaction": finalStop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "label-words",
    finds: (visit) =>
      when(
        said(visit, "pastReaction", "blackHennaReaction") ||
          visit.consultation.alertTests.some(({ result }) => result?.outcome === "reacted"),
        { code: "past-reaction" },
      ),
  }),
  "breathing-reaction": finalStop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "persulfates-at-work",
    finds: (visit) =>
      when(said(visit, "breathingReaction", "colouristBreathing"), { code: "breathing-reaction" }),
  }),
  scalp: finalStop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "label-words",
    finds: ({ consultation: { scalp } }) =>
      scalp === "irritated" || scalp === "broken" ? [{ why: { code: "scalp-hurt", scalp } }] : [],
  }),
  "sensitive-scalp": stop({
    decides: "law",
    isPublic: false,
    at: "ask",
    source: "label-words",
    finds: ({ consultation: { scalp } }) => when(scalp === "sensitive", { code: "sensitive-scalp" }),
  }),
  "face-rash": stop({
    decides: "law",
    isPublic: false,
    at: "ask",
    source: "label-words",
    finds: (visit) => when(said(visit, "faceRash"), { code: "face-rash" }),
  }),
  "alert-test": stop({
    decides: "maker",
    isPublic: true,
    at: "tests",
    source: "alert-test-hours",
    finds: (visit) =>
      eachMix(visit, (mix) => {
        if (!isTestAsked(mix)) return null
        const fault = alertTestWanting(visit.consultation.alertTests, mix.product, visit.now)
        return fault && { code: "alert-test-wanting", fault }
      }),
  }),
  "toner-not-chosen": caution({
    decides: "maker",
    isPublic: true,
    at: "formula",
    source: "alert-test-hours",
    finds: ({ consultation: { finish, rootMeltMm }, mixes }) => {
      const isChosen = (id: string) => mixes.some((mix) => mix.id === id)
      const wanting: ToneWanting[] = [
        ...(finish !== null && !isChosen(tonerIds.toner) ? (["toner"] as const) : []),
        ...(rootMeltMm !== null && !isChosen(tonerIds.rootShade) ? (["root-shade"] as const) : []),
      ]
      return when(wanting.length > 0, { code: "toner-not-chosen", wanting, testHours: alertTestHours })
    },
  }),
  expecting: askDoctor("expecting", { code: "expecting" }),
  "scalp-condition": askDoctor("scalpCondition", { code: "scalp-condition" }),
  chemotherapy: askDoctor("chemotherapy", { code: "chemotherapy" }),
  asthma: stop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "asthma",
    finds: (visit) => when(said(visit, "asthma") && visit.mixes.some(isLightener), { code: "asthma" }),
  }),
  allergy: stop({
    decides: "doctor",
    isPublic: false,
    at: "ask",
    source: "label-words",
    finds: (visit) => when(said(visit, "allergy"), { code: "allergy" }),
  }),
  "ask-about-breathing": caution({
    decides: "colourist",
    isPublic: false,
    at: "ask",
    source: "persulfates",
    finds: ({ consultation: { answers }, mixes }) =>
      when(answers.breathingReaction === undefined && mixes.some(isLightener), {
        code: "ask-about-breathing",
      }),
  }),
  "black-henna": caution({
    decides: "colourist",
    isPublic: false,
    at: "tests",
    source: "trade-body",
    finds: (visit) => when(said(visit, "blackHennaTattoo"), { code: "black-henna" }),
  }),
  "changed-since-test": caution({
    decides: "colourist",
    isPublic: false,
    at: "tests",
    source: "test-every-time",
    finds: ({ consultation: { alertTests } }) =>
      when(
        alertTests.some(({ changedSince }) => changedSince === null),
        { code: "changed-since-test" },
      ),
  }),
  "hairline-loss": caution({
    decides: "colourist",
    isPublic: false,
    at: "ask",
    source: "common-practice",
    finds: (visit) => when(said(visit, "hairlineLoss"), { code: "hairline-loss" }),
  }),
  eyes: caution({
    decides: "colourist",
    isPublic: false,
    at: "ask",
    source: "eyes",
    finds: (visit) => when(said(visit, "lenses", "browsOrLashes"), { code: "eyes" }),
  }),
} satisfies Record<string, Rule>

const isToner = ({ id }: PlannedMix) => id === tonerIds.toner || id === tonerIds.rootShade

/** A product without a sheet may be one, unless it is there to tone. */
const isLightener = (mix: PlannedMix) => (mix.sheet ? mix.sheet.kind === "lightener" : !isToner(mix))

/** Dye, toner and root shade always, a toner with developer even without its sheet; anything else where its sheet asks. */
export const isTestAsked = (mix: PlannedMix) =>
  mix.sheet
    ? mix.sheet.kind === "oxidative-toner" || mix.sheet.kind === "root-shade" || mix.sheet.alertTest === true
    : isToner(mix) && mix.developerVolume > 0
