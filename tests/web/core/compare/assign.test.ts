import { describe, expect, it } from "vitest"
import { assign } from "../../../../web/core/compare/assign"
import { inOrder } from "../../../../web/core/compare/inOrder"
import { makeDice } from "../../../support/dice"
import { processorMs } from "../../../support/processorMs"

/** The least that any pairing costs, by trying each one there is. */
function leastByTrying(costs: readonly (readonly number[])[], alone: number, taken = 0): number {
  const [row, ...rest] = costs
  const columns = row?.length ?? 0
  if (!row) return 0
  const left = alone + leastByTrying(rest, alone, taken)
  const paired = row.flatMap((cost, column) =>
    taken & (1 << column) ? [] : [cost - alone + leastByTrying(rest, alone, taken | (1 << column))],
  )
  return Math.min(left, ...paired.slice(0, columns))
}

describe("pairing two lists", () => {
  it("costs as little as the best of all pairings of up to eight with up to eight", () => {
    const dice = makeDice(20260309)
    for (let round = 0; round < 60; round++) {
      const [rows, columns] = [dice, dice].map(({ even }) => 1 + Math.floor(8 * even()))
      // Whole costs are often alike; lopsided ones are not.
      const isWhole = round % 2 === 0
      const one = () => (isWhole ? Math.floor(12 * dice.even()) : 40 * dice.even() ** 2)
      const costs = Array.from({ length: rows }, () => Array.from({ length: columns }, one))
      const alone = isWhole ? 4 : 12.5
      const pairs = assign(costs, alone)
      expect(new Set(pairs.map(([row]) => row)).size).toBe(pairs.length)
      expect(new Set(pairs.map(([, column]) => column)).size).toBe(pairs.length)
      const paired = pairs.reduce((sum, [row, column]) => sum + costs[row][column], 0)
      const cost = paired + alone * (rows + columns - 2 * pairs.length)
      expect(cost).toBeCloseTo(leastByTrying(costs, alone) + alone * columns, 9)
    }
  })

  it("leaves both alone where that costs less, and pairs nothing with nothing", () => {
    expect(assign([[9, 31]], 5)).toEqual([[0, 0]])
    expect(assign([[11, 31]], 5)).toEqual([])
    expect(assign([[], []], 5)).toEqual([])
    expect(assign([], 5)).toEqual([])
  })

  it("pairs 500 with 500 within a second and a half of the processor’s time", async () => {
    const dice = makeDice(7)
    const costs = Array.from({ length: 500 }, () => Array.from({ length: 500 }, () => 25 * dice.even()))
    expect(await processorMs(() => assign(costs, 12.5))).toBeLessThan(1500)
  })
})

describe("what stands in its order", () => {
  it.each([
    [
      [1, 2, 3],
      [true, true, true],
    ],
    // Two that changed places.
    [
      [1, 3, 2, 4],
      [true, false, false, true],
    ],
    [
      [5, 2, 3, 4, 1],
      [false, true, true, true, false],
    ],
    // One done last instead of first.
    [
      [5, 1, 2, 3, 4],
      [false, true, true, true, true],
    ],
    [
      [3, 2, 1],
      [false, false, false],
    ],
    [[], []],
  ])("of %j is %j", (places, expected) => {
    expect(inOrder(places)).toEqual(expected)
  })
})
