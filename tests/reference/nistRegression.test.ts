import { readFileSync } from "node:fs"
import { describe, expect, test } from "vitest"
import type { Vector } from "../../web/core/statistics/matrix"
import { coefficient, flatBelief, type Observation, update } from "../../web/core/statistics/regression"

/** Certified values of the NIST Statistical Reference Datasets: linear regression (public domain). */

function readRows(name: string, toX: (x: number) => Vector): Observation[] {
  const text = readFileSync(new URL(`data/nist_${name}.csv`, import.meta.url), "utf8")
  const lines = text.trim().split("\n").slice(1)
  return lines.map((line) => {
    const [y, x] = line.split(",").map(Number)
    return { x: toX(x), y, weight: 1 }
  })
}

const relative = (found: number, certified: number) => Math.abs(found / certified - 1)

const sets = [
  {
    name: "norris",
    toX: (x: number) => [1, x],
    estimates: [-0.262323073774029, 1.00211681802045],
    errors: [0.232818234301152, 0.429796848199937e-3],
    residualSd: 0.884796396144373,
    rSquared: 0.999993745883712,
    df: 34,
  },
  {
    name: "noint1",
    toX: (x: number) => [x],
    estimates: [2.07438016528926],
    errors: [0.0165289256198347],
    residualSd: 3.56753034006338,
    rSquared: 0.999365492298663,
    df: 10,
  },
  {
    name: "noint2",
    toX: (x: number) => [x],
    estimates: [0.727272727272727],
    errors: [0.0420827318078432],
    residualSd: 0.369274472937998,
    rSquared: 0.993348115299335,
    df: 2,
  },
]

describe.each(sets)("$name with a flat prior is least squares", (set) => {
  const rows = readRows(set.name, set.toX)
  const belief = update(flatBelief(set.estimates.length), rows)

  test("estimates and standard errors to 1e-9", () => {
    set.estimates.forEach((certified, j) => {
      const { centre, scale, df } = coefficient(belief, j)
      expect(relative(centre, certified)).toBeLessThan(1e-9)
      expect(relative(scale, set.errors[j])).toBeLessThan(1e-9)
      expect(df).toBe(set.df)
    })
  })

  test("residual standard deviation to 1e-9, 1 - R2 to 1e-7", () => {
    expect(relative(Math.sqrt(belief.scale / belief.shape), set.residualSd)).toBeLessThan(1e-9)
    // R2 is about the mean with an intercept, about the origin without (as NIST has it).
    const mean = set.estimates.length === 2 ? rows.reduce((sum, { y }) => sum + y, 0) / rows.length : 0
    const total = rows.reduce((sum, { y }) => sum + (y - mean) ** 2, 0)
    // The certified R2 has 15 digits, so 1 - R2 has at least 9.
    expect(relative((2 * belief.scale) / total, 1 - set.rSquared)).toBeLessThan(1e-7)
  })
})

test("NoInt2 by hand: 56/77, and 41 - 56^2/77 left over", () => {
  const belief = update(
    flatBelief(1),
    readRows("noint2", (x) => [x]),
  )
  expect(belief.mean[0]).toBeCloseTo(56 / 77, 14)
  expect(2 * belief.scale).toBeCloseTo(41 - 56 ** 2 / 77, 13)
})
