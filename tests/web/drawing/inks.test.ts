import { describe, expect, it } from "vitest"
import { drawHead } from "../../../geometry/portrait/outline"
import { surfacePoint } from "../../../geometry/surface/frames"
import { facing, fixedViews, toView } from "../../../geometry/surface/views"
import { newPlan } from "../../../web/core/document/newPlan"
import { headOf } from "../../../web/core/figures/measured"
import { inks, mixColors, paper, shadeRgb, workingTints } from "../../../web/drawing/inks"

type Rgb = readonly number[]
const rgbOf = (color: string): Rgb => [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16))

/** WCAG 2.2, definitions of relative luminance and contrast ratio. */
const luminance = (rgb: Rgb) => {
  const [red, green, blue] = rgb.map((value) => {
    const share = value / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}
const contrast = (one: Rgb, other: Rgb) => {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

/** The paper under the darkest wash of the head in any of the drawn views. */
function darkestShade(): Rgb {
  const { axes } = headOf(newPlan(new Date()))
  const views = [fixedViews.front, fixedViews.left, fixedViews.back, fixedViews.top]
  const alpha = Math.max(...views.map((view) => Math.max(...drawHead(axes, view, 2).shade.alpha))) / 255
  return rgbOf(paper).map((value, i) => value * (1 - alpha) + shadeRgb[i] * alpha)
}

/** Machado, Oliveira and Fernandes 2009, IEEE TVCG 15(6), table 1: eyes without one kind of cone, in linear RGB. */
const eyes: Record<string, readonly Rgb[]> = {
  "most eyes": [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  "eyes without red cones": [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  "eyes without green cones": [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  "eyes without blue cones": [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

/** CIE L*a*b* of a colour as those eyes see it; IEC 61966-2-1 for the way to XYZ, white D65. */
function lab(color: string, eye: readonly Rgb[]): Rgb {
  const linear = rgbOf(color).map((value) => {
    const share = value / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  const through = (rows: readonly Rgb[], from: Rgb) =>
    rows.map((row) => row.reduce((sum, each, i) => sum + each * from[i], 0))
  const seen = through(eye, linear).map((value) => Math.min(1, Math.max(0, value)))
  const toXyz = [
    [0.4124, 0.3576, 0.1805],
    [0.2126, 0.7152, 0.0722],
    [0.0193, 0.1192, 0.9505],
  ]
  const [x, y, z] = through(toXyz, seen).map((value, i) => {
    const share = value / [0.9505, 1, 1.089][i]
    return share > 0.008856 ? Math.cbrt(share) : 7.787 * share + 16 / 116
  })
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

describe("the contrast of what is drawn on the head", () => {
  it("is reckoned as the standard does: black on white is 21, #767676 on white 4.54", () => {
    expect(contrast(rgbOf("#000000"), rgbOf("#ffffff"))).toBeCloseTo(21, 5)
    expect(contrast(rgbOf("#767676"), rgbOf("#ffffff"))).toBeCloseTo(4.54, 2)
  })

  // WCAG 2.2, 1.4.11: 3 to 1 for what is needed to understand a drawing.
  const lines = Object.entries(inks).filter(([, ink]) => !("opacity" in ink))
  // WCAG 2.2, 1.4.3: numbers are text.
  it.each(lines)("%s stands out from the paper", (name, { color }) => {
    expect(contrast(rgbOf(color), rgbOf(paper))).toBeGreaterThanOrEqual(name === "number" ? 4.5 : 3)
  })

  const shade = darkestShade()
  // The darkest shade of the head's own shading lies under the lines as well.
  it.each(lines)("%s stands out from the darkest shade of the head", (_, { color }) => {
    expect(contrast(rgbOf(color), shade)).toBeGreaterThanOrEqual(3)
  })
})

/** The darkest of the head's shade on the scalp inside the hairline: as much of 1 as it covers. */
function darkestOnScalp(): number {
  const { axes, surface, hairline } = headOf(newPlan(new Date()))
  const steps = Array.from({ length: 121 }, (_, i) => -2.4 + 0.04 * i)
  const scalp = steps
    .flatMap((u) => steps.map((v) => surfacePoint(u, v)))
    .filter((at) => hairline.contains(at))
  return Math.max(
    ...[fixedViews.front, fixedViews.left, fixedViews.back, fixedViews.top].flatMap((view) => {
      const { shade } = drawHead(axes, view, 2)
      return scalp
        .filter((at) => facing(view, surface, at) > 0)
        .map((at) => {
          const [x, y] = toView(view, surface, at)
          const column = Math.floor((x - shade.left) / shade.mmPerPixel)
          const row = Math.floor((shade.top - y) / shade.mmPerPixel)
          return (shade.alpha[row * shade.width + column] ?? 0) / 255
        })
    }),
  )
}

const onScalp = darkestOnScalp()
/** The head's shade lies over a wash. */
const shadedTint = (tint: string): Rgb =>
  rgbOf(tint).map((value, i) => value * (1 - onScalp) + shadeRgb[i] * onScalp)

describe("the washes of working sections", () => {
  const lines = Object.entries(inks).filter(([, ink]) => !("opacity" in ink))
  // WCAG 2.2, 1.4.11, for every line on every wash: the text of a number, 4.5 by 1.4.3, is darker than any line.
  it.each(lines)("%s stands out from each, in the head's darkest shade as well", (name, { color }) => {
    for (const tint of workingTints) {
      expect(contrast(rgbOf(color), rgbOf(tint))).toBeGreaterThanOrEqual(/number/.test(name) ? 4.5 : 3)
      expect(contrast(rgbOf(color), shadedTint(tint))).toBeGreaterThanOrEqual(3)
    }
  })
  // CIE 1976: a difference of 2.3 can just be seen; twice that is told side by side.
  it.each(Object.keys(eyes))("differ for %s from each other, from paper and from every mix", (eye) => {
    const seen = workingTints.map((tint) => lab(tint, eyes[eye]))
    const others = [paper, ...mixColors].map((color) => lab(color, eyes[eye]))
    for (const [i, one] of seen.entries())
      for (const other of [...seen.slice(0, i), ...others])
        expect(Math.hypot(...one.map((value, at) => value - other[at]))).toBeGreaterThan(2 * 2.3)
  })
})
