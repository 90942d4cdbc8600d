import { describe, expect, it } from "vitest"
import { sheetOf } from "../../../../web/core/document/salon"
import { liftKnown } from "../../../../web/core/lift/liftOfPlan"
import { liftOutlook } from "../../../../web/core/lift/liftOutlook"
import { samplePlan } from "../../../support/samples"

const [mix] = samplePlan.mixes
const outlook = (rows: readonly { minutes: number; level: number }[], toLevel: number | null = 9) => {
  const test = { product: mix.product, developerVolume: mix.developerVolume, startLevel: 6, rows }
  const known = liftKnown(mix, sheetOf(mix.product, samplePlan) ?? undefined, test)
  if (!known) throw new Error("the house powder prints its lift")
  const goal = toLevel === null ? null : { fromLevel: 6, toLevel }
  return liftOutlook(known, { startLevel: 6, goal, firstLookMin: 10 })
}

describe("what is to be expected of a mix", () => {
  it("starts at the level of the strand and never goes past what the sheet prints: 4 levels for 20 volume", () => {
    const { curve, longestMin } = outlook([])
    expect(curve[0]).toEqual({ minutes: 0, level: { low: 6, mid: 6, high: 6 } })
    expect(curve.at(-1)?.minutes).toBe(45)
    expect(longestMin).toBe(45)
    expect(Math.max(...curve.map(({ level }) => level.high))).toBeLessThanOrEqual(10)
  })
  it("has a narrower band once a strand was looked at", () => {
    const spreadAt20 = (rows: Parameters<typeof outlook>[0]) => {
      const { level } = outlook(rows).curve[8]
      return level.high - level.low
    }
    expect(spreadAt20([{ minutes: 20, level: 8 }])).toBeLessThan(spreadAt20([]))
  })
  it("says when to look, and never past the longest time; without a goal it says nothing", () => {
    expect(outlook([]).window).toMatchObject({ lookFromMin: 10, neverPastMin: 45 })
    expect(outlook([], null).window).toBeNull()
  })
  it("says which row to look at again, and what is wrong with a test that goes back in time", () => {
    const rows = [
      { minutes: 10, level: 8 },
      { minutes: 20, level: 6.5 },
    ]
    expect(outlook(rows).darker).toMatchObject([{ row: 2 }])
    expect(outlook(rows).problem).toBeNull()
    expect(outlook(rows.toReversed()).problem).toMatchObject({ code: "out-of-order", row: 2 })
  })
})
