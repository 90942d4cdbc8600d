import { describe, expect, it } from "vitest"
import type { TradeFigures } from "../../../geometry/hair/tradeFigures"
import { measureSection } from "../../../geometry/section/measureSection"
import type { Section } from "../../../geometry/section/section"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { arcOnBall, ballHead, ballRadiusMm } from "../../support/ball"
import { backcombOf, bandOf, evenHair, leftOutOf, paintedOf, sliceOf, weaveOf } from "../../support/sections"

/** Hair that is alike all over, so that hand sums hold. */
const figures: TradeFigures = {
  ...tradeFigures,
  hairGPerCm3: 1.3,
  density: { vertex: 1, frontal: 1, occipital: 1, side: 1, hairlineBand: 1 },
  lossG: { low: 0.1, mid: 0.2, high: 0.4 },
  soakGPerG: { low: 1, mid: 2, high: 3 },
  coatMgPerCm2: { low: 2, mid: 3, high: 5 },
  foilMarginMm: 15,
  foilFoldMm: 100,
}
const hair = evenHair(28, { densityPerCm2: 210, fibreUm: 80 })
const measure = (section: Section) => measureSection(section, ballHead, hair, figures)

/** A strip of the ball, 0.9 radians of a circle 1.2 from the top, taken 9 mm toward the top. */
const band = bandOf(arcOnBall(1.2, -0.4, 0.5), 9)
const partingMm = 0.9 * ballRadiusMm * Math.sin(1.2)
const areaCm2 = 0.9 * (ballRadiusMm / 10) ** 2 * (Math.cos(1.1) - Math.cos(1.2))
const hairs = 210 * areaCm2
/** 1.3 x pi x (0.008 cm)2 / 4. */
const gPerCm = 1.3 * Math.PI * 1.6e-5

describe("the figures of a slice", () => {
  const slice = measure(sliceOf(band, { rootDistanceMm: 10 }))

  it("are those of its strip of scalp", () => {
    expect(slice.partingMm / partingMm).toBeCloseTo(1, 3)
    expect(slice.areaCm2 / areaCm2).toBeCloseTo(1, 2.7)
    expect(slice.hairs / hairs).toBeCloseTo(1, 2.7)
    expect(slice.shareTaken).toBe(1)
    expect(slice.lengthCm).toBeCloseTo(28, 9)
  })

  it("count the coated length of the hair: 28 cm less 1", () => {
    expect(slice.hairG / (hairs * 27 * gPerCm)).toBeCloseTo(1, 2.7)
    expect(slice.strandAreaCm2 / ((partingMm / 10) * 27 * 2)).toBeCloseTo(1, 3)
  })

  it("make its product", () => {
    const { foils, hairG, strandAreaCm2, productG } = slice
    expect(foils).toBe(1)
    expect(productG.mid).toBeCloseTo(0.2 + 2 * hairG + 0.003 * strandAreaCm2, 9)
    expect(productG.low).toBeCloseTo(0.1 + hairG + 0.002 * strandAreaCm2, 9)
    expect(productG.high).toBeCloseTo(0.4 + 3 * hairG + 0.005 * strandAreaCm2, 9)
  })
})

describe("the figures of a weave", () => {
  const [slice, weave] = [measure(sliceOf(band)), measure(weaveOf(band))]
  // Ten stitches of 3 mm and nine gaps of 5 fit the parting of 75.5 mm; of the strip they reach the first 4 mm.
  const stitched = 30 / partingMm
  const dipped = (Math.cos(1.2 - 4 / ballRadiusMm) - Math.cos(1.2)) / (Math.cos(1.1) - Math.cos(1.2))

  it("count the hair within its stitches, as deep as the tail dips", () => {
    expect(weave.areaCm2).toBe(slice.areaCm2)
    expect(weave.shareTaken / (stitched * dipped)).toBeCloseTo(1, 3)
    expect(weave.hairs / (slice.hairs * stitched * dipped)).toBeCloseTo(1, 3)
    expect(weave.hairG / (slice.hairG * stitched * dipped)).toBeCloseTo(1, 3)
  })

  it("coat a ribbon as wide as its stitches, however thin", () => {
    expect(weave.strandAreaCm2 / (slice.strandAreaCm2 * stitched)).toBeCloseTo(1, 3)
  })
})

