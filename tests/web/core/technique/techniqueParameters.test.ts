import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../geometry/parting/parting"
import { isFoil } from "../../../../geometry/section/section"
import { type Technique, type TechniqueValues, usualValues } from "../../../../presets/techniques/technique"
import { houseTechniques } from "../../../../presets/techniques/techniques"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { layTechnique, techniqueSections } from "../../../../web/core/edits/lay/layTechnique"
import { stackBehind } from "../../../../web/core/edits/lay/stackBehind"
import { mirrorSections } from "../../../../web/core/edits/sections/mirrorSections"
import { headOf } from "../../../../web/core/figures/measured"
import { overlapsIn } from "../../../../web/core/figures/overlaps"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { checkTechnique } from "../../../../web/core/file/techniqueFile"
import { captureSections } from "../../../../web/core/technique/captureTechnique"
import { techniqueParameters } from "../../../../web/core/technique/techniqueParameters"
import { done, emptyPlan } from "../../../support/samples"
import { usualTechnique, usualTechniques } from "../../../support/techniques"

const own = (plan: Plan): Technique => ({
  ...{ id: "own", name: "Own", aim: "", notes: "", steps: ["Part."] },
  sections: captureSections(plan.sections, headOf(plan)),
})

/** Four slices of 3 mm with 4 mm between, parted 6 mm behind the hairline, on both sides. */
function rowsOfFour(): Plan {
  const made = hairlineParting(headOf(emptyPlan), { fromAlongMm: 20, toAlongMm: 75, behindMm: 6 })
  if ("refused" in made) throw new Error(made.refused)
  const first = newSection("slice", made.parting, emptyPlan)
  const pair = done(mirrorSections(first.id), { ...emptyPlan, sections: [first] })
  const wish = { follow: "hairline", gapMm: 4, shiftMm: 0, depthMm: first.depthMm, second: null } as const
  return done(stackBehind(first.id, wish, 3), pair)
}

const stack = own(rowsOfFour())
const preset = techniqueParameters(stack)
/** A technique of one’s own with other measures. */
const varied = (technique: Technique, values: TechniqueValues): Technique => ({
  ...technique,
  sections: techniqueParameters(technique).shape(values).sections,
})
const usual = usualValues(preset)
const laid = (technique: Technique) => techniqueSections(technique, emptyPlan)
const behindOf = (technique: Technique) => {
  const { hairline } = headOf(emptyPlan)
  return laid(technique)
    .map(({ parting }) => hairline.coordinates(parting[parting.length >> 1]).behindMm)
    .toSorted((a, b) => a - b)
}

describe("a stack saved as a technique of one's own", () => {
  it("has its depth, its gap and its count to vary", () => {
    expect(preset.parameters).toMatchObject({
      depthMm: { label: "slice-depth", value: 3 },
      gapMm: { value: 4 },
      count: { value: 4 },
    })
    expect(preset.parameters.stitch).toBeUndefined()
  })

  it("is what it was at its own measures", () => {
    expect(varied(stack, usual).sections).toEqual(stack.sections)
  })

  it("goes farther back the deeper each is, taking no hair twice", () => {
    const deeper = varied(stack, { ...usual, depthMm: 5 })
    // Parted 6, 13, 20, 27 mm behind; 2 mm deeper each: 2, 4, 6, 8 mm farther.
    for (const [i, mm] of [8, 8, 17, 17, 26, 26, 35, 35].entries())
      expect(Math.abs(behindOf(deeper)[i] - mm)).toBeLessThan(1)
    expect(laid(deeper).every(({ depthMm }) => depthMm.start === 5 && depthMm.end === 5)).toBe(true)
    expect(overlapsIn(laid(deeper), headOf(emptyPlan))).toEqual([])
  })

  it("leaves more hair between, from the second row on", () => {
    const wider = varied(stack, { ...usual, gapMm: 6 })
    for (const [i, mm] of [6, 6, 15, 15, 24, 24, 33, 33].entries())
      expect(Math.abs(behindOf(wider)[i] - mm)).toBeLessThan(1)
  })

  it("has more rows or fewer, each a pair, and stays a technique the door takes", () => {
    const six = varied(stack, { ...usual, count: 6 })
    expect(behindOf(six)).toHaveLength(12)
    expect(Math.abs(behindOf(six)[11] - 41)).toBeLessThan(1)
    expect(laid(six).every(({ twin }) => twin)).toBe(true)
    expect(checkTechnique(six).ok).toBe(true)
    const two = varied(stack, { ...usual, count: 2 })
    expect(laid(two)).toHaveLength(4)
    expect(checkTechnique(two).ok).toBe(true)
  })
})

describe("a technique of the house kept as one's own", () => {
  const partial = houseTechniques["partial-weave"]
  const kept = techniqueParameters(usualTechnique("partial-weave"))

  it("has the measures it had", () => {
    const { depthMm, gapMm, count, stitch } = partial.parameters
    expect(kept.parameters).toMatchObject({
      depthMm: { value: depthMm?.value },
      gapMm: { value: gapMm?.value },
      count: { value: count?.value },
      stitch,
    })
  })

  it("makes of them the same sections as the house does", () => {
    const values = { depthMm: 7, gapMm: 5, count: 4, stitch: "chunky", way: "only" } as const
    expect(kept.shape(values).sections).toEqual(partial.shape(values).sections)
    const more = { depthMm: 6, gapMm: 4, count: 6, stitch: "fine", way: "only" } as const
    expect(kept.shape(more).sections).toEqual(partial.shape(more).sections)
  })

  it.each(usualTechniques)("is what it was at its own measures: $name", (technique) => {
    const again = techniqueParameters(technique)
    expect(again.shape(usualValues(again)).sections).toEqual(technique.sections)
  })
})

it("is what it was at its own measures: the example, with kinds and sides of every sort", () => {
  const example = own(examplePlan())
  const again = techniqueParameters(example)
  expect(again.shape(usualValues(again)).sections).toEqual(example.sections)
})

it("can be laid and kept at every end of its measures", () => {
  for (const house of usualTechniques) {
    const again = techniqueParameters(house)
    for (const end of [0, 1] as const) {
      const { depthMm, gapMm, count } = again.parameters
      const values = {
        depthMm: depthMm?.range[end] ?? 0,
        gapMm: gapMm?.range[end] ?? 0,
        count: count?.range[end] ?? 0,
        stitch: "chunky",
        way: "only",
      } as const
      const technique = varied(house, values)
      expect(checkTechnique(technique)).toMatchObject({ ok: true })
      expect(done(layTechnique(technique), emptyPlan).sections.filter(isFoil).length).toBeGreaterThan(0)
    }
  }
})
