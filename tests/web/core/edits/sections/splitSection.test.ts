import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { stitchedShare } from "../../../../../geometry/section/pickedUp"
import { isFoil, type Section, type SectionKind } from "../../../../../geometry/section/section"
import { stitches } from "../../../../../geometry/section/sectionKinds"
import { mirrored } from "../../../../../geometry/surface/frames"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { changeSection } from "../../../../../web/core/edits/sections/changeSections"
import { mirrorSections } from "../../../../../web/core/edits/sections/mirrorSections"
import { foilsBeside, splitSection } from "../../../../../web/core/edits/sections/splitSection"
import { figuresOf, headOf, measured } from "../../../../../web/core/figures/measured"
import { done, emptyPlan, refusal } from "../../../../support/samples"

const narrow = { kind: "foil", widthMm: 40, lengthMm: 300 } as const

/** A tapered section on the right with a foil of 40 mm, and another section after it. */
function widePlan(kind: SectionKind, behindMm: number): Plan {
  const made = hairlineParting(headOf(emptyPlan), { fromAlongMm: 20, toAlongMm: 70, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  const wide = done(addSections(newSection(kind, made.parting, emptyPlan)), emptyPlan)
  const tapered = done(
    changeSection("s1", { band: { depthMm: { start: 3, end: 7 } }, treatment: { carrier: narrow } }),
    wide,
  )
  return done(addSections(newSection("slice", made.parting, tapered)), tapered)
}

/** Parts are woven each by itself, in whole stitches: one more or less in each, as a share of all that the whole one has. */
function stitchOfEach(whole: Section, parts: readonly Section[], plan: Plan): number {
  const { partingMm } = figuresOf(whole, plan)
  const laid = stitches(whole, partingMm)
  if (laid.length === 1) return 0
  const stitchMm = laid[0].toMm - laid[0].fromMm
  return (parts.length * stitchMm) / (stitchedShare(whole, partingMm) * partingMm)
}

describe.each(["slice", "weave", "backcomb"] as const)("a %s wider than its foil", (kind) => {
  it.each([12, 20, 35])(
    "%i mm behind the hairline is split into parts that need one foil each and meet the whole",
    (behindMm) => {
      const plan = widePlan(kind, behindMm)
      const [whole] = plan.sections
      const count = foilsBeside(whole, plan)
      expect(count).toBeGreaterThan(1)
      const after = done(splitSection("s1"), plan)
      const parts = after.sections.slice(0, -1)
      expect(parts.length).toBe(count)
      for (const part of parts) expect(foilsBeside(part, after)).toBe(1)
      const sum = (of: "areaCm2" | "partingMm" | "hairG") =>
        parts.reduce((total, part) => total + figuresOf(part, after)[of], 0)
      for (const field of ["areaCm2", "partingMm"] as const)
        expect(Math.abs(sum(field) / figuresOf(whole, plan)[field] - 1), field).toBeLessThan(0.005)
      expect(Math.abs(sum("hairG") / figuresOf(whole, plan).hairG - 1)).toBeLessThan(
        0.005 + stitchOfEach(whole, parts, plan),
      )
      expect(parts[0].depthMm.start).toBe(3)
      expect(parts.at(-1)?.depthMm.end).toBe(7)
    },
  )
})

describe("the parts", () => {
  const plan = widePlan("slice", 20)
  it("go on one after the other in the place of the whole, the first under its number, the others under new ones", () => {
    const { sections } = done(splitSection("s1"), plan)
    expect(sections.filter(isFoil).map(({ id, mapNumber }) => `${id}:${mapNumber}`)).toEqual([
      "s1:1",
      "s3:3",
      "s4:4",
      "s2:2",
    ])
  })
  it("take none of each other's hair", () => {
    const alone = { ...plan, sections: plan.sections.slice(0, 1) }
    expect(measured(done(splitSection("s1"), alone)).overlaps).toEqual([])
  })
  it("of a pair are pairs, side by side", () => {
    const paired = done(mirrorSections("s1"), plan)
    const { sections } = done(splitSection("s1"), paired)
    expect(sections.length).toBe(7)
    for (const section of sections.filter(({ id }) => id !== "s2")) {
      const twin = sections.find(({ id }) => id === section.twin)
      expect(twin?.parting).toEqual(section.parting.map(mirrored))
      expect(twin?.depthMm).toEqual(section.depthMm)
    }
  })
  it("are none where one foil is wide enough, nor on a board", () => {
    const split = done(splitSection("s1"), plan)
    expect(refusal(splitSection("s1"), split)).toBe("One foil is wide enough for this section.")
    const board = done(
      changeSection("s1", { treatment: { carrier: { kind: "board", widthMm: 90, lengthMm: 200 } } }),
      plan,
    )
    expect(foilsBeside(board.sections[0], board)).toBe(1)
  })
})
