import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { Consultation } from "../../document/consultation"
import { alertTestWanting, type TestMoment } from "./alertTest"
import type { ToneWanting } from "./cautionCode"
import { caution, eachMix, type Rule, said, stop, tonerIds, type Visit, when } from "./rule"
import { isTestAsked } from "./tonerKinds"

/** What the tests of a client are held against. */
export const testMomentOf = (
  { answers, blackHennaOn }: Consultation,
  { now, days }: Pick<Visit, "now" | "days">,
): TestMoment => ({
  now,
  visitDay: days.visit === days.today ? (days.begun ?? days.visit) : days.visit,
  hennaOn: answers.blackHennaTattoo?.said === "yes" ? (blackHennaOn ?? "unknown") : null,
})

/** What the patch tests say. */
export const testRules = {
  "alert-test": stop({
    decides: "maker",
    isPublic: true,
    field: "patch-tests",
    source: "alert-test-hours",
    finds: (visit) =>
      eachMix(visit, (mix) => {
        if (!isTestAsked(mix)) return null
        const { alertTests } = visit.consultation
        const fault = alertTestWanting(alertTests, mix.product, testMomentOf(visit.consultation, visit))
        return fault && { code: "alert-test-wanting", fault }
      }),
  }),
  "toner-not-chosen": caution({
    decides: "maker",
    isPublic: true,
    field: "formula",
    source: "alert-test-hours",
    finds: ({ consultation: { finish, rootMeltMm }, mixes }) => {
      const isChosen = (id: string) => mixes.some((mix) => mix.id === id)
      const wanting: ToneWanting[] = [
        ...(finish !== null && !isChosen(tonerIds.toner) ? (["toner"] as const) : []),
        ...(rootMeltMm !== null && !isChosen(tonerIds.rootShade) ? (["root-shade"] as const) : []),
      ]
      return when(wanting.length > 0, {
        code: "toner-not-chosen",
        wanting,
        testHours: visitLimits.alertTestHours,
      })
    },
  }),
  "black-henna": caution({
    decides: "colourist",
    isPublic: false,
    field: "black-henna-date",
    source: "trade-body",
    finds: (visit) => when(said(visit, "blackHennaTattoo"), { code: "black-henna" }),
  }),
} satisfies Record<string, Rule>
