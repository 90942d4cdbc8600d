import { expect, it } from "vitest"
import { publicStops } from "../../../../web/core/cautions/publicStops"
import { newConsultation } from "../../../../web/core/document/consultation"
import { newPlan } from "../../../../web/core/document/newPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { answersOn } from "../../../support/answers"
import { en, everyLanguage } from "../../../support/words"

const now = { moment: "2026-03-09T12:00:00Z", zone: "Europe/London" }
const toner = { product: "House toner (invented)", developerVolume: 10, parts: 2 }
const plan = {
  ...newPlan(new Date(now.moment)),
  consultation: newConsultation(),
  toning: { toner, rootShade: null },
}

const stopsWords = (plan: Plan, at: typeof now) => en.cautions.onSheet.stops(publicStops(plan, at))

it("names the test that is wanting, and tells no answer and nothing that was seen", () => {
  const reacted = {
    product: toner.product,
    place: "behind the ear",
    appliedAt: "2026-03-06T12:00:00Z",
    result: { outcome: "reacted" as const, readBy: "J", readAt: "2026-03-08T13:00:00Z" },
    validUntil: null,
    visit: null,
    changedSince: null,
  }
  expect(stopsWords(plan, now)).toBe(
    "NOT CLEARED: DO NOT MIX. 1 stop is open. The patch test with House toner (invented) is not cleared.",
  )
  const held = {
    ...plan,
    consultation: {
      ...plan.consultation,
      alertTests: [reacted],
      answers: answersOn("2026-03-09", { asthma: "yes" }),
    },
  }
  expect(stopsWords(held, now)).toBe(
    "NOT CLEARED: DO NOT MIX. 3 stops are open. The patch test with House toner (invented) is not cleared.",
  )
})

it("gives no reason for an override that tells of health, in any language", () => {
  const passes = [
    { rule: "allergy", reason: "latex gloves swapped", by: "M.", about: "latex", visit: "2026-03-09" },
  ]
  const allergic = {
    ...plan,
    toning: undefined,
    consultation: {
      ...plan.consultation,
      passes,
      otherAllergy: { which: "latex", when: "2019", how: "rash" },
      answers: answersOn("2026-03-09", { otherAllergy: "yes" }),
    },
  }
  expect(publicStops(allergic, now).passes).toEqual([{ rule: null, reason: null, by: "M." }])
  expect(stopsWords(allergic, now)).toMatch(/ A stop was overridden by M\.$/)
  for (const [, { cautions }] of everyLanguage) {
    const told = cautions.onSheet.stops(publicStops(allergic, now))
    expect(told).toContain("M.")
    expect(told).not.toMatch(/latex|gloves|null|undefined/)
  }
})
