import { describe, expect, it } from "vitest"
import { crossingShare } from "../../../../../geometry/parting/besideParting"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { type WornParting, wornPath } from "../../../../../geometry/parting/wornParting"
import type { Section } from "../../../../../geometry/section/section"
import { lengthMm } from "../../../../../geometry/surface/surfacePath"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { techniqueSections } from "../../../../../web/core/edits/lay/layTechnique"
import { stackRows } from "../../../../../web/core/edits/lay/stackBehind"
import { headOf } from "../../../../../web/core/figures/measured"
import { emptyPlan } from "../../../../support/samples"
import { usualTechnique, usualTechniques } from "../../../../support/techniques"

const worn = (wornParting: WornParting): Plan => ({ ...emptyPlan, head: { ...emptyPlan.head, wornParting } })
const sideParted = worn({ kind: "side", side: "left", offCentreMm: 32 })
const { surface } = headOf(emptyPlan)

const crosses = ({ parting }: Section, plan: Plan) => {
  const { wornParting } = plan.head
  return wornParting !== undefined && crossingShare(parting, wornPath(headOf(plan), wornParting)) !== null
}
const sideLengths = (sections: readonly Section[]) => {
  const sum = (side: number) =>
    sections
      .filter(({ parting }) => Math.sign(parting[parting.length >> 1][0]) === side)
      .reduce((total, { parting }) => total + lengthMm(surface, parting), 0)
  return [sum(-1), sum(1)]
}

describe("a technique on hair parted at the side", () => {
  it.each(usualTechniques)("takes nothing across the parting: $name", (technique) => {
    for (const side of ["left", "right"] as const)
      for (const offCentreMm of [12, 32, 50]) {
        const plan = worn({ kind: "side", side, offCentreMm })
        expect(techniqueSections(technique, plan).filter((each) => crosses(each, plan))).toEqual([])
      }
  })

  it("hangs from the parting: longer on the side away from it, on purpose", () => {
    const frame = usualTechnique("temple-to-temple")
    const [left, right] = sideLengths(techniqueSections(frame, sideParted))
    expect(right).toBeGreaterThan(1.3 * left)
    const [evenLeft, evenRight] = sideLengths(techniqueSections(frame, emptyPlan))
    expect(evenRight / evenLeft).toBeCloseTo(1, 3)
  })

  it("lies on both sides of it where it lay over the middle", () => {
    const fringe = usualTechnique("fringe-panel")
    const nearMiddle = worn({ kind: "side", side: "left", offCentreMm: 14 })
    expect(techniqueSections(fringe, nearMiddle).length).toBeGreaterThan(
      techniqueSections(fringe, emptyPlan).length,
    )
  })

  it("lies where it is told when the hair is parted in the middle, and when nobody has said", () => {
    for (const technique of usualTechniques)
      expect(techniqueSections(technique, worn({ kind: "centre" })).map(({ parting }) => parting)).toEqual(
        techniqueSections(technique, emptyPlan).map(({ parting }) => parting),
      )
  })
})

describe("a stack on hair parted at the side", () => {
  /** Parted along the hairline from a little right of the parting to the right temple, or over the parting. */
  const slice = (fromAlongMm: number) => {
    const made = hairlineParting(headOf(sideParted), { fromAlongMm, toAlongMm: 80, behindMm: 6 })
    if ("refused" in made) throw new Error(made.refused)
    return newSection("slice", made.parting, sideParted)
  }
  const wish = {
    follow: "hairline",
    gapMm: 4,
    shiftMm: 0,
    depthMm: { start: 3, end: 3 },
    second: null,
  } as const
  const rowsBehind = (first: Section) => stackRows(first, { ...sideParted, sections: [first] }, wish)(9)

  it("stays on its own side of the parting", () => {
    const rows = rowsBehind(slice(-24))
    expect(rows.length).toBeGreaterThan(4)
    expect(rows.filter((row) => crosses(row, sideParted))).toEqual([])
  })

  it("goes on across it behind what itself was drawn across it", () => {
    const rows = rowsBehind(slice(-50))
    expect(rows.some((row) => crosses(row, sideParted))).toBe(true)
  })
})
