import { describe, expect, it } from "vitest"
import { usualValues } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"
import { newPlan } from "../../../web/core/document/newPlan"
import type { Plan } from "../../../web/core/document/schema"
import { layTechnique } from "../../../web/core/edits/lay/layTechnique"
import { setLesson } from "../../../web/core/edits/plan/setLesson"
import { checkLesson } from "../../../web/core/file/lessonDoor"
import { openPlan, savePlan } from "../../../web/core/file/planFile"
import { laidFrom } from "../../../web/core/technique/techniqueChoices"
import { houseTechnique } from "../../../web/words/every/houseTechnique"
import { loadWords } from "../../../web/words/every/languages"
import { lessonWords } from "../../../web/words/every/lessonWords"
import { en } from "../../support/words"

const blank = newPlan(new Date(2026, 2, 9))
const house = techniques[0]
const values = { ...usualValues(house), gapMm: 5 }
const varied = houseTechnique(house, en.techniques, values)
const own = {
  ...varied,
  name: "Soft veil for class 2B",
  aim: "A veil of light.",
  notes: "Work in pairs.",
  steps: ["Comb the hair forward.", "Slice 3 mm."],
}

const edited = (plan: Plan, edit: ReturnType<typeof layTechnique>): Plan => {
  const next = edit(plan)
  if ("refused" in next) throw new Error(next.refused.code)
  return next
}
const laid = edited(blank, layTechnique(varied, laidFrom({ technique: varied, house }, values)))
const laidOwn = edited(blank, layTechnique(own, laidFrom({ technique: own, house: null })))

describe("what a class reads of a plan", () => {
  it("is the technique it was laid from, with the measures it was laid with", () => {
    const said = lessonWords(laid, en)
    expect(said.title).toBe(varied.name)
    expect(said.aim).toBe(`${varied.aim} ${varied.notes}`)
    expect(said.steps).toEqual(varied.steps)
    expect(said.steps.join(" ")).toContain("Leave 5 mm")
  })
  it("is told in the language of the sheet when the technique is one of the house", async () => {
    const german = await loadWords("de")
    expect(lessonWords(laid, german).steps).toEqual(houseTechnique(house, german.techniques, values).steps)
  })
  it("is the salon's own name, aim, notes and steps as they were written", () => {
    const said = lessonWords(laidOwn, en)
    expect(said).toMatchObject({
      title: "Soft veil for class 2B",
      aim: "A veil of light. Work in pairs.",
      steps: own.steps,
    })
  })
  it("stays when a section is moved or changed, and goes with the last of its sections", () => {
    const thinner = { ...laidOwn, sections: laidOwn.sections.slice(1) }
    expect(lessonWords(thinner, en).title).toBe("Soft veil for class 2B")
    const gone = lessonWords({ ...laidOwn, sections: [] }, en)
    expect([gone.title, gone.steps]).toEqual(["", []])
    expect(gone.aim).toBe("Nothing is drawn yet.")
  })
  it("names both where one technique was laid over another", () => {
    const both = edited(laid, layTechnique(own, laidFrom({ technique: own, house: null })))
    expect(lessonWords(both, en).title).toBe(`${varied.name} + Soft veil for class 2B`)
    expect(lessonWords(both, en).steps).toEqual([...varied.steps, ...own.steps])
  })
  it("is the plan's own name and what can be told from the drawing where nothing was laid", () => {
    const { lesson: _, ...drawn } = { ...laidOwn, name: "Mock exam", sections: laidOwn.sections.slice(1) }
    const said = lessonWords(drawn, en)
    expect([said.title, said.steps]).toEqual(["Mock exam", []])
    expect(said.aim).toContain("Brighten")
  })
  it("gives way to what the educator wrote, word by word, and comes back without it", () => {
    const faults = [{ fault: "Stripe", cause: "Too deep", cure: "Part finer" }]
    const written = edited(laidOwn, setLesson({ title: "Day 3", steps: ["Watch first."], faults, tools: [] }))
    const said = lessonWords(written, en)
    expect(said).toMatchObject({ title: "Day 3", steps: ["Watch first."], faults, tools: [] })
    expect(said.aim).toBe("A veil of light. Work in pairs.")
    expect(lessonWords(edited(written, setLesson({})), en)).toEqual(lessonWords(laidOwn, en))
  })
  it("says nothing of a technique of the house that this Partline does not know", () => {
    const { sections } = laid
    const [{ id }] = sections
    const lesson = { laid: [{ source: { house: "yet-to-come", values }, sections: [id] }] }
    expect(
      lessonWords({ ...laid, sections: sections.slice(1).concat(sections[0]), lesson }, en).steps,
    ).toEqual([])
  })
})

describe("what a plan keeps of it", () => {
  it("comes back from a file", () => {
    const written = edited(laidOwn, setLesson({ aim: "First line.\nSecond line.", checks: ["Sides match"] }))
    for (const plan of [laid, written]) {
      const opened = openPlan(savePlan(plan))
      expect(opened.ok && opened.plan.lesson).toEqual(plan.lesson)
    }
  })
  it("is refused with the field and the cure", () => {
    const long = checkLesson({ steps: ["x".repeat(501)] })
    expect(long.ok ? [] : long.problems.map(({ path, code }) => [path, code])).toEqual([["steps[0]", "line"]])
    const many = checkLesson({ checks: Array.from({ length: 41 }, () => "Look") })
    expect(many.ok ? [] : many.problems.map(({ path, code }) => [path, code])).toEqual([["checks", "list"]])
  })
})
