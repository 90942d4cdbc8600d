import { describe, expect, it } from "vitest"
import { coatedCm, coatingOf } from "../../../geometry/section/coating"
import { surfacePoint } from "../../../geometry/surface/frames"
import { backcombOf, bandOf, leftOutOf, sliceOf } from "../../support/sections"

const band = bandOf([surfacePoint(0, 0), surfacePoint(0.4, 0)])
const coated = (section: Parameters<typeof coatingOf>[0], lengthCm: number) =>
  coatedCm(coatingOf(section), lengthCm)

describe("the coated part of a strand", () => {
  it("starts at the distance from the scalp", () => {
    expect(coated(sliceOf(band, { rootDistanceMm: 6 }), 25)).toBeCloseTo(24.4, 12)
  })

  it("is the part that is asked for: mid-lengths from 0.2 to 0.7 of 25 cm are 12.5 cm", () => {
    const strand = { from: 0.2, to: 0.7 }
    expect(coated(sliceOf(band, { rootDistanceMm: 6, strand }), 25)).toBeCloseTo(12.5, 12)
  })

  it("starts past the cushion of a backcombed section", () => {
    expect(coated(backcombOf(band, { rootDistanceMm: 6, cushionMm: 35 }), 25)).toBeCloseTo(21.5, 12)
  })

  it("is nothing of hair too short, and of hair left out", () => {
    expect(coated(sliceOf(band, { rootDistanceMm: 30 }), 2)).toBe(0)
    expect(coated(leftOutOf(band), 25)).toBe(0)
  })
})
