import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { isFoil, type Section } from "../../../../../geometry/section/section"
import { isRefusal } from "../../../../../web/core/document/edit"
import { newPlan } from "../../../../../web/core/document/newPlan"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { type StackWish, stackBehind, stackRows } from "../../../../../web/core/edits/lay/stackBehind"
import { headOf } from "../../../../../web/core/figures/measured"
import { overlapsIn } from "../../../../../web/core/figures/overlaps"

const empty = newPlan(new Date())
const head = headOf(empty)
const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 75, behindMm: 6 })
if ("refused" in made) throw new Error(made.refused)
const first: Section = { ...newSection("slice", made.parting, empty), note: "with the grain" }
const plan: Plan = { ...empty, sections: [first] }
const wish: StackWish = { follow: "parting", gapMm: 3, shiftMm: 0, depthMm: first.depthMm, second: null }

function stacked(count: number, change: Partial<StackWish> = {}): readonly Section[] {
  const after = stackBehind(first.id, { ...wish, ...change }, count)(plan)
  if (isRefusal(after)) throw new Error(after.refused.code)
  return after.sections.slice(1)
}

describe("a stack behind a section", () => {
  it("is so many more like it, numbered on, each with an id of its own", () => {
    const rows = stacked(4)
    expect(rows.map((row) => isFoil(row) && row.mapNumber)).toEqual([2, 3, 4, 5])
    expect(new Set([first.id, ...rows.map(({ id }) => id)]).size).toBe(5)
    for (const row of rows)
      expect(row).toMatchObject({ kind: "slice", taken: "front", note: "with the grain" })
  })

  it("lies back by gap and depth, and takes no hair twice", () => {
    const behind = stacked(4).map(({ parting }) =>
      Math.round(head.hairline.coordinates(parting[parting.length >> 1]).behindMm),
    )
    expect(behind).toEqual([12, 18, 24, 30])
    expect(overlapsIn([first, ...stacked(4)], head)).toEqual([])
  })

  it("alternates kinds, each to its own depth: slice, weave, slice", () => {
    const rows = stacked(3, { second: { kind: "weave", depthMm: 6 } })
    expect(rows.map(({ kind, depthMm }) => [kind, depthMm.start])).toEqual([
      ["weave", 6],
      ["slice", 3],
      ["weave", 6],
    ])
    const [at] = rows[0].parting.slice(rows[0].parting.length >> 1)
    expect(head.hairline.coordinates(at).behindMm).toBeCloseTo(15, 0)
  })

  it("moves each second one along like bricks", () => {
    const [one, two] = stacked(2, { shiftMm: 25 }).map(
      ({ parting }) => head.hairline.coordinates(parting[0]).alongMm,
    )
    const start = head.hairline.coordinates(first.parting[0]).alongMm
    expect(one - start).toBeGreaterThan(18)
    expect(Math.abs(two - start)).toBeLessThan(4)
  })

  it("says how many fit, adds none unless that many are asked for, and leaves what was there", () => {
    const refused = stackBehind(first.id, wish, 40)(plan)
    if (!isRefusal(refused)) throw new Error("not refused")
    expect(refused.refused).toMatchObject({
      code: "stack-ends",
      asked: 40,
      section: { code: "foil", number: 1 },
    })
    const fits = "fits" in refused.refused ? refused.refused.fits : 0
    expect(fits).toBeGreaterThan(10)
    expect(stacked(fits)).toHaveLength(fits)
  })

  it("lies back to back without a gap, and still takes no hair twice to speak of", () => {
    expect(overlapsIn([first, ...stacked(4, { gapMm: 0 })], head)).toEqual([])
  })

  it("makes each section once, so that a step of the preview makes one", () => {
    const rows = stackRows(first, plan, wish)
    const [three, four] = [rows(3), rows(4)]
    expect(four.slice(0, 3).every((row, i) => row === three[i])).toBe(true)
  })
})
