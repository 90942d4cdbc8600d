import { describe, expect, it } from "vitest"
import { fitAxes } from "../../../geometry/scalp/fit"
import { headMeasures } from "../../../geometry/scalp/headMeasures"
import type { HeadFigures } from "../../../geometry/scalp/headSize"
import { headSurface } from "../../../geometry/scalp/headSurface"
import type { Vec3 } from "../../../geometry/surface/vec3"

const figures: HeadFigures = {
  hairUnderTape: 0.02,
  usualMm: {
    lengthMm: [176, 208],
    breadthMm: [137, 161],
    heightMm: [114, 140],
    aroundMm: [523, 593],
    overMm: [315, 375],
    frontToNapeMm: [343, 394],
  },
  axisFactor: [0.75, 1.3],
}
const measure = (axes: Vec3) => headMeasures(headSurface(axes))

describe("a head fitted to a caliper", () => {
  it("has the length, breadth and height it was given", () => {
    const wanted = { lengthMm: 201.5, breadthMm: 141.25, heightMm: 133 }
    const measured = measure(fitAxes({ kind: "caliper", ...wanted }, figures))
    expect(measured.lengthMm).toBeCloseTo(201.5, 9)
    expect(measured.breadthMm).toBeCloseTo(141.25, 9)
    expect(measured.heightMm).toBeCloseTo(133, 9)
  })
})

describe("a head fitted to three tapes", () => {
  it("has the axes of the head that was measured", () => {
    for (const axes of [
      [1, 1, 1],
      [1.07, 0.93, 1.04],
      [0.88, 1.06, 0.95],
    ] as const) {
      const { aroundMm, overMm, frontToNapeMm } = measure(axes)
      const overHair = {
        aroundMm: 1.02 * aroundMm,
        overMm: 1.02 * overMm,
        frontToNapeMm: 1.02 * frontToNapeMm,
      }
      const fitted = fitAxes({ kind: "tape", ...overHair }, figures)
      for (let axis = 0; axis < 3; axis++) expect(Math.abs(fitted[axis] - axes[axis])).toBeLessThan(1e-6)
    }
  })

  it("reads as it was taken, less the hair, to a hundredth of a millimetre", () => {
    const measured = measure(
      fitAxes({ kind: "tape", aroundMm: 561, overMm: 343, frontToNapeMm: 372 }, figures),
    )
    expect(Math.abs(measured.aroundMm - 561 / 1.02)).toBeLessThan(0.01)
    expect(Math.abs(measured.overMm - 343 / 1.02)).toBeLessThan(0.01)
    expect(Math.abs(measured.frontToNapeMm - 372 / 1.02)).toBeLessThan(0.01)
  })

  it("grows as a whole when all three do", () => {
    const small = fitAxes({ kind: "tape", aroundMm: 540, overMm: 330, frontToNapeMm: 360 }, figures)
    const large = fitAxes({ kind: "tape", aroundMm: 594, overMm: 363, frontToNapeMm: 396 }, figures)
    for (let axis = 0; axis < 3; axis++) expect(large[axis] / small[axis]).toBeCloseTo(1.1, 6)
  })
})

describe("a size no head has", () => {
  const tape = (aroundMm: number, overMm: number, frontToNapeMm: number) => () =>
    fitAxes({ kind: "tape", aroundMm, overMm, frontToNapeMm }, figures)

  it("is refused by the measure at fault and its usual span", () => {
    expect(tape(900, 336, 361)).toThrow(/^Around the head, 900 mm, .* usual is 523 to 593 mm\.$/)
    expect(tape(546, 336, 500)).toThrow(/^Front hairline to nape, 500 mm, .* 343 to 394 mm\.$/)
    expect(tape(546, 190, 361)).toThrow(/^Ear to ear over the top, 190 mm, .* 315 to 375 mm\.$/)
    const flat = { kind: "caliper", lengthMm: 187, breadthMm: 144, heightMm: 20 } as const
    expect(() => fitAxes(flat, figures)).toThrow(/^Height from ear to top, 20 mm, .* 114 to 140 mm\.$/)
  })

  it("is refused when a measure is no length", () => {
    expect(tape(546, Number.NaN, 361)).toThrow(RangeError)
    expect(tape(546, 336, 0)).toThrow(/^Front hairline to nape, 0 mm/)
    expect(tape(-546, 336, 361)).toThrow(/^Around the head/)
  })
})
