import { describe, expect, it } from "vitest"
import {
  bearingOf,
  type DirectionName,
  plainDirection,
  steepnessOf,
} from "../../../../../geometry/parting/direction"
import { hairlineParting, type Parted, straightParting } from "../../../../../geometry/parting/parting"
import { partingLengthMm } from "../../../../../geometry/placing/reshapeParting"
import { mirror, type SurfacePath } from "../../../../../geometry/surface/surfacePath"
import { distance } from "../../../../../geometry/surface/vec3"
import { type Edit, isRefusal } from "../../../../../web/core/document/edit"
import { newPlan } from "../../../../../web/core/document/newPlan"
import { newSection } from "../../../../../web/core/document/newSection"
import {
  behindMmOf,
  setAngle,
  setBehind,
  setDirection,
  setLength,
} from "../../../../../web/core/edits/parting/shapeParting"
import { headOf } from "../../../../../web/core/figures/measured"

const empty = newPlan(new Date())
const head = headOf(empty)
const { surface, hairline } = head

const combed = (made: Parted) => {
  if ("refused" in made) throw new Error(made.refused)
  return made.parting
}
const parallel = combed(hairlineParting(head, { fromAlongMm: 20, toAlongMm: 75, behindMm: 8 }))
const slanting = combed(
  straightParting(head, surface.toSurface([70, 0, 80]), surface.toSurface([70, -40, 60])),
)

const after = (parting: SurfacePath, edit: (id: string) => Edit) => {
  const section = newSection("slice", parting, empty)
  return edit(section.id)({ ...empty, sections: [section] })
}
function changed(parting: SurfacePath, edit: (id: string) => Edit): SurfacePath {
  const plan = after(parting, edit)
  if (isRefusal(plan)) throw new Error(plan.refused.code)
  return plan.sections[0].parting
}
const ends = (parting: SurfacePath) => [parting[0], parting[parting.length - 1]] as const
const middleOf = (parting: SurfacePath) => surface.pointAt(parting[parting.length >> 1])

describe("a typed distance behind the hairline", () => {
  it.each([3, 25])("moves the parting to %s mm behind it", (mm) => {
    const moved = changed(parallel, (id) => setBehind(id, mm))
    expect(behindMmOf(moved, head)).toBeCloseTo(mm, 0)
    for (const at of moved) expect(Math.abs(hairline.coordinates(at).behindMm - mm)).toBeLessThan(1)
  })

  it("is refused where the head has no such place", () => {
    expect(after(parallel, (id) => setBehind(id, 190))).toEqual({
      refused: { code: "no-place-behind", behindMm: 190 },
    })
  })
})

describe("a typed length", () => {
  it.each([30, 90])("makes a straight parting %s mm long, by as much at each end", (mm) => {
    const made = changed(slanting, (id) => setLength(id, mm))
    expect(partingLengthMm(head, made)).toBeCloseTo(mm, 0)
    const reach = ends(made).map((at) => distance(surface.pointAt(at), middleOf(slanting)))
    expect(Math.abs(reach[0] - reach[1])).toBeLessThan(2)
  })

  it("goes on along the hairline where the parting does", () => {
    const made = changed(parallel, (id) => setLength(id, 80))
    expect(partingLengthMm(head, made)).toBeCloseTo(80, 0)
    for (const at of made) expect(Math.abs(hairline.coordinates(at).behindMm - 8)).toBeLessThan(1)
  })

  it("is refused with what would fit when the hair ends sooner", () => {
    expect(after(slanting, (id) => setLength(id, 600))).toEqual({
      refused: { code: "only-so-long", madeMm: expect.any(Number), wantedMm: 600 },
    })
  })
})

describe("a typed angle", () => {
  it.each([0, 30, 60, 90])("turns the parting about its middle to %s degrees", (degrees) => {
    const made = changed(slanting, (id) => setAngle(id, degrees))
    expect(steepnessOf(surface, ...ends(made))).toBeCloseTo(degrees, 0)
    expect(distance(middleOf(made), middleOf(slanting))).toBeLessThan(4)
    expect(Math.abs(partingLengthMm(head, made) - partingLengthMm(head, slanting))).toBeLessThan(0.5)
  })

  it("keeps the way it drops", () => {
    const before = plainDirection(surface, ...ends(slanting)).name
    expect(plainDirection(surface, ...ends(changed(slanting, (id) => setAngle(id, 50)))).name).toBe(before)
  })

  it("is refused when the parting would leave the hair", () => {
    const long = changed(parallel, (id) => setLength(id, 100))
    const bearing = bearingOf(surface, ...ends(long))
    const steep = bearing > 45 && bearing < 135 ? 0 : 90
    expect(after(long, (id) => setAngle(id, steep))).toEqual({
      refused: { code: "angle-leaves-hair", degrees: expect.any(Number) },
    })
  })
})

describe("a chosen direction", () => {
  it.each<DirectionName>(["horizontal", "vertical", "diagonal forward", "diagonal back"])(
    "runs %s",
    (name) => {
      for (const parting of [slanting, mirror(slanting)]) {
        const made = changed(parting, (id) => setDirection(id, name))
        expect(plainDirection(surface, ...ends(made)).name).toBe(name)
      }
    },
  )

  it("keeps to the hairline at its middle's distance, as long as it was", () => {
    const near = combed(
      straightParting(head, surface.toSurface([30, 70, 95]), surface.toSurface([60, 40, 75])),
    )
    const made = changed(near, (id) => setDirection(id, "parallel to hairline"))
    for (const at of made)
      expect(Math.abs(hairline.coordinates(at).behindMm - behindMmOf(near, head))).toBeLessThan(2)
    expect(partingLengthMm(head, made)).toBeCloseTo(partingLengthMm(head, near), -1)
  })
})