describe("the figures of a backcombed section", () => {
  it("leave out what is pushed to the root, and start past the cushion", () => {
    const [slice, backcomb] = [measure(sliceOf(band)), measure(backcombOf(band))]
    expect(backcomb.hairs).toBeCloseTo(slice.hairs * 0.6, 9)
    expect(backcomb.hairG).toBeCloseTo((slice.hairG * 0.6 * 25) / 28, 9)
    expect(backcomb.strandAreaCm2).toBeCloseTo((slice.strandAreaCm2 * 0.6 * 25) / 28, 9)
  })
})

describe("the figures of hair left out", () => {
  it("have scalp and nothing else", () => {
    const left = measure(leftOutOf(band))
    expect(left.areaCm2).toBeGreaterThan(0)
    expect([left.shareTaken, left.hairs, left.hairG, left.strandAreaCm2, left.foils]).toEqual([0, 0, 0, 0, 0])
    expect(left.productG).toEqual({ low: 0, mid: 0, high: 0 })
  })
})

describe("the foils of a section", () => {
  const foils = (widthMm: number, lengthMm: number, changes: Partial<Section<"slice">> = {}) =>
    measure(sliceOf(band, { carrier: { kind: "foil", widthMm, lengthMm }, ...changes })).foils

  it("lie side by side when the ribbon, 75.5 mm, is wider than one less its margin", () => {
    expect(foils(91, 300)).toBe(1)
    expect(foils(90, 300)).toBe(2)
    expect(foils(50, 300)).toBe(3)
  })

  it("lie end to end when the coated hair, 280 mm, is longer than one and the 100 mm of ends folded up", () => {
    expect(foils(91, 180)).toBe(1)
    expect(foils(91, 179)).toBe(2)
    expect(foils(50, 90)).toBe(6)
    expect(foils(91, 179, { strand: { from: 0.5, to: 1 } })).toBe(1)
  })

  it("are none for a board or open air, which lose product once all the same", () => {
    for (const kind of ["board", "open-air"] as const) {
      const { foils, productG, hairG, strandAreaCm2 } = measure(
        sliceOf(band, { carrier: { kind, widthMm: 60, lengthMm: 100 } }),
      )
      expect(foils).toBe(0)
      expect(productG.mid).toBeCloseTo(0.2 + 2 * hairG + 0.003 * strandAreaCm2, 9)
    }
  })

  it("are none where product would start past the ends", () => {
    const bare = measure(sliceOf(band, { rootDistanceMm: 290 }))
    expect(bare.foils).toBe(0)
    expect(bare.productG.high).toBe(0)
  })
})

describe("the figures of a painted panel", () => {
  const open = { kind: "open-air", widthMm: 127, lengthMm: 305 } as const
  const painting = paintedOf(band).painting

  it("are those of a slice coated on one side, where it is painted from the root in full", () => {
    const slice = measure(sliceOf(band, { carrier: open, faces: 1 }))
    expect(measure(paintedOf(band))).toEqual(slice)
    expect(slice.foils).toBe(0)
  })

  it("go by the painted area alone: under a V from 0.3 that drops 0.4 half of the hair is coated", () => {
    const whole = measure(paintedOf(band))
    const half = measure(
      paintedOf(band, { strand: { from: 0.3, to: 1 }, painting: { ...painting, edge: "v" } }),
    )
    expect(half.strandAreaCm2 / whole.strandAreaCm2).toBeCloseTo(0.5, 3)
    expect(half.hairG / whole.hairG).toBeCloseTo(0.5, 3)
    expect(half.productG.mid).toBeCloseTo(0.2 + 2 * half.hairG + 0.003 * half.strandAreaCm2, 9)
  })

  it("take less product the lower the edge starts, the farther it drops and the longer it is feathered", () => {
    const grams = (from: number, dropShare: number, featherMm: number) =>
      measure(
        paintedOf(band, {
          strand: { from, to: 1 },
          painting: { ...painting, edge: "u", dropShare, featherMm },
        }),
      ).productG
    const falling = [grams(0.1, 0.1, 0), grams(0.2, 0.1, 0), grams(0.2, 0.5, 0), grams(0.2, 0.5, 70)]
    for (const end of ["low", "mid", "high"] as const) {
      const each = falling.map((range) => range[end])
      expect(each).toEqual(each.toSorted((a, b) => b - a))
      expect(new Set(each).size).toBe(each.length)
    }
  })

  it("count thin bands by how full they are: 28 cm under a feather of 80 mm come to 23 cm", () => {
    const thin = measure(paintedOf(band, { painting: { ...painting, featherMm: 80 } }))
    expect(thin.hairG / measure(paintedOf(band)).hairG).toBeCloseTo((0.25 * 4 + 0.5 * 4 + 20) / 28, 9)
  })
})
