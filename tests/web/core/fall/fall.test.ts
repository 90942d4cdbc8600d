import { expect, it } from "vitest"
import { headsGrown } from "../../../../presets/placement/strands"
import { fallOf, fallsOf } from "../../../../web/core/fall/fall"
import { examplePlan } from "../../../../web/core/file/examplePlan"

const plan = examplePlan()

it("shows one head first and then the share on all of them, its range about its middle", () => {
  const [first, whole, ...more] = [...fallsOf(plan)]
  expect(more).toEqual([])
  expect([first.heads, whole.heads]).toEqual([1, headsGrown.value])
  expect(whole.strands.points).toBe(first.strands.points)
  for (const { low, mid, high } of Object.values(whole.share)) {
    expect(low).toBeLessThanOrEqual(mid)
    expect(mid).toBeLessThanOrEqual(high)
    expect(low).toBeGreaterThan(0)
  }
})

it("only lightens anew when a section changes, and has nothing light without any", () => {
  const before = fallOf(plan)
  const bare = [...fallsOf({ ...plan, sections: [] })]
  expect(bare.length).toBe(1)
  expect(bare[0].strands.points).toBe(before.strands.points)
  expect(bare[0].share.left).toEqual({ low: 0, mid: 0, high: 0 })
})

it("grows anew when the parting does", () => {
  const before = fallOf(plan)
  const parted = {
    ...plan,
    head: { ...plan.head, wornParting: { kind: "side", side: "left", offCentreMm: 30 } },
  } as const
  expect(fallOf(parted).strands.points).not.toEqual(before.strands.points)
})
