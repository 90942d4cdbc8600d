import { describe, expect, it } from "vitest"
import * as hairTypes from "../../presets/client/hairTypes"
import type { Figure } from "../../presets/figure/figure"
import { tradeFigureSources, tradeFigures } from "../../presets/formula/tradeFigures"
import * as foils from "../../presets/placement/foils"

function figuresIn(value: unknown, path: string): [string, Figure][] {
  if (typeof value !== "object" || value === null) return []
  if ("source" in value) return [[path, value as Figure]]
  return Object.entries(value).flatMap(([key, inner]) => figuresIn(inner, path ? `${path}.${key}` : key))
}
const all = figuresIn({ ...foils, ...hairTypes, ...tradeFigureSources }, "")

describe("the figures of hair, foils and product", () => {
  it.each(all)(
    "%s lies in its span and says where it is from",
    (_, { value, range: [low, high], source }) => {
      expect(value).toBeGreaterThanOrEqual(low)
      expect(value).toBeLessThanOrEqual(high)
      expect(source).toMatch(/common practice, no source|assumption|\d{4}|Robbins/)
    },
  )

  it("are all there", () => {
    expect(all.length).toBeGreaterThan(45)
  })
})

describe("words in order", () => {
  const rising = (figures: Record<string, Figure>) => {
    const values = Object.values(figures).map(({ value }) => value)
    expect(values).toEqual(values.toSorted((a, b) => a - b))
  }

  it("rise from low to high, fine to coarse, micro to heavy, brow to waist", () => {
    rising(hairTypes.densityPerCm2)
    rising(hairTypes.fibreUm)
    rising(foils.sliceDepthMm)
    rising(hairTypes.lengthCm)
  })
})

describe("what geometry is given", () => {
  it("is the value with its span as low and high", () => {
    expect(tradeFigures.coatMgPerCm2).toEqual({ low: 2, mid: 3.3, high: 4.6 })
    expect(tradeFigures.density.side).toBe(tradeFigureSources.sideDensity.value)
  })
})
