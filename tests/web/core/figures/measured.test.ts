import { describe, expect, it } from "vitest"
import { setHair } from "../../../../web/core/edits/plan/setHair"
import { setHead } from "../../../../web/core/edits/plan/setHead"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { setPlanDetails } from "../../../../web/core/edits/plan/setPlanDetails"
import { changeSection } from "../../../../web/core/edits/sections/changeSections"
import { figuresOf, headOf, measured } from "../../../../web/core/figures/measured"
import type { TotalsFigures } from "../../../../web/core/figures/totals"
import { done, emptyPlan, samplePlan } from "../../../support/samples"

const figuresById = (plan = samplePlan) =>
  new Map(measured(plan).sections.map(({ section, figures }) => [section.id, figures]))

/** The sums of two totals are those of the whole. */
function expectSum(parts: readonly TotalsFigures[], whole: TotalsFigures) {
  const sum = (of: (totals: TotalsFigures) => number) => parts.reduce((total, part) => total + of(part), 0)
  expect(sum(({ foils }) => foils)).toBe(whole.foils)
  expect(sum(({ areaCm2 }) => areaCm2)).toBeCloseTo(whole.areaCm2, 9)
  expect(sum(({ hairs }) => hairs.high)).toBeCloseTo(whole.hairs.high, 6)
  expect(sum(({ productG }) => productG.low)).toBeCloseTo(whole.productG.low, 9)
}

describe("the totals of a plan", () => {
  const { sections, totals, byZone, byMix } = measured(
    done(changeSection("s2", { treatment: { mix: "B" } }), done(setMix({ ...samplePlan.mixes[0], id: "B" }))),
  )
  it("are the sums of its foils, without the hair left out and with none of it twice: foil 3 lies on foil 1", () => {
    const [one, two, three] = sections.map(({ figures, net }) => ({ figures, net }))
    expect(totals.hairG).toBeCloseTo(one.figures.hairG + two.figures.hairG + three.net.hairG, 9)
    expect(totals.areaCm2).toBeCloseTo(one.figures.areaCm2 + two.figures.areaCm2 + three.net.areaCm2, 9)
    expect(three.net.areaCm2).toBeCloseTo(three.figures.areaCm2 - one.figures.areaCm2, 1)
    expect(sections[3].figures.areaCm2).toBeGreaterThan(0)
  })
  it("are the sums of the zones and of the mixes", () => {
    expectSum([byZone.top, byZone.left, byZone.right, byZone.back], totals)
    expectSum([...byMix.values()], totals)
  })
  it("are nothing for a plan without foils", () => {
    expect(measured(emptyPlan).totals).toEqual({
      foils: 0,
      areaCm2: 0,
      hairs: { low: 0, mid: 0, high: 0 },
      hairG: 0,
      strandAreaCm2: 0,
      productG: { low: 0, mid: 0, high: 0 },
    })
  })
})

describe("what is remembered", () => {
  const before = figuresById()
  it("is one new section after one is changed", () => {
    const after = figuresById(done(changeSection("s2", { band: { depthMm: { start: 4, end: 8 } } })))
    expect(after.get("s1")).toBe(before.get("s1"))
    expect(after.get("s2")).not.toBe(before.get("s2"))
  })
  it("is all of it when only words changed, and none of it when the hair or the head did", () => {
    expect(figuresById(done(setPlanDetails({ name: "Halo" }))).get("s1")).toBe(before.get("s1"))
    expect(figuresById(done(setHair({ fibreUm: 80 }))).get("s1")).not.toBe(before.get("s1"))
    const longer = done(
      setHead({ size: { kind: "caliper", lengthMm: 197, breadthMm: 144.4, heightMm: 123.5 } }),
    )
    expect(figuresOf(longer.sections[0], longer).areaCm2).not.toBe(before.get("s1")?.areaCm2)
  })
  it("is the same head for the same size and hairline", () => {
    const { size, hairline } = samplePlan.head
    expect(headOf({ head: { size: { ...size }, hairline: { ...hairline } } })).toBe(headOf(samplePlan))
    expect(headOf({ head: { size, hairline: { form: "peaked" } } })).not.toBe(headOf(samplePlan))
  })
})

describe("thicker hair", () => {
  it("weighs as the square of the fibre: 80 against 70 µm is 64 to 49", () => {
    const thick = figuresById(done(setHair({ fibreUm: 80 }))).get("s1")
    const usual = figuresById().get("s1")
    expect(Number(thick?.hairG) / Number(usual?.hairG)).toBeCloseTo(64 / 49, 9)
  })
})
