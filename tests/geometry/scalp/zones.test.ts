import { describe, expect, it } from "vitest"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { inFaceFrame, zoneAreas, zoneAt } from "../../../geometry/scalp/zones"
import { surfacePoint } from "../../../geometry/surface/frames"

const head = makeHeadFromAxes([1.05, 0.94, 1.1], "round")
const zone = (x: number, y: number, z: number) =>
  zoneAt(head, head.surface.toSurface([x * 1.05, y * 0.94, z * 1.1]))

describe("the zones of the scalp", () => {
  it("are told by the planes of the unscaled head, on a head of any size", () => {
    expect(zone(0, 0, 123)).toBe("top")
    expect(zone(20, 73, 88)).toBe("top")
    expect(zone(69, -20, 60)).toBe("right")
    expect(zone(-69, -20, 60)).toBe("left")
    expect(zone(0, -95, 30)).toBe("back")
    expect(zone(-30, -85, 10)).toBe("back")
  })

  it("mirror each other", () => {
    const { left, right } = zoneAreas(head)
    expect(left).toBeCloseTo(right, 6)
  })
})

describe("the face frame", () => {
  it("is the hair within its width of the hairline between the sideburns", () => {
    const { hairline } = head
    const inward = (alongMm: number, share: number) => {
      const [u, v] = hairline.pointAlong(alongMm)
      return surfacePoint(u * share, v * share)
    }
    expect(inFaceFrame(head, inward(15, 0.9), 30)).toBe(true)
    expect(inFaceFrame(head, inward(15, 0.9), 5)).toBe(false)
    expect(inFaceFrame(head, inward(15, 1.1), 30)).toBe(false)
    expect(inFaceFrame(head, inward(hairline.lengthMm / 2, 0.95), 30)).toBe(false)
  })
})
