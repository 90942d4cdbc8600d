import { describe, expect, it } from "vitest"
import { distance } from "../../../../geometry/surface/vec3"
import type { Technique } from "../../../../presets/techniques/technique"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique, techniqueSections } from "../../../../web/core/edits/lay/layTechnique"
import { mirrorSections } from "../../../../web/core/edits/sections/mirrorSections"
import { headOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openTechnique, saveTechnique } from "../../../../web/core/file/techniqueFile"
import { fragmentOf, readFragment } from "../../../../web/core/file/techniqueLink"
import { draftStepsOf } from "../../../../web/core/placement/draftStep"
import { captureSections } from "../../../../web/core/technique/captureTechnique"
import { done, samplePlan } from "../../../support/samples"
import { en } from "../../../support/words"

const captured = (plan: Plan): Technique => ({
  id: "own",
  name: "Own",
  aim: "",
  notes: "",
  steps: draftStepsOf(plan.sections, headOf(plan)).map(en.techniques.draft),
  sections: captureSections(plan.sections, headOf(plan)),
})

const emptied = (plan: Plan): Plan => ({ ...plan, sections: [] })

describe.each([
  ["one section a kind", samplePlan],
  ["the example", examplePlan()],
  ["a pair among others", done(mirrorSections("s1", "s4"), samplePlan)],
])("sections saved as a technique: %s", (_, plan) => {
  const opened = openTechnique(saveTechnique(captured(plan)))
  if (!opened.ok) throw new Error(en.problems.sentence(opened.problems[0]))
  const laid = techniqueSections(opened.technique, emptied(plan))

  it("lie on their own head where they were, to 0.01 mm", () => {
    const { surface } = headOf(plan)
    expect(laid.length).toBe(plan.sections.length)
    laid.forEach(({ parting }, i) => {
      expect(parting.length).toBe(plan.sections[i].parting.length)
      parting.forEach((at, j) => {
        const was = plan.sections[i].parting[j]
        expect(distance(surface.pointAt(at), surface.pointAt(was))).toBeLessThan(0.01)
      })
    })
  })

  it("are taken up, held and coated as they were", () => {
    const rest = ({ parting: _, id: __, twin: ___, ...section }: Plan["sections"][number]) => ({
      ...section,
      note: "",
      mapNumber: 0,
      mix: "A",
    })
    expect(laid.map(rest)).toEqual(plan.sections.map(rest))
  })

  it("are the pairs they were", () => {
    const places = ({ sections }: Pick<Plan, "sections">) =>
      sections.map(({ twin }) => sections.findIndex(({ id }) => id === twin))
    expect(places({ sections: laid })).toEqual(places(plan))
  })

  it("can be laid on every form of hairline", () => {
    for (const form of ["round", "straight", "receding", "peaked"] as const) {
      const other = { ...emptied(plan), head: { ...plan.head, hairline: { form } } }
      expect(done(layTechnique(opened.technique), other).sections.length).toBe(plan.sections.length)
    }
  })
})

it("keeps a pair through a link, and lets go of one of which only half was taken", async () => {
  const paired = done(mirrorSections("s1"), samplePlan)
  const read = await readFragment((await fragmentOf(captured(paired))) ?? "")
  expect(read).toMatchObject({ ok: true, technique: { sections: [{ pair: 1 }, {}, {}, {}, { pair: 1 }] } })
  const [half] = captureSections(paired.sections.slice(0, 2), headOf(paired))
  expect(half).not.toHaveProperty("pair")
  expect(saveTechnique(captured(samplePlan))).not.toContain("pair")
})

it("takes nothing of the client along", () => {
  const told = {
    ...samplePlan,
    client: { initials: "QZ" },
    sections: samplePlan.sections.map((section) => ({ ...section, note: "QZ is allergic" })),
  }
  expect(saveTechnique(captured(told))).not.toMatch(/QZ|allergic/)
})

it("begins the steps in words, one a section", () => {
  const steps = draftStepsOf(samplePlan.sections, headOf(samplePlan)).map(en.techniques.draft)
  expect(steps.length).toBe(samplePlan.sections.length)
  for (const step of steps) expect(step).toMatch(/^Part .* long.*\. (Take|Weave|Leave) .*\.$/)
})
