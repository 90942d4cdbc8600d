import { expect, it } from "vitest"
import { hairlineParting } from "../../../../geometry/parting/parting"
import { newPlan } from "../../../../web/core/document/newPlan"
import { newSection } from "../../../../web/core/document/newSection"
import { headOf } from "../../../../web/core/figures/measured"
import { ranksBehind } from "../../../../web/core/placement/rankBehind"

const plan = newPlan(new Date("2026-03-09T12:00:00Z"))
const head = headOf(plan)

const sectionAt = (id: string, kind: "slice" | "weave", fromAlongMm: number, behindMm: number) => {
  const made = hairlineParting(head, { fromAlongMm, toAlongMm: fromAlongMm + 40, behindMm })
  if ("refused" in made) throw new Error("no parting there")
  return { ...newSection(kind, made.parting, plan), id }
}

it("tells sections of one kind at one place apart, from the hairline back, and leaves one that is alone without a rank", () => {
  const far = sectionAt("far", "slice", 20, 22)
  const near = sectionAt("near", "slice", 20, 4)
  const between = sectionAt("between", "slice", 20, 12)
  const other = sectionAt("other", "weave", 20, 8)
  const left = sectionAt("left", "slice", -60, 4)
  const ranks = ranksBehind([far, near, other, between, left], head)
  expect([...ranks].sort()).toEqual([
    ["between", 2],
    ["far", 3],
    ["near", 1],
  ])
})

it("tells apart what is called the same, whether its name was never given or taken back", () => {
  const { name: _, ...neverNamed } = sectionAt("near", "slice", 20, 4)
  const unnamed = { ...sectionAt("far", "slice", 20, 12), name: undefined }
  expect([...ranksBehind([neverNamed, unnamed], head)].sort()).toEqual([
    ["far", 2],
    ["near", 1],
  ])
})
