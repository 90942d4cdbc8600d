import { describe, expect, it } from "vitest"
import { sheetOf } from "../../../../web/core/document/salon"
import type { StrandTest } from "../../../../web/core/document/timingChoices"
import { liftKnown, readyWith, testedMix } from "../../../../web/core/lift/liftOfPlan"
import { samplePlan } from "../../../support/samples"

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
  it("tells of another developer through the hair: a fast strand is fast there too, and the range narrows", () => {
    const stronger = { ...mix, developerVolume: 30 }
    const weaker = { ...mix, developerVolume: 10 }
    expect(liftKnown(stronger, sheet, test)).toMatchObject({ narrowed: null, isBorrowed: true })
    for (const [other, toLevel] of [
      [stronger, 9],
      [weaker, 6.5],
    ] as const) {
      const wanted = { fromLevel: 6, toLevel }
      const before = readyWith(other, sheet, { goal: wanted, strandTest: null })
      const after = readyWith(other, sheet, { goal: wanted, strandTest: test })
      expect(after.mid).toBeLessThan(before.mid)
      expect(after.high - after.low).toBeLessThan(before.high - before.low)
    }
    expect(testedMix({ ...samplePlan, mixes: [stronger] }, test)).toBeNull()
    expect(testedMix(samplePlan, test)).toBe(mix)
  })
  it("tells of another product too, but less", () => {
    const other = { ...mix, product: "Tub" }
    const ready = (strandTest: StrandTest | null) =>
      readyWith(other, sheet && { ...sheet, name: "Tub" }, { goal, strandTest, testedSheet: sheet }).mid
    const own = readyWith(mix, sheet, { goal, strandTest: test }).mid
    expect(ready(test)).toBeLessThan(ready(null))
    expect(ready(test)).toBeGreaterThan(own)
    expect(readyWith(other, sheet, { goal, strandTest: test })).toEqual(
      readyWith(other, sheet, { goal, strandTest: null }),
    ) // nothing is known of the tub it was tested in
  })
  it("never lets a mix pass what its sheet prints", () => {
    const best = { ...test, rows: [{ minutes: 5, level: 10 }] }
    const weaker = { ...mix, developerVolume: 10 } // prints 1 to 2 levels
    expect(readyWith(weaker, sheet, { goal: { fromLevel: 6, toLevel: 9 }, strandTest: best }).low).toBe(
      Number.POSITIVE_INFINITY,
    )
  })
  it("is taken when it goes backwards by what an eye is off, and told beyond", () => {
    const seen = (level: number) => ({ ...test, rows: [...test.rows, { minutes: 20, level }] })
    // Rows end at level 7.5.
    expect(liftKnown(mix, sheet, seen(7))?.narrowed).toMatchObject({ darker: [] })
    expect(liftKnown(mix, sheet, seen(6))?.narrowed).toMatchObject({
      darker: [{ beforeLevel: 7.5, level: 6 }],
    })
    const ready = (strandTest: StrandTest) => readyWith(mix, sheet, { goal, strandTest }).mid
    expect(ready(seen(7))).toBeGreaterThan(ready(test))
  })
  it("is nothing without a sheet", () =>
    expect(liftKnown({ ...mix, product: "Tub" }, undefined, test)).toBeNull())
})
