import { describe, expect, it } from "vitest"
import { dipMm, heldShare, kindOf, stitches, takenShare } from "../../../geometry/section/sectionKinds"
import { surfacePoint } from "../../../geometry/surface/frames"
import { backcombOf, bandOf, leftOutOf, sliceOf, weaveOf } from "../../support/sections"

const band = bandOf([surfacePoint(-0.3, 0.5), surfacePoint(0.3, 0.5)], 10)

describe("what each kind of section takes of the hair within its pick-ups", () => {
  it("is all of a slice and of a weave", () => {
    expect(takenShare(sliceOf(band))).toBe(1)
    expect(takenShare(weaveOf(band))).toBe(1)
  })

  it("is what is not pushed to the root of a backcombed slice or weave; no one else has the rest", () => {
    expect(takenShare(backcombOf(band))).toBeCloseTo(0.6, 12)
    expect(takenShare(backcombOf(band, { base: "weave" }))).toBeCloseTo(0.6, 12)
    expect(heldShare(backcombOf(band))).toBe(1)
  })

  it("is nothing of hair left out, which is held", () => {
    expect(takenShare(leftOutOf(band))).toBe(0)
    expect(heldShare(leftOutOf(band))).toBe(1)
    expect(stitches(leftOutOf(band), 60)).toEqual([])
  })
})

describe("how deep each kind picks up", () => {
  it("is the dip of a weave, combed or backcombed, and the whole band otherwise", () => {
    expect(dipMm(weaveOf(band))).toBe(4)
    expect(dipMm(backcombOf(band, { base: "weave" }))).toBe(4)
    for (const whole of [sliceOf(band), backcombOf(band), leftOutOf(band)])
      expect(dipMm(whole)).toBe(Number.POSITIVE_INFINITY)
  })
})

describe("how each kind is picked up", () => {
  it("is in one piece for a slice, combed or backcombed", () => {
    const whole = [{ fromMm: 0, toMm: 61, depthShare: 1 }]
    expect(stitches(sliceOf(band), 61)).toEqual(whole)
    expect(stitches(backcombOf(band), 61)).toEqual(whole)
  })

  it("is in stitches for a weave, combed or backcombed", () => {
    expect(stitches(weaveOf(band), 43)).toHaveLength(6)
    expect(stitches(backcombOf(band, { base: "weave" }), 43)).toHaveLength(6)
  })
})

describe("where product starts", () => {
  it("is past the cushion of a backcombed section, and at the distance from the scalp otherwise", () => {
    const at = { rootDistanceMm: 8 }
    const starts = [sliceOf(band, at), weaveOf(band, at), backcombOf(band, at)].map((section) =>
      kindOf(section).productStartMm(section as never),
    )
    expect(starts).toEqual([8, 8, 30])
    const far = backcombOf(band, { rootDistanceMm: 41 })
    expect(kindOf(far).productStartMm(far)).toBe(41)
  })
})
