import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { kindOf } from "../../../../geometry/section/sectionKinds"
import { newSection } from "../../../../web/core/document/newSection"
import { layTechnique } from "../../../../web/core/edits/lay/layTechnique"
import { asKind } from "../../../../web/core/edits/sections/changeKind"
import { patched } from "../../../../web/core/edits/sections/changeSections"
import { figuresOf, headOf } from "../../../../web/core/figures/measured"
import { openPlan, roundPlan, savePlan } from "../../../../web/core/file/planFile"
import {
  kindRecords,
  pieceOf,
  sectionKindNames,
  traitsOf,
  valuesOf,
} from "../../../../web/core/kinds/kindRecords"
import { captureSections } from "../../../../web/core/technique/captureTechnique"
import { kindMarks } from "../../../../web/drawing/toolMarks"
import { done, emptyPlan, rightParting } from "../../../support/samples"

const planOf = (kind: (typeof sectionKindNames)[number]) => ({
  ...emptyPlan,
  sections: [newSection(kind, rightParting, emptyPlan)],
})

describe.each(sectionKindNames)("a section of the kind %s", (kind) => {
  const plan = planOf(kind)
  const [section] = plan.sections

  it("is written to a file and read back as it was", () => {
    const read = openPlan(savePlan(plan))
    expect(read.ok && read.plan.sections).toEqual(roundPlan(plan).sections)
  })

  it("takes the values that it has, and passes over those of other kinds", () => {
    const all = Object.assign({}, ...sectionKindNames.map((each) => valuesOf(planOf(each).sections[0])))
    const taken = patched(section, all)
    expect(Object.keys(taken).toSorted()).toEqual(Object.keys(section).toSorted())
    const own = Object.keys(valuesOf(section))
    expect(valuesOf(taken)).toEqual(Object.fromEntries(own.map((group) => [group, all[group]])))
  })

  it("is captured as a technique and laid again as it was", () => {
    const laid = done(
      layTechnique({ name: "One", sections: captureSections(plan.sections, headOf(plan)) }),
      emptyPlan,
    ).sections[0]
    expect(laid.kind).toBe(kind)
    expect(valuesOf(laid)).toEqual(valuesOf(section))
    if (isFoil(laid) && isFoil(section)) expect(laid.carrier).toEqual(section.carrier)
  })

  it("has finite figures and marks of its own", () => {
    const { productG, hairG } = figuresOf(section, plan)
    expect([productG.low, productG.high, hairG].every(Number.isFinite)).toBe(true)
    expect(productG.high > 0).toBe(isFoil(section))
    expect(kindMarks(kind, plan).length).toBeGreaterThan(0)
  })

  it("lies in what its kind allows", () => {
    if (!isFoil(section)) return
    expect(traitsOf(section).carriers).toContain(section.carrier.kind)
    for (const other of sectionKindNames) {
      const made = asKind(section, other, plan)
      if (isFoil(made)) expect(traitsOf(made).carriers).toContain(made.carrier.kind)
    }
  })
})

it("gives every kind a key and marks of its own", () => {
  const keys = sectionKindNames.map((kind) => kindRecords[kind].key)
  expect(new Set(keys).size).toBe(keys.length)
  const drawn = sectionKindNames.map((kind) => JSON.stringify(kindMarks(kind, emptyPlan)))
  expect(new Set(drawn).size).toBe(drawn.length)
})

describe("a painted panel", () => {
  const [panel] = planOf("painted").sections
  if (!isFoil(panel)) throw new Error("a panel is coated")

  it("lies in the open air, painted on one side, and uses no foil", () => {
    expect(panel.carrier.kind).toBe("open-air")
    expect(panel.faces).toBe(1)
    expect(figuresOf(panel, planOf("painted")).foils).toBe(0)
  })

  it("becomes a slice in foil, coated on both sides from the root, and keeps its number and mix", () => {
    const slice = asKind({ ...panel, mix: "A", mapNumber: 7 }, "slice", emptyPlan)
    expect(slice).toMatchObject({
      kind: "slice",
      faces: 2,
      mapNumber: 7,
      carrier: { kind: "foil" },
      strand: { from: 0, to: 1 },
    })
    expect(slice).not.toHaveProperty("painting")
  })

  it("starts at its edge, no nearer to the scalp than product does", () => {
    const row = kindOf(panel)
    expect(row.startShare(panel, 0)).toBeLessThan(row.startShare(panel, 0.5))
    expect(row.productStartMm(panel)).toBe(panel.rootDistanceMm)
  })

  it("is called a panel; with foils beside it, both", () => {
    expect(pieceOf([])).toBe("foil")
    expect(pieceOf([panel])).toBe("panel")
    expect(pieceOf([panel, { kind: "weave" }])).toBe("both")
    expect(pieceOf([{}])).toBe("foil")
  })
})
