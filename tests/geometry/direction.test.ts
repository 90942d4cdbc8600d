import { describe, expect, it } from "vitest"
import { directionOf } from "../../geometry/direction"
import type { SurfacePoint } from "../../geometry/frames"
import { sphereSurface } from "../../geometry/head/surface"

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

  it("measures steepness on the surface", () => {
    // A meridian of the ball from 20 to 50 degrees above its middle: 100 (0.76604 - 0.34202) mm of drop in 52.36 mm: sine 0.8098.
    const meridian = (angle: number) => {
      const radians = (angle * Math.PI) / 180
      return at(100 * Math.cos(radians), 0, 100 * Math.sin(radians))
    }
    expect(direction(meridian(50), meridian(20)).degrees).toBeCloseTo(54.08, 1)
  })
})
