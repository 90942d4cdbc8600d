import { describe, expect, it } from "vitest"
import { partingThrough } from "../../../geometry/parting/parting"
import { landmarkAt, spotOf, spotsOf } from "../../../geometry/placing/spotOf"
import { alongMm, fitParting, placeOf } from "../../../geometry/placing/technique"
import type { Head } from "../../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"
import { distance } from "../../../geometry/surface/vec3"
import { randomHeads } from "../../support/randomHeads"

const heads = randomHeads(4)
const apartMm = ({ surface }: Head, a: SurfacePoint, b: SurfacePoint) =>
  distance(surface.pointAt(a), surface.pointAt(b))

/** Places all over the scalp, on a grid that meets no landmark. */
const places = ({ hairline }: Head) =>
  Array.from({ length: 16 * 16 }, (_, i) =>
    surfacePoint(-1.93 + 0.25 * (i % 16), -1.91 + 0.25 * Math.floor(i / 16)),
  ).filter((at) => hairline.contains(at))

describe("the spot that tells a place", () => {
  it.each(heads)(
    "is the way back from the place of a spot, to 0.01 mm, all over the scalp (head %#)",
    (head) => {
      expect(places(head).length).toBeGreaterThan(80)
      for (const at of places(head))
        expect(apartMm(head, placeOf(head, spotOf(head, at)), at)).toBeLessThan(0.01)
    },
  )

  it("counts a landmark as the hairline does, on both sides, once round", () => {
    const [head] = heads
    for (const landmark of [-6.9, -3.2, -0.4, 0, 0.6, 1, 5.5, 6.99])
      expect(landmarkAt(head, alongMm(head, landmark))).toBeCloseTo(landmark, 9)
    expect(landmarkAt(head, alongMm(head, 2.5) + head.hairline.lengthMm)).toBeCloseTo(2.5, 9)
  })
})

describe("a parting told by spots", () => {
  const [head, other] = heads
  const parting = [0, 1, 2, 3, 4].map((i) => surfacePoint(0.9 - 0.1 * i, 0.3 - 0.25 * i))

  it("is the same on its own head to 0.01 mm", () => {
    const made = fitParting(head, { run: "through", spots: spotsOf(head, parting) })
    if (!("parting" in made)) throw new Error(made.refused)
    made.parting.forEach((at, i) => {
      expect(apartMm(head, at, parting[i])).toBeLessThan(0.01)
    })
  })

  it("lies as far behind the hairline of another head as on its own", () => {
    const spots = spotsOf(head, parting)
    const made = fitParting(other, { run: "through", spots })
    if (!("parting" in made)) throw new Error(made.refused)
    // Within the half millimetre by which the hairline's direction over 12 mm is off its direction at one place.
    made.parting.slice(0, 3).forEach((at, i) => {
      expect(other.hairline.coordinates(at).behindMm).toBeCloseTo(spots[i].behindMm, 0)
    })
  })

  it("is cut at the hairline where it runs out of it, and refused where all of it does", () => {
    const out = [surfacePoint(0.1, 1), surfacePoint(0.1, 1.6)]
    const made = partingThrough(head, out)
    if (!("parting" in made)) throw new Error(made.refused)
    expect(head.hairline.coordinates(made.parting[made.parting.length - 1]).behindMm).toBeCloseTo(0, 1)
    expect(partingThrough(head, [surfacePoint(0.1, 1.6), surfacePoint(0.2, 1.7)])).toEqual({
      refused: "outside-hairline",
    })
  })
})
