import { commonPractice } from "../../../../presets/figure/figure"
import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { Question } from "../../document/consultation"
import { alertTestWanting } from "./alertTest"
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

const labelWords = "label words of Regulation (EC) 1223/2009, Annex III, as listed by Tukes (Finland)"
const persulfates = "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21"

const said = ({ consultation }: Visit, ...asked: readonly Question[]) =>
  asked.some((question) => consultation.answers[question] === "yes")

/** A stop of its own for each answer: a reason that passes one passes no other. */
const askDoctor = (rule: string, question: Question, words: string): Rule =>
  stop({
    rule,
    decides: "the client’s doctor",
    source: commonPractice,
    finds: (visit) => when(said(visit, question), `${words}: ask the client’s doctor first, or decline.`),
  })

/** What the client's skin, breath, age and day say. */
export const clientRules: readonly Rule[] = [
  finalStop({
    rule: "under-16",
    decides: "the law and the label",
    source: `${labelWords}; National Hair and Beauty Federation (UK)`,
    finds: ({ consultation: { ageYears } }) =>
      when(
        ageYears !== null && ageYears < visitLimits.youngestYears,
        `The client is under ${visitLimits.youngestYears}: neither colour nor an alert test. Plan another service.`,
      ),
  }),
  finalStop({
    rule: "past-reaction",
    decides: "the client’s doctor",
    source: labelWords,
    finds: (visit) =>
      when(
        said(visit, "pastReaction", "blackHennaReaction") ||
          visit.consultation.alertTests.some(({ result }) => result?.outcome === "reacted"),
        "The client has reacted before, to colour, to a test or to black henna. Do not colour; a doctor can find out to what.",
      ),
  }),
  finalStop({
    rule: "breathing-reaction",
    decides: "the client’s doctor",
    source: `${persulfates}; HSE, COSHH and hairdressers`,
    finds: (visit) =>
      when(
        said(visit, "breathingReaction", "colouristBreathing"),
        "Lightener has made someone here wheeze, cough or come out in hives. Do not mix it near them; refer to a doctor.",
      ),
  }),
  finalStop({
    rule: "scalp",
    decides: "the client’s doctor",
    source: labelWords,
    finds: ({ consultation: { scalp } }) =>
      when(
        scalp === "irritated" || scalp === "broken",
        `The scalp is ${scalp}. Leave it alone until it has healed.`,
      ),
  }),
  stop({
    rule: "sensitive-scalp",
    decides: "the law and the label",
    source: labelWords,
    finds: ({ consultation: { scalp } }) =>
      when(
        scalp === "sensitive",
        "The scalp is sensitive. The label says not to colour; wait, or ask a doctor.",
      ),
  }),
  stop({
    rule: "face-rash",
    decides: "the law and the label",
    source: labelWords,
    finds: (visit) =>
      when(
        said(visit, "faceRash"),
        "There is a rash on the face. The label says not to colour; wait, or ask a doctor.",
      ),
  }),
  stop({
    rule: "alert-test",
    decides: "the maker’s directions",
    source: "National Hair and Beauty Federation (UK): at least 48 hours; FDA, Hair dyes: 2 days, every time",
    finds: (visit) =>
      eachMix(visit, (mix) =>
        isTestAsked(mix) ? alertTestWanting(visit.consultation.alertTests, mix.product, visit.now) : null,
      ),
  }),
  caution({
    rule: "toner-not-chosen",
    decides: "the maker’s directions",
    source: "National Hair and Beauty Federation (UK): at least 48 hours before any oxidative colour",
    finds: ({ consultation: { finish, rootMeltMm }, mixes }) => {
      const isChosen = (id: string) => mixes.some((mix) => mix.id === id)
      const wanted = [
        ...(finish !== null && !isChosen(tonerIds.toner) ? ["toner"] : []),
        ...(rootMeltMm !== null && !isChosen(tonerIds.rootShade) ? ["root shade"] : []),
      ]
      return when(
        wanted.length > 0,
        `No ${wanted.join(" or ")} is chosen yet. With developer it asks for an alert test of its own, read clear, ${visitLimits.alertTestHours} hours before.`,
      )
    },
  }),
  askDoctor("expecting", "expecting", "Expecting or breast feeding"),
  askDoctor("scalp-condition", "scalpCondition", "A condition of the scalp, or surgery on it lately"),
  askDoctor("chemotherapy", "chemotherapy", "Chemotherapy, now or lately"),
  stop({
    rule: "asthma",
    decides: "the client’s doctor",
    source: `${persulfates}; ANSES (France), via the trade press: stop and refer`,
    finds: (visit) =>
      when(
        said(visit, "asthma") && visit.mixes.some(isLightener),
        "The client has asthma, and a clear alert test says nothing of lightener. Ask the client’s doctor first; then fresh air, no dust, and off at the first cough.",
      ),
  }),
  stop({
    rule: "allergy",
    decides: "the client’s doctor",
    source: labelWords,
    finds: (visit) =>
      when(
        said(visit, "allergy"),
        "The client has an allergy. Hold it against the list on every tub, bottle and glove; where it is named there, or nobody knows to what, decline.",
      ),
  }),
  caution({
    rule: "ask-about-breathing",
    decides: "the colourist",
    source: persulfates,
    finds: ({ consultation: { answers }, mixes }) =>
      when(
        answers.breathingReaction === undefined && mixes.some(isLightener),
        "Nobody has asked about wheeze, cough or hives with lightener; a clear alert test says nothing of them. Ask.",
      ),
  }),
  caution({
    rule: "black-henna",
    decides: "the colourist",
    source: "National Hair and Beauty Federation (UK)",
    finds: (visit) =>
      when(
        said(visit, "blackHennaTattoo"),
        "The client has had a black henna tattoo. Only an alert test put on after it counts.",
      ),
  }),
  caution({
    rule: "changed-since-test",
    decides: "the colourist",
    source: "FDA, Hair dyes: a test every time",
    finds: ({ consultation: { alertTests } }) =>
      when(
        alertTests.some(({ changedSince }) => changedSince === null),
        "Nobody has asked whether anything changed since the alert test: illness, medicine, a tattoo. Ask.",
      ),
  }),
  caution({
    rule: "hairline-loss",
    decides: "the colourist",
    source: commonPractice,
    finds: (visit) =>
      when(
        said(visit, "hairlineLoss"),
        "Hair is being lost along the hairline. Leave a band out there, and no pull on what is left.",
      ),
  }),
  caution({
    rule: "eyes",
    decides: "the colourist",
    source: "FDA, Hair dyes: keep off brows and lashes; label words on eyes",
    finds: (visit) =>
      when(
        said(visit, "lenses", "browsOrLashes"),
        "Contact lenses out before mixing; keep product well off brows and lashes.",
      ),
  }),
]

const isToner = ({ id }: PlannedMix) => id === tonerIds.toner || id === tonerIds.rootShade

/** A product without a sheet may be one, unless it is there to tone. */
const isLightener = (mix: PlannedMix) => (mix.sheet ? mix.sheet.kind === "lightener" : !isToner(mix))

/** Dye, toner and root shade always, a toner with developer even without its sheet; anything else where its sheet asks. */
export const isTestAsked = (mix: PlannedMix) =>
  mix.sheet
    ? mix.sheet.kind === "oxidative-toner" || mix.sheet.kind === "root-shade" || mix.sheet.alertTest === true
    : isToner(mix) && mix.developerVolume > 0
