import { describe, expect, it } from "vitest"
import { activationFrom, halfLifeMin, temperatureFactor } from "../../web/core/lift/lift"
import { weighByRows } from "../../web/core/lift/liftGrid"
import { readCsv } from "../support/readCsv"

describe("activation energy and temperature", () => {
  // exp(Ea/R (1/298.15 - 1/308.15)), worked by hand to two decimals; 53 to 71 kJ/mol is the span of Q10 2.0 to 2.5.
  const factors = [
    [40, 1.69],
    [53, 2.0],
    [60, 2.19],
    [17 * 4.184, 2.54], // 17 kcal/mol, cotton in alkaline peroxide (Cellulose 2000;7:263); 71 kJ/mol when rounded
    [80, 2.85],
    [140, 6.25],
  ]
  for (const [activationKJ, factor] of factors)
    it(`speeds up ${factor} times from 25 to 35 C at ${activationKJ.toFixed(0)} kJ/mol, and finds its way back`, () => {
      expect(temperatureFactor(activationKJ, 25, 35)).toBeCloseTo(factor, 2)
      expect(activationFrom(temperatureFactor(activationKJ, 25, 35), 25, 35)).toBeCloseTo(activationKJ, 9)
      expect(temperatureFactor(activationKJ, 60, 90) * temperatureFactor(activationKJ, 90, 60)).toBeCloseTo(
        1,
        12,
      )
    })
  it("doubles, and takes two and a half times, at the ends of the prior", () => {
    // Q10 2.0 to 2.5 is 53 to 70 kJ/mol: R ln 2.5 / (1/298.15 - 1/308.15) = 0.0083145 x 0.91629 / 0.00010884
    expect(activationFrom(2, 25, 35)).toBeCloseTo(53, 0)
    expect(activationFrom(2.5, 25, 35)).toBeCloseTo(70, 0)
  })
})

/** Peroxide left in a bath with hair, 32.2 C, pH 9.4: Edman and Marti 1961, Table 1. */
const bath = readCsv("peroxide_bath_decay_1961.csv")
const readings = (column: string) =>
  bath
    .filter((row) => row[column] !== "")
    .map((row) => ({ minutes: Number(row.minutes), seen: Number(row[column]) }))

describe("the peroxide bath", () => {
  const plain = readings("h2o2_pct_no_edta")
  const stabilised = readings("h2o2_pct_with_0p1pct_edta")

  it("halves in 130 minutes by the reading at 120, in 164 by the one at 240", () => {
    // 120 ln 2 / ln(5.92/3.12) = 83.178/0.64051; 240 ln 2 / ln(5.92/2.15) = 166.355/1.01287
    expect(halfLifeMin(5.92, 3.12, 120)).toBeCloseTo(129.9, 1)
    expect(halfLifeMin(5.92, 2.15, 240)).toBeCloseTo(164.2, 1)
  })
  it("halves in 450 to 510 minutes with a chelant, by every reading from the hour on", () => {
    const halves = stabilised
      .filter(({ minutes }) => minutes >= 60)
      .map(({ minutes, seen }) => halfLifeMin(6.08, seen, minutes))
    expect(halves).toHaveLength(3)
    for (const half of halves) expect(half).toSatisfy((minutes: number) => minutes > 450 && minutes < 510)
  })
  it("is fitted with its misfit: one half-life does not describe a bath without a chelant", () => {
    // Least squares by an outside optimiser (SciPy 1.x, minimize_scalar): 148.9 min, root mean square 0.197 % of 5.92 %,
    // +0.27 at 120 and -0.21 at 240 minutes: the loss slows down. With a chelant 465.9 min and 0.039 %.
    expect(fitHalfLife(plain)).toEqual({ halfMin: 149, rms: expect.closeTo(0.197, 3) })
    expect(fitHalfLife(stabilised)).toEqual({ halfMin: 466, rms: expect.closeTo(0.0386, 3) })
  })
})

/** The likeliest of the whole minutes, weighed as a strand test weighs lift, and how far the readings lie from it. */
function fitHalfLife(rows: readonly { minutes: number; seen: number }[]) {
  const grid = Array.from({ length: 900 }, (_, at) => ({ of: at + 1, weight: 1 / 900 }))
  const foretell = (halfMin: number, minutes: number) => rows[0].seen * 2 ** (-minutes / halfMin)
  const weighed = weighByRows(grid, rows, { foretell, sd: 0.02 })
  const halfMin = weighed.reduce((best, row) => (row.weight > best.weight ? row : best)).of
  const misses = rows.slice(1).map(({ minutes, seen }) => (foretell(halfMin, minutes) - seen) ** 2)
  return { halfMin, rms: Math.sqrt(misses.reduce((a, b) => a + b, 0) / misses.length) }
}
