import { describe, expect, it } from "vitest"
import { sheetOf } from "../../../web/plan/salon"
import type { StrandTest } from "../../../web/plan/timingChoices"
import { liftKnown, readyWith, testedMix } from "../../../web/service/liftOfPlan"
import { samplePlan } from "../plan/samples"

const [mix] = samplePlan.mixes
const sheet = sheetOf(mix.product, samplePlan) ?? undefined
const test: StrandTest = {
  product: mix.product,
  developerVolume: mix.developerVolume,
  startLevel: 6,
  rows: [{ minutes: 10, level: 7.5 }],
}
const goal = { fromLevel: 6, toLevel: 8 }

describe("what a strand test says of a mix", () => {
  it("moves the minutes of a fast strand forward, and narrows them", () => {
    const before = readyWith(mix, sheet, { goal, strandTest: null })
    const after = readyWith(mix, sheet, { goal, strandTest: test })
    expect(after.mid).toBeLessThan(before.mid)
    expect(after.high - after.low).toBeLessThan(before.high - before.low)
  })
  it("says nothing of another developer", () => {
    const other = { ...mix, developerVolume: 30 }
    expect(liftKnown(other, sheet, test)?.narrowed).toBeNull()
    expect(testedMix({ ...samplePlan, mixes: [other] }, test)).toBeNull()
    expect(testedMix(samplePlan, test)).toBe(mix)
  })
  it("is refused when it goes backwards, and the figures stay what they were", () => {
    const backwards = { ...test, rows: [...test.rows, { minutes: 20, level: 7 }] }
    const known = liftKnown(mix, sheet, backwards)
    expect(known?.narrowed).toMatchObject({ refused: expect.stringContaining("darker than level 7.5") })
    expect(readyWith(mix, sheet, { goal, strandTest: backwards })).toEqual(
      readyWith(mix, sheet, { goal, strandTest: null }),
    )
  })
  it("is nothing without a sheet", () =>
    expect(liftKnown({ ...mix, product: "Tub" }, undefined, test)).toBeNull())
})
