import { describe, expect, it } from "vitest"
import { isFoil, type Section } from "../../../../../geometry/section/section"
import { mirrored, surfacePoint } from "../../../../../geometry/surface/frames"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { breakPairs } from "../../../../../web/core/edits/sections/breakPairs"
import { changeSection, changeSections } from "../../../../../web/core/edits/sections/changeSections"
import { mirrorSections } from "../../../../../web/core/edits/sections/mirrorSections"
import { removeSections } from "../../../../../web/core/edits/sections/removeSections"
import { renameSection } from "../../../../../web/core/edits/sections/renameSection"
import { renumberSections, setMapNumber } from "../../../../../web/core/edits/sections/renumberSections"
import { placeBeside, reorderSection } from "../../../../../web/core/edits/sections/reorderSection"
import { thickenSections } from "../../../../../web/core/edits/sections/thickenSections"
import { savePlan } from "../../../../../web/core/file/planFile"
import { crownParting, done, emptyPlan, refusal, rightParting, samplePlan } from "../../../../support/samples"

const ids = (plan: Plan) => plan.sections.map(({ id }) => id)
const numbers = (plan: Plan) => plan.sections.filter(isFoil).map(({ id, mapNumber }) => `${id}:${mapNumber}`)
const sectionOf = (plan: Plan, id: string): Section => {
  const section = plan.sections.find((each) => each.id === id)
  if (!section) throw new Error(`no section ${id}`)
  return section
}

describe("adding", () => {
  it("puts sections at the end and keeps the others the same objects", () => {
    const section = newSection("slice", rightParting, samplePlan)
    const plan = done(addSections(section))
    expect(ids(plan)).toEqual(["s1", "s2", "s3", "s4", "s5"])
    expect(plan.sections[4]).toBe(section)
    expect(plan.sections[0]).toBe(samplePlan.sections[0])
    expect(section.mapNumber).toBe(4)
  })
  it("is refused outside the hairline, with the foil and the reason", () => {
    const onTheFace = [surfacePoint(-0.1, 1.9), surfacePoint(0.2, 2)]
    expect(refusal(addSections(newSection("weave", onTheFace, samplePlan)))).toBe(
      "Foil 4: expected a place inside the hairline, found one outside it.",
    )
  })
  it("is refused with an id that is there", () => {
    expect(refusal(addSections(samplePlan.sections[0]))).toMatch(/^Section 5, id: expected one of its own/)
  })
})

describe("changing", () => {
  it("gives each section what its kind has, and touches no other", () => {
    const plan = done(
      changeSections(["s1", "s2", "s4"], {
        band: { taken: "behind" },
        treatment: { rootDistanceMm: 11 },
        stitching: { gapMm: 7 },
      }),
    )
    expect(sectionOf(plan, "s1")).toEqual({
      ...sectionOf(samplePlan, "s1"),
      taken: "behind",
      rootDistanceMm: 11,
    })
    expect(sectionOf(plan, "s2")).toEqual({
      ...sectionOf(samplePlan, "s2"),
      taken: "behind",
      rootDistanceMm: 11,
      gapMm: 7,
    })
    expect(sectionOf(plan, "s3")).toBe(sectionOf(samplePlan, "s3"))
    expect(sectionOf(plan, "s4")).toEqual({ ...sectionOf(samplePlan, "s4"), taken: "behind" })
  })
  it("is refused past what a plan can hold", () => {
    expect(refusal(changeSection("s3", { backcombing: { pushedShare: 0.99 } }))).toBe(
      "Foil 3: share backcombed: expected 0 to 0.95, found 0.99.",
    )
    expect(refusal(changeSection("s1", { treatment: { mix: "Q" } }))).toMatch(
      /mix: expected one of the mixes/,
    )
  })
  it("makes sections thicker and thinner as far as it goes", () => {
    const thicker = done(thickenSections(["s1"], 2.5))
    expect(sectionOf(thicker, "s1").depthMm).toEqual({ start: 5.5, end: 5.5 })
    const thinnest = done(thickenSections(["s1"], -10))
    expect(sectionOf(thinnest, "s1").depthMm).toEqual({ start: 0.5, end: 0.5 })
  })
})

