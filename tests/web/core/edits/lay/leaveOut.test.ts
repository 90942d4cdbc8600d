import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { wornPath } from "../../../../../geometry/parting/wornParting"
import { bandShape } from "../../../../../geometry/section/bandShape"
import { overlapCm2 } from "../../../../../geometry/section/overlap"
import type { Section, SectionKind } from "../../../../../geometry/section/section"
import { nearestOnPath } from "../../../../../geometry/surface/nearestOnPath"
import { measurePath } from "../../../../../geometry/surface/surfacePath"
import { type Edit, isRefusal } from "../../../../../web/core/document/edit"
import { newPlan } from "../../../../../web/core/document/newPlan"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { leaveBabyHairs, leaveBetween, leaveVeil } from "../../../../../web/core/edits/lay/leaveOut"
import { headOf } from "../../../../../web/core/figures/measured"

const empty = newPlan(new Date())
const head = headOf(empty)

function withSection(plan: Plan, behindMm: number, kind: SectionKind = "slice", depthMm = 3): Plan {
  const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 75, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  const section = { ...newSection(kind, made.parting, plan), depthMm: { start: depthMm, end: depthMm } }
  return { ...plan, sections: [...plan.sections, section as Section] }
}
function withSpan(plan: Plan, span: Parameters<typeof hairlineParting>[1]): Plan {
  const made = hairlineParting(head, span)
  if ("refused" in made) throw new Error(made.refused)
  return { ...plan, sections: [...plan.sections, newSection("slice", made.parting, plan)] }
}
const alongOf = ({ parting }: Section) =>
  parting
    .map((at) => head.hairline.coordinates(at).alongMm)
    .sort((a, b) => a - b)
    .filter((_, i, all) => i === 0 || i === all.length - 1)
const ids = (plan: Plan) => plan.sections.map(({ id }) => id)

function left(plan: Plan, edit: Edit): Section<"left-out"> {
  const after = edit(plan)
  if (isRefusal(after)) throw new Error(after.refused.code)
  const made = after.sections[after.sections.length - 1]
  if (made.kind !== "left-out") throw new Error("nothing is left out")
  return made
}
const middleMm = (section: Section) =>
  head.hairline.coordinates(section.parting[section.parting.length >> 1]).behindMm
const touches = (section: Section, plan: Plan) =>
  plan.sections.some((other) => overlapCm2(section, other, head) > 0.01)

const between = (front: string, back: string) => `Space between ${front} and ${back}`

describe("a veil", () => {
  it("lies behind the section it falls over, and takes none of its hair", () => {
    const plan = withSection(empty, 20)
    const veil = left(plan, leaveVeil(ids(plan), "Veil"))
    expect(veil.name).toBe("Veil")
    // 8 mm of veil behind a parting 20 mm from the hairline, and a hair's breadth.
    expect(middleMm(veil)).toBeCloseTo(28.3, 0)
    expect(touches(veil, plan)).toBe(false)
  })

  it("lies behind the last of several", () => {
    const plan = withSection(withSection(empty, 30), 12)
    expect(middleMm(left(plan, leaveVeil(ids(plan), "Veil")))).toBeCloseTo(38.3, 0)
  })

  it("lies astride the centre parting when nothing is chosen", () => {
    const { points, stations, layers } = bandShape(left(empty, leaveVeil([], "Veil")), head)
    const across = Array.from({ length: stations * layers }, (_, i) => points[3 * i])
    expect(Math.min(...across)).toBeCloseTo(-4, 0)
    expect(Math.max(...across)).toBeCloseTo(4, 0)
  })

  it("lies astride the parting that is worn on a side", () => {
    const wornParting = { kind: "side", side: "left", offCentreMm: 30 } as const
    const veil = left({ ...empty, head: { ...empty.head, wornParting } }, leaveVeil([], "Veil"))
    const worn = nearestOnPath(head.surface, measurePath(head.surface, wornPath(head, wornParting)))
    const { points, stations, layers } = bandShape(veil, head)
    const rims = Array.from({ length: stations }, (_, i) => [i * layers, (i + 1) * layers - 1]).slice(2, -2)
    for (const index of rims.flat()) {
      const point = [points[3 * index], points[3 * index + 1], points[3 * index + 2]] as const
      expect(worn(point).chordMm).toBeCloseTo(4, 0)
    }
  })
})

