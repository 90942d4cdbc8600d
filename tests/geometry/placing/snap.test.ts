import { describe, expect, it } from "vitest"
import { directionOf, steepnessOf } from "../../../geometry/parting/direction"
import { hairlineParting } from "../../../geometry/parting/parting"
import { snapStroke, turnAbout, turnedToward } from "../../../geometry/placing/snap"
import { snapGuides } from "../../../geometry/placing/snapGuides"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { lengthMm } from "../../../geometry/surface/surfacePath"
import { distance } from "../../../geometry/surface/vec3"
import { ball, ballHead, onBall } from "../../support/ball"
import { randomHeads } from "../../support/randomHeads"
import { bandOf } from "../../support/sections"

const head = makeHeadFromAxes([1, 1, 1], "round")
const { surface, hairline } = head
const alone = { head, guides: [], leastBehindMm: 3 }
/** The place so far along the hairline and so far behind it, mm. */
function at(alongMm: number, behindMm: number) {
  const made = hairlineParting(head, { fromAlongMm: alongMm - 3, toAlongMm: alongMm + 3, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  return made.parting[made.parting.length >> 1]
}

describe("a stroke near one of the trade's directions", () => {
  it("turns to it about its first place, as long as it was", () => {
    // From the ball's side at its widest, 5 degrees off level: Clairaut turns it to the horizontal.
    const [from, to] = [onBall(Math.PI / 2, 0.9), onBall(Math.PI / 2 - 0.05, 1.5)]
    expect(steepnessOf(ball, from, to)).toBeGreaterThan(3)
    const end = turnedToward(ball, from, to, 0)
    if (!end) throw new Error("not turned")
    expect(steepnessOf(ball, from, end)).toBeLessThan(0.1)
    expect(distance(ball.pointAt(from), ball.pointAt(end))).toBeCloseTo(
      distance(ball.pointAt(from), ball.pointAt(to)),
      6,
    )
  })

  it("stays its own when it would have to turn more than a hand errs", () => {
    expect(turnedToward(ball, onBall(Math.PI / 2, 0.9), onBall(Math.PI / 2 - 0.16, 1.5), 0)).toBeNull()
  })

  it("turns anticlockwise seen from outside", () => {
    // From the top of the ball, a place in front goes to the head's left.
    const turned = turnAbout(ball, onBall(0, 0))(onBall(0.5, 0), 90)
    expect(turned[0]).toBeCloseTo(-0.5, 9)
    expect(turned[1]).toBeCloseTo(0, 9)
  })

  it.each([
    ["horizontal", [75, -60, 63]],
    ["vertical", [75, -32, 30]],
    ["diagonal forward", [75, -58, 90]],
    ["diagonal back", [75, -2, 88]],
  ] as const)("far behind the hairline snaps to %s", (name, place) => {
    const [from, to] = [surface.toSurface([75, -30, 60]), surface.toSurface(place)]
    expect(snapStroke([from, to], alone)?.to).toBe(name)
  })

  it("snaps a shaky freehand line as well, and leaves a bend alone", () => {
    const from = surface.toSurface([80, 0, 70])
    const line = Array.from({ length: 40 }, (_, i) => surface.toSurface([80, -1.6 * i, 70 + Math.sin(i)]))
    expect(snapStroke([from, ...line], alone)?.to).toBe("horizontal")
    const bent = Array.from({ length: 40 }, (_, i) =>
      surface.toSurface([80, -1.6 * i, 70 + 18 * Math.sin((i * Math.PI) / 39)]),
    )
    expect(snapStroke(bent, alone)).toBeNull()
  })
})

describe("a stroke beside the hairline", () => {
  it("keeps its distance from it", () => {
    const snapped = snapStroke([at(30, 12), at(75, 14)], alone)
    expect(snapped?.to).toBe("parallel to hairline")
    for (const place of snapped?.parting ?? [])
      expect(Math.abs(hairline.coordinates(place).behindMm - 12)).toBeLessThan(0.4)
  })

  it("leaves room for the hair in front of it", () => {
    const snapped = snapStroke([at(30, 4), at(75, 5)], { ...alone, leastBehindMm: 12 })
    for (const place of snapped?.parting ?? [])
      expect(hairline.coordinates(place).behindMm).toBeGreaterThan(11.6)
  })
})

describe("a stroke beside the last parting", () => {
  const next = { taken: "front", depthMm: 4, gapMm: 3 } as const

  it("runs parallel to it with the gap between, as far as it was drawn", () => {
    const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 80, behindMm: 6 })
    if ("refused" in made) throw new Error(made.refused)
    const guides = snapGuides(head, { ...bandOf(made.parting, 3), taken: "front" }, next)
    // Its own depth of 4 and a gap of 3 behind a parting 6 behind the hairline: 13.
    const snapped = snapStroke([at(30, 12), at(70, 15)], { ...alone, guides })
    expect(snapped?.to).toBe("last parting")
    expect(snapped?.guide).toBe(made.parting)
    for (const place of snapped?.parting ?? [])
      expect(Math.abs(hairline.coordinates(place).behindMm - 13)).toBeLessThan(0.3)
    expect(hairline.coordinates(snapped?.parting[0] ?? at(0, 0)).alongMm).toBeCloseTo(30, 0)
  })

  it("finds the line on any head", () => {
    for (const each of randomHeads(8)) {
      const made = hairlineParting(each, { fromAlongMm: 25, toAlongMm: 70, behindMm: 8 })
      if ("refused" in made) throw new Error(made.refused)
      const [behind] = snapGuides(each, { ...bandOf(made.parting, 3), taken: "front" }, next)
      const mid = behind.line.points[behind.line.points.length >> 1]
      const off = Math.abs(each.hairline.coordinates(mid).behindMm - 15)
      expect(off).toBeLessThan(0.3)
    }
  })

  it("asks for a stroke long enough to have a direction", () => {
    expect(snapStroke([onBall(1, 0.5), onBall(1.05, 0.52)], { ...alone, head: ballHead })).toBeNull()
    expect(lengthMm(ball, [onBall(1, 0.5), onBall(1.05, 0.52)])).toBeLessThan(12)
  })

  it("keeps its name for the plain direction far from any line", () => {
    const from = surface.toSurface([80, 0, 70])
    const to = surface.toSurface([80, -60, 72])
    const snapped = snapStroke([from, to], alone)
    expect(directionOf(snapped?.parting ?? [from, to], surface, hairline).name).toBe("horizontal")
  })
})
