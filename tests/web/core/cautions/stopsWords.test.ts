import { expect, it } from "vitest"
import { stopsWords } from "../../../../web/core/cautions/stopsWords"
import { newConsultation } from "../../../../web/core/document/consultation"
import { newPlan } from "../../../../web/core/document/newPlan"

const now = { moment: "2026-03-09T12:00:00Z", zone: "Europe/London" }
const toner = { product: "House toner (invented)", developerVolume: 10, parts: 2 }
const plan = {
  ...newPlan(new Date(now.moment)),
  consultation: newConsultation(),
  toning: { toner, rootShade: null },
}

it("names the test that is wanting, and tells no answer and nothing that was seen", () => {
  const reacted = {
    product: toner.product,
    place: "behind the ear",
    appliedAt: "2026-03-06T12:00:00Z",
    result: { outcome: "reacted" as const, readBy: "J", readAt: "2026-03-08T13:00:00Z" },
    validUntil: null,
    changedSince: null,
  }
  expect(stopsWords(plan, now)).toBe(
    "NOT CLEARED: a stop holds the mix. The alert test with House toner (invented) is not cleared.",
  )
  const held = {
    ...plan,
    consultation: { ...plan.consultation, alertTests: [reacted], answers: { asthma: "yes" as const } },
  }
  expect(stopsWords(held, now)).toBe(
    "NOT CLEARED: 3 stops hold the mix. The alert test with House toner (invented) is not cleared.",
  )
})
