import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { betaShare, logGamma } from "../../../../web/core/statistics/gamma"
import { studentBelow, studentQuantile } from "../../../../web/core/statistics/studentT"

const relative = (found: number, expected: number) => Math.abs(found / expected - 1)

describe("log gamma", () => {
  test("closed forms: factorials and half integers", () => {
    expect(logGamma(1)).toBeCloseTo(0, 14)
    expect(logGamma(2)).toBeCloseTo(0, 14)
    expect(relative(logGamma(11), Math.log(3628800))).toBeLessThan(1e-14)
    expect(relative(logGamma(0.5), Math.log(Math.PI) / 2)).toBeLessThan(1e-14)
    expect(relative(logGamma(4.5), Math.log((105 / 16) * Math.sqrt(Math.PI)))).toBeLessThan(1e-14)
  })
})

describe("incomplete beta", () => {
  test("closed forms: I_x(1, b) = 1 - (1 - x)^b, I_x(2, 2) = x^2 (3 - 2x)", () => {
    expect(betaShare(0.3, 1, 4)).toBeCloseTo(1 - 0.7 ** 4, 14)
    expect(betaShare(0.37, 2, 2)).toBeCloseTo(0.37 ** 2 * (3 - 0.74), 14)
    expect([betaShare(0, 2, 3), betaShare(1, 2, 3)]).toEqual([0, 1])
  })
})

describe("Student's t", () => {
  test.each([0.001, 0.1, 0.4, 0.6, 0.9, 0.975, 0.9995])("closed forms at probability %d", (p) => {
    expect(relative(studentQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)))).toBeLessThan(1e-11)
    const alpha = 4 * p * (1 - p)
    expect(relative(studentQuantile(p, 2), (2 * p - 1) * Math.sqrt(2 / alpha))).toBeLessThan(1e-11)
    const q = Math.cos(Math.acos(Math.sqrt(alpha)) / 3) / Math.sqrt(alpha)
    expect(relative(studentQuantile(p, 4), Math.sign(p - 0.5) * 2 * Math.sqrt(q - 1))).toBeLessThan(1e-11)
  })

  test("printed tables: df 12 and 5 at 97.5 %, df 30 at 95 %, the normal limit", () => {
    expect(studentQuantile(0.975, 12)).toBeCloseTo(2.17881283, 8)
    expect(studentQuantile(0.975, 5)).toBeCloseTo(2.571, 3)
    expect(studentQuantile(0.95, 30)).toBeCloseTo(1.697, 3)
    expect(studentQuantile(0.975, 1e8)).toBeCloseTo(1.959964, 6)
  })

  test("the middle is 0, never -0", () => {
    expect(Object.is(studentQuantile(0.5, 7), 0)).toBe(true)
  })

  test("there and back, for any df", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 0.6, max: 400, noNaN: true }),
        (p, df) => {
          expect(studentBelow(studentQuantile(p, df), df)).toBeCloseTo(p, 11)
        },
      ),
    )
  })
})
