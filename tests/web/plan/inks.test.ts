import { describe, expect, it } from "vitest"
import { drawHead } from "../../../geometry/head/outline"
import { fixedViews } from "../../../geometry/views"
import { inks, paper, shadeRgb } from "../../../web/plan/inks"
import { headOf } from "../../../web/plan/measured"
import { newPlan } from "../../../web/plan/newPlan"

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
  const { axes } = headOf(newPlan())
  const views = [fixedViews.front, fixedViews.left, fixedViews.back, fixedViews.top]
  const alpha = Math.max(...views.map((view) => Math.max(...drawHead(axes, view, 2).shade.alpha))) / 255
  return rgbOf(paper).map((value, i) => value * (1 - alpha) + shadeRgb[i] * alpha)
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