describe("baby hairs", () => {
  it("are the edge of the hairline in front of a section", () => {
    const plan = withSection(empty, 9)
    const edge = left(plan, leaveBabyHairs(ids(plan), "Baby hairs"))
    expect(edge).toMatchObject({ name: "Baby hairs", taken: "front", depthMm: { start: 3, end: 3 } })
    expect(middleMm(edge)).toBeCloseTo(3, 0)
    expect(touches(edge, plan)).toBe(false)
  })

  it("are as narrow as the section leaves them", () => {
    // A slice of 3 mm parted at 5 mm: 2 mm are left, less a hair's breadth, in half millimetres.
    const plan = withSection(empty, 5)
    expect(left(plan, leaveBabyHairs(ids(plan), "Baby hairs")).depthMm.start).toBe(1.5)
  })

  it("are refused where a section takes the hair up to the hairline", () => {
    const plan = withSection(empty, 3)
    expect(leaveBabyHairs(ids(plan), "Baby hairs")(plan)).toEqual({
      refused: { code: "up-to-hairline", sections: [{ code: "foil", number: 1 }] },
    })
  })

  it("are left out in front of the others where one of several lies up to the hairline", () => {
    const atHairline = withSpan(empty, { fromAlongMm: 40, toAlongMm: 60, behindMm: 3 })
    const plan = withSpan(atHairline, { fromAlongMm: 10, toAlongMm: 90, behindMm: 12 })
    const after = leaveBabyHairs(ids(plan), "Baby hairs")(plan)
    if (isRefusal(after)) throw new Error(after.refused.code)
    const made = after.sections.slice(2)
    // To 2 mm: a front runs a little wider than its parting where the hairline bends.
    const ends = made.map((edge) => alongOf(edge).map((mm) => 2 * Math.round(mm / 2)))
    expect(ends).toEqual([
      [10, 40],
      [60, 90],
    ])
    expect(new Set(ids(after)).size).toBe(4)
    for (const edge of made) expect(touches(edge, { ...after, sections: plan.sections })).toBe(false)
  })

  it("are not laid again over those that are there, for all or for nothing chosen", () => {
    const plan = withSection(empty, 12)
    for (const chosen of [ids(plan), []]) {
      const once = leaveBabyHairs(chosen, "Baby hairs")(plan)
      if (isRefusal(once)) throw new Error(once.refused.code)
      for (const again of [chosen, ids(once)])
        expect(leaveBabyHairs(again, "Baby hairs")(once)).toEqual({
          refused: { code: "up-to-hairline", sections: [expect.objectContaining({ name: "Baby hairs" })] },
        })
    }
  })

  it("run from temple to temple when nothing is chosen", () => {
    const { parting } = left(empty, leaveBabyHairs([], "Baby hairs"))
    const along = parting.map((at) => head.hairline.coordinates(at).alongMm)
    const temple = head.hairline.coordinates(head.hairline.landmarks.get("temple") ?? parting[0]).alongMm
    expect(Math.min(...along)).toBeCloseTo(-temple, 0)
    expect(Math.max(...along)).toBeCloseTo(temple, 0)
  })
})

describe("the space between two", () => {
  it("is all the hair between them, whichever was chosen first", () => {
    // Slices of 3 mm at 8 and 18 mm: from 8 to 15 there are 7 mm, less a hair's breadth.
    for (const plan of [withSection(withSection(empty, 8), 18), withSection(withSection(empty, 18), 8)]) {
      const space = left(plan, leaveBetween(ids(plan), between))
      expect(space.name).toMatch(/^Space between [12] and [12]$/)
      expect(space.depthMm.start).toBeCloseTo(6.7, 0)
      expect(space.depthMm.end).toBeCloseTo(6.7, 0)
      expect(middleMm(space)).toBeCloseTo(15, 0)
      expect(touches(space, plan)).toBe(false)
    }
  })

  it("is refused when there is none", () => {
    const plan = withSection(withSection(empty, 8), 11)
    expect(leaveBetween(ids(plan), between)(plan)).toEqual({
      refused: {
        code: "nothing-between",
        sections: [
          { code: "foil", number: 1 },
          { code: "foil", number: 2 },
        ],
      },
    })
  })

  it("asks for two", () => {
    const plan = withSection(empty, 8)
    expect(leaveBetween(ids(plan), between)(plan)).toEqual({ refused: { code: "choose-two" } })
  })
})
