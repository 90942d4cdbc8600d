import { describe, expect, it } from "vitest"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import { publicStops } from "../../../../web/core/cautions/publicStops"
import type { Plan } from "../../../../web/core/document/schema"
import { answerQuestions } from "../../../../web/core/edits/plan/answerQuestions"
import { recordConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { withoutHealth } from "../../../../web/core/file/withoutHealth"
import { done, emptyPlan } from "../../../support/samples"

const now = { moment: "2026-03-09T10:00:00Z", zone: "Europe/London" }
const nickel = { kind: "other", to: "nickel", since: "2019" } as const
const plan: Plan = { ...emptyPlan, client: { initials: "AB", allergies: [nickel] } }
const stopsOf = (each: Plan) => clearanceOf(each, now).stops.map(({ rule }) => rule)

describe("an allergy that stands on the card", () => {
  it("holds the plan before anything is asked, and is no answer of today", () => {
    expect(stopsOf(plan)).toContain("card-allergy")
    const open = clearanceOf(plan, now).notAsked
    expect(open).toContainEqual({ code: "question", question: "otherAllergy", before: null, isOld: false })
  })

  it("is not taken back by a no of today", () => {
    expect(stopsOf(done(answerQuestions(["otherAllergy"], "no", now), plan))).toContain("card-allergy")
  })

  it("is held by today's answer once that names it", () => {
    const said = done(answerQuestions(["otherAllergy"], "yes", now), plan)
    expect(stopsOf(said)).toEqual(expect.arrayContaining(["allergy", "card-allergy"]))
    const named = done(
      recordConsultation({ otherAllergy: { which: "Nickel, latex", when: "", how: "" } }, now),
      said,
    )
    expect(stopsOf(named)).toContain("allergy")
    expect(stopsOf(named)).not.toContain("card-allergy")
  })

  it("that nobody knows the kind of is held like hair dye", () => {
    const unknown: Plan = { ...plan, client: { initials: "", allergies: [{ ...nickel, kind: "not-known" }] } }
    expect(clearanceOf(unknown, now).stops.find(({ rule }) => rule === "card-dye-allergy")?.passable).toBe(
      false,
    )
    const said = done(answerQuestions(["dyeAllergy"], "yes", now), unknown)
    expect(stopsOf(said)).toContain("dye-allergy")
    expect(stopsOf(said)).not.toContain("card-dye-allergy")
  })

  it("stays in the plan's file, out of the colleague's, and unnamed on what hangs on the wall", () => {
    expect(openPlan(savePlan(plan))).toEqual({ ok: true, plan })
    expect(savePlan(withoutHealth(plan))).not.toContain("nickel")
    expect(JSON.stringify(publicStops(plan, now))).not.toContain("nickel")
  })
})