describe("order and numbers", () => {
  it("are two things: moving in the order leaves the numbers", () => {
    const plan = done(reorderSection("s3", 0))
    expect(numbers(plan)).toEqual(["s3:3", "s1:1", "s2:2"])
  })
  it("stop at the ends, and do nothing when nothing moves", () => {
    expect(ids(done(reorderSection("s1", 99)))).toEqual(["s2", "s3", "s4", "s1"])
    expect(done(reorderSection("s2", 1))).toBe(samplePlan)
    expect(done(reorderSection("nobody", 1))).toBe(samplePlan)
  })
  it("meet again when the foils are numbered in their order", () => {
    expect(numbers(done(renumberSections, done(reorderSection("s3", 0))))).toEqual(["s3:1", "s1:2", "s2:3"])
  })
  it("swap numbers with the foil that has it", () => {
    expect(numbers(done(setMapNumber("s1", 3)))).toEqual(["s1:3", "s2:2", "s3:1"])
    expect(numbers(done(setMapNumber("s1", 12)))).toEqual(["s1:12", "s2:2", "s3:3"])
  })
})

describe("removing", () => {
  it("leaves the numbers of the others", () => {
    expect(numbers(done(removeSections("s1", "s4")))).toEqual(["s2:2", "s3:3"])
  })
})

describe("mirroring", () => {
  const tapered = done(changeSection("s1", { band: { depthMm: { start: 2, end: 9 } } }))
  const plan = done(mirrorSections("s3", "s1"), tapered)
  it("adds the other side after all others, in their order, with ids and numbers of its own", () => {
    expect(ids(plan)).toEqual(["s1", "s2", "s3", "s4", "s5", "s6"])
    expect(numbers(plan).slice(3)).toEqual(["s5:4", "s6:5"])
  })
  it("keeps each end's depth with its end", () => {
    const [original, copy] = [sectionOf(plan, "s1"), sectionOf(plan, "s5")]
    expect(copy.parting).toEqual(original.parting.map(mirrored))
    expect(copy.depthMm).toEqual({ start: 2, end: 9 })
  })
  it("of the mirror image is the original again, once the pair is broken", () => {
    const again = done(mirrorSections("s5"), done(breakPairs("s5"), plan))
    expect(sectionOf(again, "s7").parting).toEqual(sectionOf(plan, "s1").parting)
  })
  it("mirrors hair left out too", () => {
    const left = done(mirrorSections("s4"))
    expect(sectionOf(left, "s5")).toMatchObject({ kind: "left-out", name: "Veil" })
  })
})

describe("a new section", () => {
  it("has an id and a number above all in use", () => {
    const plan = done(removeSections("s2"), done(setMapNumber("s1", 30)))
    expect(newSection("slice", crownParting, plan)).toMatchObject({ id: "s5", mapNumber: 31 })
    expect(newSection("slice", crownParting, emptyPlan)).toMatchObject({ id: "s1", mapNumber: 1, mix: "A" })
  })
})

describe("placing beside", () => {
  it("puts one or several before or after another, in the order they are in", () => {
    expect(ids(done(placeBeside(["s4"], "s2", "before")))).toEqual(["s1", "s4", "s2", "s3"])
    expect(ids(done(placeBeside(["s3", "s1"], "s4", "after")))).toEqual(["s2", "s4", "s1", "s3"])
  })
  it("leaves the numbers on the map, and the plan itself when nothing moves", () => {
    expect(numbers(done(placeBeside(["s1"], "s3", "after")))).toEqual(["s2:2", "s3:3", "s1:1"])
    expect(done(placeBeside(["s2"], "s1", "after"))).toBe(samplePlan)
    expect(done(placeBeside(["s1"], "nobody", "after"))).toBe(samplePlan)
  })
})

describe("renaming", () => {
  it("gives a foil a name or takes it, and hair left out another", () => {
    const named = done(renameSection("s1", "Money piece"))
    expect(sectionOf(named, "s1")).toMatchObject({ name: "Money piece", mapNumber: 1 })
    expect(savePlan(done(renameSection("s1", "  "), named))).toBe(savePlan(samplePlan))
    expect(sectionOf(done(renameSection("s4", "Fringe")), "s4")).toMatchObject({ name: "Fringe" })
  })
  it("is refused past what a line holds", () => {
    expect(refusal(renameSection("s1", "x".repeat(81)))).toMatch(
      /^Foil 1: name: expected one line of at most 80/,
    )
  })
})
