import { describe, expect, it } from "vitest"
import { bearingOf, directionOf } from "../../../geometry/parting/direction"
import type { SurfacePoint } from "../../../geometry/surface/frames"
import { sphereSurface } from "../../../geometry/surface/surface"

const ball = sphereSurface(100)
const at = (x: number, y: number, z: number) => ball.toSurface([x, y, z])

/** A hairline that runs over the ball in the plane y = 60: only how far behind it a place lies is asked here. */
const behind = (place: SurfacePoint) => 60 - ball.pointAt(place)[1]
const hairline = { coordinates: (place: SurfacePoint) => ({ alongMm: 0, behindMm: behind(place) }) }
const direction = (...parting: SurfacePoint[]) => directionOf(parting, ball, hairline)

describe("the direction of a parting", () => {
  it("is parallel to the hairline when it keeps its distance from it", () => {
    // A circle 13 mm behind the hairline's plane: y = 47 throughout.
    const radius = Math.sqrt(100 ** 2 - 47 ** 2)
    const parting = Array.from({ length: 12 }, (_, i) =>
      at(radius * Math.sin(0.1 * i), 47, radius * Math.cos(0.1 * i)),
    )
    expect(direction(...parting).name).toBe("parallel to hairline")
  })

  it("is vertical or horizontal within 15 degrees", () => {
    expect(direction(at(95, -10, 31), at(99, -10, -12)).name).toBe("vertical")
    expect(direction(at(95, 20, 24), at(93, -25, 26)).name).toBe("horizontal")
  })

  it("is diagonal forward when it drops toward the face, whichever end was drawn first", () => {
    const [high, low] = [at(69, -40, 60), at(97, 10, 22)]
    expect(direction(high, low).name).toBe("diagonal forward")
    expect(direction(low, high).name).toBe("diagonal forward")
    expect(direction(at(-69, -40, 60), at(-97, 10, 22)).name).toBe("diagonal forward")
  })

  it("is diagonal back when it drops away from the face", () => {
    expect(direction(at(80, 40, 45), at(88, -30, 20)).name).toBe("diagonal back")
  })

  it("measures its angle from the horizontal of the scalp, wherever the scalp leans", () => {
    const meridian = (angle: number) => {
      const radians = (angle * Math.PI) / 180
      return at(100 * Math.cos(radians), 0, 100 * Math.sin(radians))
    }
    // Straight down the ball is vertical, high up where it leans as well as at its widest.
    expect(direction(meridian(50), meridian(20))).toEqual({
      name: "vertical",
      degrees: expect.closeTo(90, 6),
    })
    expect(direction(meridian(10), meridian(-20)).degrees).toBeCloseTo(90, 6)
    // Two places at one height: the great circle between them is level midway.
    expect(direction(at(80, 48, 36), at(80, -48, 36)).degrees).toBeCloseTo(0, 6)
  })

  it("is steep by Clairaut's rule along a great circle", () => {
    // A great circle that meets the equator at 40 degrees: cos(bearing) = cos(40) / cos(latitude) everywhere on it.
    const tilt = (40 * Math.PI) / 180
    const circle = (t: number) =>
      at(100 * Math.cos(t), 100 * Math.sin(t) * Math.cos(tilt), 100 * Math.sin(t) * Math.sin(tilt))
    expect(direction(circle(-0.3), circle(0.3))).toEqual({
      name: "diagonal back",
      degrees: expect.closeTo(40, 6),
    })
    // Midway between t = 0.2 and 0.6: sin(latitude) = 0.389418 x 0.642788, its cosine 0.968165; 0.766044 / 0.968165.
    expect(direction(circle(0.2), circle(0.6)).degrees).toBeCloseTo((Math.acos(0.791233) * 180) / Math.PI, 3)
  })

  it("calls a parting across the flat of the head horizontal, and one from front to back vertical", () => {
    expect(direction(at(-30, -10, 95), at(30, -10, 95)).name).toBe("horizontal")
    expect(direction(at(10, 20, 97), at(10, -40, 91)).name).toBe("vertical")
  })

  it("turns anticlockwise seen from outside, and does not ask which end came first", () => {
    // On the head's right the front is to the right: up and to the front is between 0 and 90.
    const [low, high] = [at(99, -10, -12), at(97, 10, 22)]
    expect(bearingOf(ball, low, high)).toBeGreaterThan(45)
    expect(bearingOf(ball, low, high)).toBeLessThan(90)
    expect(bearingOf(ball, high, low)).toBeCloseTo(bearingOf(ball, low, high), 9)
  })
})
