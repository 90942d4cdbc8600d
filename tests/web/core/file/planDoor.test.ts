import { describe, expect, it } from "vitest"
import { lineProblems } from "../../../../web/core/checks/partingProblems"
import { type Consultation, newConsultation } from "../../../../web/core/document/consultation"
import { openPlan, savePlan, writePlan } from "../../../../web/core/file/planFile"
import { withoutHealth } from "../../../../web/core/file/withoutHealth"
import { processorMs } from "../../../support/processorMs"
import { samplePlan } from "../../../support/samples"

const service = {
  startedAt: "2026-03-09T10:00:00.000Z",
  foils: [],
  log: [],
  clockNotes: [],
}

describe("the door of a plan", () => {
  it("lets no moment in that is none: it would throw wherever it is shown", () => {
    const plan = { ...JSON.parse(savePlan(samplePlan)), service }
    expect(openPlan(JSON.stringify(plan)).ok).toBe(true)
    for (const startedAt of ["yesterday", "", "2026-13-40T10:00:00Z", "+275760-09-13T00:00:00Z"]) {
      const opened = openPlan(JSON.stringify({ ...plan, service: { ...service, startedAt } }))
      expect(!opened.ok && opened.problems.map(({ path, code }) => [path, code])).toEqual([
        ["service.startedAt", "moment"],
      ])
    }
  })

  it("lets no parting in that is a single place", () => {
    const [first, ...rest] = samplePlan.sections
    const dot = { ...first, parting: [first.parting[0], first.parting[0]] }
    const opened = openPlan(JSON.stringify({ ...samplePlan, sections: [dot, ...rest] }), lineProblems)
    expect(!opened.ok && opened.problems[0]).toMatchObject({
      path: "sections[0].parting",
      code: "line-too-short",
    })
  })

  it("counts no letters of a text that is far too long: 100 MB of it are refused at once", async () => {
    const spent = await processorMs(() => {
      const written = writePlan({ ...samplePlan, name: "é".repeat(100_000) })
      expect(!written.ok && written.problem).toMatchObject({ path: "name", code: "line" })
      const opened = openPlan(JSON.stringify({ ...samplePlan, name: "👩‍🦰".repeat(400_000) }))
      expect(opened.ok).toBe(false)
    })
    expect(spent).toBeLessThan(1000)
  })

  it("is asked before a plan is written", () => {
    expect(writePlan(samplePlan)).toEqual({ ok: true, text: savePlan(samplePlan) })
    const twice = { ...samplePlan, sections: [samplePlan.sections[0], samplePlan.sections[0]] }
    expect(writePlan(twice)).toMatchObject({ ok: false, problem: { code: "taken" } })
  })
})

describe("a plan for a colleague", () => {
  const consultation: Consultation = {
    ...newConsultation(),
    liftToLevel: 8,
    ageYears: 34,
    scalp: { seen: "irritated", on: "2026-03-09" },
    answers: { asthma: { said: "yes", on: null, visit: null } },
    otherAllergy: { which: "latex", when: "", how: "" },
    passes: [{ rule: "asthma", reason: "asked the doctor", by: "Ana" }],
  }

  it("holds the drawing and the goal, and nothing the client said of health", () => {
    const given = withoutHealth({ ...samplePlan, consultation })
    const text = savePlan(given)
    expect(openPlan(text, () => []).ok).toBe(true)
    expect(given.consultation?.liftToLevel).toBe(8)
    expect(given.sections).toBe(samplePlan.sections)
    for (const secret of [
      "asthma",
      "doctor",
      "irritated",
      "34,",
      "nickel",
      "2019",
      "Dr A.",
      "past-reaction",
      "Ana",
    ])
      expect(text).not.toContain(secret)
  })
})
