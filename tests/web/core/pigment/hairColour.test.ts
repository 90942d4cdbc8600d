import { describe, expect, it } from "vitest"
import { finishTones } from "../../../../web/core/document/consultation"
import { colourOf, colourRange, type HairShade } from "../../../../web/core/pigment/hairColour"
import { hexOf, screenBytes } from "../../../../web/core/pigment/screenColour"
import { chromaOf, ciede2000, hueOf, labOf } from "../../../support/cielab"

const levels = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]
const natural = (level: number, whiteShare = 0): HairShade => ({ kind: "natural", level, whiteShare })
const lifted = (level: number): HairShade => ({ kind: "lifted", level, toned: null })
const lab = (shade: HairShade) => labOf(colourOf(shade))
const steps = (values: readonly number[]) => values.slice(1).map((value, i) => value - values[i])

describe.each([
  ["hair as it grew", natural],
  ["lifted hair", lifted],
] as const)("%s", (_, shade) => {
  it("is the lighter the higher its level, also between two", () => {
    const lightness = levels.flatMap((level) => [level, level + 0.5]).map((level) => lab(shade(level))[0])
    expect(Math.min(...steps(lightness.slice(0, -1)))).toBeGreaterThan(0)
  })

  it("is told from the next level by eye", () => {
    const apart = levels.slice(1).map((level) => ciede2000(lab(shade(level)), lab(shade(level - 1))))
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(2)
  })

  it("has a range a level either way, as far as there are levels", () => {
    const { darker, mid, lighter } = colourRange(shade(6))
    expect([darker, mid, lighter]).toEqual([5, 6, 7].map((level) => colourOf(shade(level))))
    expect(colourRange(shade(10)).lighter).toEqual(colourOf(shade(10)))
  })
})

describe("lifted hair", () => {
  it("runs from red over orange and yellow to pale yellow", () => {
    const hues = levels.map((level) => hueOf(lab(lifted(level))))
    expect(Math.min(...steps(hues))).toBeGreaterThan(0)
    expect([hues[2] < 50, hues[5] > 55 && hues[5] < 75, hues[9] > 85]).toEqual([true, true, true])
    expect(chromaOf(lab(lifted(10)))).toBeLessThan(chromaOf(lab(lifted(8))))
  })

  it("is warmer than hair that grew to the level", () => {
    for (const level of [4, 5, 6, 7, 8, 9, 10])
      expect(chromaOf(lab(lifted(level)))).toBeGreaterThan(chromaOf(lab(natural(level))))
  })

  it.each(levels.slice(1))("loses of its hue by toner at level %i, most by a cool one", (level) => {
    const chroma = [null, "warm", "neutral", "cool"] as const
    const each = chroma.map((toned) => chromaOf(lab({ kind: "lifted", level, toned })))
    expect(Math.max(...steps(each))).toBeLessThan(0)
    expect(chroma.length).toBe(finishTones.length + 1)
  })
})

it("mixes white hairs in by their share of the light", () => {
  const [dark, white] = [colourOf(natural(4)), colourOf(natural(4, 1))]
  expect(colourOf(natural(4, 0.25))[0]).toBeCloseTo(dark[0] * 0.75 + white[0] * 0.25, 12)
  expect(labOf(white)[0]).toBeGreaterThan(90)
})

it("is written for the screen by the curve of sRGB", () => {
  expect(screenBytes([0, 0.2140411, 1])).toEqual([0, 127, 255])
  expect(hexOf(natural(5))).toMatch(/^#[0-9a-f]{6}$/)
})
