import { describe, expect, it } from "vitest"
import { fitAxes, tapeContradiction } from "../../../geometry/scalp/fit"
import { headMeasures, type TapeMm } from "../../../geometry/scalp/headMeasures"
import type { HeadFigures } from "../../../geometry/scalp/headSize"
import { headSurface } from "../../../geometry/scalp/headSurface"
import type { Vec3 } from "../../../geometry/surface/vec3"

/** One survey, so that sums can be done by hand: measures that scatter by themselves, and 2 % of hair under every tape. */
const figures: HeadFigures = {
  priors: [
    {
      meanMm: { lengthMm: 187, breadthMm: 144, heightMm: 124 },
      sdMm: { lengthMm: 6, breadthMm: 5, heightMm: 6 },
      correlation: { lengthBreadth: 0, lengthHeight: 0, breadthHeight: 0 },
      hairUnderTape: { aroundMm: 0.02, overMm: 0.02, frontToNapeMm: 0.02 },
    },
  ],
  tapeErrorMm: { aroundMm: 6, overMm: 8, frontToNapeMm: 10 },
  tapeToldBeyond: 3,
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

const overHair = (axes: Vec3) => {
  const { aroundMm, overMm, frontToNapeMm } = measure(axes)
  return { aroundMm: 1.02 * aroundMm, overMm: 1.02 * overMm, frontToNapeMm: 1.02 * frontToNapeMm }
}
const tapeFit = (tapes: TapeMm, changes: Partial<HeadFigures> = {}) =>
  fitAxes({ kind: "tape", ...tapes }, { ...figures, ...changes })

describe("a head fitted to three tapes", () => {
  it("has the axes of the head that was measured, where tapes do not err", () => {
    const tapeErrorMm = { aroundMm: 1e-4, overMm: 1e-4, frontToNapeMm: 1e-4 }
    for (const axes of [
      [1, 1, 1],
      [1.07, 0.93, 1.04],
      [0.88, 1.06, 0.95],
    ] as const) {
      const fitted = tapeFit(overHair(axes), { tapeErrorMm })
      for (let axis = 0; axis < 3; axis++) expect(Math.abs(fitted[axis] - axes[axis])).toBeLessThan(1e-6)
    }
  })

  it("is the survey's mean head where they read what that one's do", () => {
    const mean = fitAxes({ kind: "caliper", lengthMm: 187, breadthMm: 144, heightMm: 124 }, figures)
    const fitted = tapeFit(overHair(mean))
    for (let axis = 0; axis < 3; axis++) expect(fitted[axis]).toBeCloseTo(mean[axis], 9)
  })

  it("has the greatest probability: no step of a tenth of a millimetre makes it likelier", () => {
    const tapes = { aroundMm: 561, overMm: 343, frontToNapeMm: 352 }
    const { lengthMm, breadthMm, heightMm } = measure(tapeFit(tapes))
    // Minus twice the log of survey and tapes, written out: squares of what is off, in standard deviations.
    const unlikely = (l: number, b: number, h: number) => {
      const read = overHair(fitAxes({ kind: "caliper", lengthMm: l, breadthMm: b, heightMm: h }, figures))
      return (
        ((l - 187) / 6) ** 2 +
        ((b - 144) / 5) ** 2 +
        ((h - 124) / 6) ** 2 +
        ((tapes.aroundMm - read.aroundMm) / 6) ** 2 +
        ((tapes.overMm - read.overMm) / 8) ** 2 +
        ((tapes.frontToNapeMm - read.frontToNapeMm) / 10) ** 2
      )
    }
    const least = unlikely(lengthMm, breadthMm, heightMm)
    for (const step of [-0.1, 0.1]) {
      expect(unlikely(lengthMm + step, breadthMm, heightMm)).toBeGreaterThan(least)
      expect(unlikely(lengthMm, breadthMm + step, heightMm)).toBeGreaterThan(least)
      expect(unlikely(lengthMm, breadthMm, heightMm + step)).toBeGreaterThan(least)
    }
  })

  it("moves by less than a millimetre and a half when a tape errs by five", () => {
    const tapes = { aroundMm: 546, overMm: 336, frontToNapeMm: 361 }
    const [once, then] = [tapes, { ...tapes, frontToNapeMm: 366 }].map((each) => measure(tapeFit(each)))
    expect(Math.abs(then.breadthMm - once.breadthMm)).toBeLessThan(1)
    expect(Math.abs(then.lengthMm - once.lengthMm)).toBeLessThan(1.5)
  })

  it("grows when all three do", () => {
    const small = tapeFit({ aroundMm: 540, overMm: 330, frontToNapeMm: 360 })
    const large = tapeFit({ aroundMm: 594, overMm: 363, frontToNapeMm: 396 })
    for (let axis = 0; axis < 3; axis++) {
      expect(large[axis] / small[axis]).toBeGreaterThan(1.05)
      expect(large[axis] / small[axis]).toBeLessThan(1.1)
    }
  })
})

describe("a tape that contradicts the other two", () => {
  const mean = overHair(fitAxes({ kind: "caliper", lengthMm: 187, breadthMm: 144, heightMm: 124 }, figures))
  const contradiction = (tapes: TapeMm) => tapeContradiction({ kind: "tape", ...tapes }, figures)

  it("is told, by how much it reads more than they foretell, and still moves the head", () => {
    const long = { ...mean, overMm: mean.overMm + 50 }
    const told = contradiction(long)
    expect(told).toMatchObject({ code: "tape-contradicts", which: "overMm" })
    expect(told?.byMm).toBeCloseTo(50, 0)
    expect(tapeFit(long)[0]).toBeGreaterThan(tapeFit(mean)[0])
  })

  it("is taken with its weight and told by name, however far it stands off, as long as a head has such a tape", () => {
    const spans = { aroundMm: [425, 720], overMm: [265, 445], frontToNapeMm: [280, 475] } as const
    for (const which of ["aroundMm", "overMm", "frontToNapeMm"] as const)
      for (const mm of spans[which]) {
        const tapes = { ...mean, [which]: mm }
        expect(contradiction(tapes)).toMatchObject({ code: "tape-contradicts", which })
        // Toward the reading, and by less than it asks for.
        const [fitted, before] = [measure(tapeFit(tapes))[which], measure(tapeFit(mean))[which]]
        const asked = mm / 1.02 - before
        expect((fitted - before) / asked).toBeGreaterThan(0.05)
        expect((fitted - before) / asked).toBeLessThan(0.9)
      }
  })

  it("is not, where tapes go together, nor of a caliper", () => {
    expect(contradiction(mean)).toBeNull()
    expect(contradiction({ ...mean, frontToNapeMm: mean.frontToNapeMm + 20 })).toBeNull()
    const caliper = { kind: "caliper", lengthMm: 187, breadthMm: 144, heightMm: 124 } as const
    expect(tapeContradiction(caliper, figures)).toBeNull()
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

  it("is refused for inches written as centimetres and for a digit too many or too few, by the tape that was", () => {
    const usual = [546, 336, 361] as const
    const names = [/^Around the head/, /^Ear to ear/, /^Front hairline/]
    for (const slip of [1 / 2.54, 2.54, 10, 0.1])
      for (let i = 0; i < 3; i++) {
        const [around, over, nape] = usual.map((mm, j) => (i === j ? mm * slip : mm))
        expect(tape(around, over, nape)).toThrow(names[i])
      }
    // Two of three in inches: one of the two is named, not the good one.
    expect(tape(546, 132, 142)).toThrow(/^(Ear to ear|Front hairline)/)
    expect(tape(215, 132, 142)).toThrow(RangeError)
  })

  it("is refused when a measure is no length", () => {
    expect(tape(546, Number.NaN, 361)).toThrow(RangeError)
    expect(tape(546, 336, 0)).toThrow(/^Front hairline to nape, 0 mm/)
    expect(tape(-546, 336, 361)).toThrow(/^Around the head/)
  })
})
