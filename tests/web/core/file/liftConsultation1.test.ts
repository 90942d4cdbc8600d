import { describe, expect, it } from "vitest"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"

/** A consultation as version 1 wrote it: yes and no without a day. */
const before = {
  hair: {},
  greyShare: null,
  liftToLevel: 9,
  finish: "cool",
  brightest: [],
  rootDistanceMm: null,
  rootMeltMm: null,
  upkeepWeeks: null,
  ageYears: 34,
  scalp: "calm",
  answers: { asthma: "yes", allergy: "no", chemotherapy: "no", recentRelaxer: "yes", expecting: "no" },
  alertTests: [
    {
      product: "House toner (invented)",
      place: "behind the ear",
      appliedAt: "2026-03-06T10:00:00Z",
      result: { outcome: "clear", readBy: "M.", readAt: "2026-03-08T10:30:00Z" },
      validUntil: null,
      changedSince: "no",
    },
  ],
  strandTests: [],
  passes: [{ rule: "asthma", reason: "doctor telephoned", by: "M." }],
}
const now = { moment: "2026-03-09T10:00:00Z", zone: "Europe/London" }

function lifted(consultation: object): Plan {
  const { service: _, ...plan } = JSON.parse(savePlan(examplePlan()))
  const opened = openPlan(JSON.stringify({ ...plan, version: 1, consultation }))
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  return opened.plan
}

describe("a consultation of version 1", () => {
  const { consultation: known } = lifted(before)

  it("keeps its answers, of which nobody knows the day: they are to be confirmed", () => {
    expect(known?.answers.asthma).toEqual({ said: "yes", on: null, visit: null })
    expect(known?.scalp).toEqual({ seen: "calm", on: null })
    const { state, notAsked } = clearanceOf(lifted({ ...before, answers: { expecting: "no" } }), now)
    expect(state).toBe("not-asked")
    expect(notAsked).toContainEqual({ code: "question", question: "expecting", before: null, isOld: true })
  })

  it("takes no for an answer only to what was asked in it: what asks for more now is not asked", () => {
    expect(known?.answers.chemotherapy).toBeUndefined() // radiotherapy is asked too
    expect(known?.answers.recentRelaxer?.said).toBe("yes")
    expect(known?.answers.medicines).toBeUndefined()
  })

  it("splits the allergy: no is no to both, yes stops and leaves dye to be asked", () => {
    expect([known?.answers.dyeAllergy?.said, known?.answers.otherAllergy?.said]).toEqual(["no", "no"])
    const { answers } = lifted({ ...before, answers: { allergy: "yes" } }).consultation ?? {}
    expect([answers?.dyeAllergy, answers?.otherAllergy?.said]).toEqual([undefined, "yes"])
  })

  it("stops still where it stopped, whatever reason was written over a doctor’s ground", () => {
    expect(clearanceOf(lifted(before), now).stops.map(({ rule }) => rule)).toContain("asthma")
  })

  it("counts no patch test of which nobody knows the visit", () => {
    expect(known?.alertTests[0]).toMatchObject({ visit: null, changedSince: { said: "no", on: null } })
  })
})
