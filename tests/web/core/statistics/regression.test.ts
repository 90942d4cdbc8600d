import fc from "fast-check"
import { inverse, Matrix, SingularValueDecomposition } from "ml-matrix"
import { describe, expect, test } from "vitest"
import { diagonal } from "../../../../web/core/statistics/matrix"
import {
  type Belief,
  coefficient,
  flatBelief,
  logEvidence,
  meanVariance,
  type Observation,
  othersOn,
  predicted,
  update,
} from "../../../../web/core/statistics/regression"
import { studentQuantile } from "../../../../web/core/statistics/studentT"

// Normal-inverse-gamma regression: Gelman et al., Bayesian Data Analysis, ch. 14; Bishop, PRML, section 3.3.
/** Grams of hair and grams of product of six foils; expected figures worked out apart with 30 digits. */
const hairG = [0.4, 0.6, 0.8, 1.0, 1.2, 0.5]
const productG = [1.3, 1.7, 2.5, 2.9, 3.7, 1.4]
const foils: Observation[] = hairG.map((x, i) => ({ x: [x], y: productG[i], weight: 1 }))
const foilPrior: Belief = { mean: [2.5], precision: [[1]], shape: 3, scale: 0.1 }

const two: Observation[] = foils.map(({ x, y }) => ({ x: [1, x[0]], y, weight: 1 }))
const twoPrior: Belief = { mean: [0.3, 2.5], precision: diagonal([2, 1]), shape: 3, scale: 0.1 }

describe("the worked example", () => {
  const belief = update(foilPrior, foils)
  const reach = studentQuantile(0.975, 12)

  test("the posterior", () => {
    expect(belief.precision[0][0]).toBeCloseTo(4.85, 12)
    expect(belief.mean[0]).toBeCloseTo(2.90309278351, 11)
    expect(belief.shape).toBe(6)
    expect(belief.scale).toBeCloseTo(0.232226804124, 12)
    expect(meanVariance(belief)).toBeCloseTo(0.0464453608247, 13)
  })

  test("the slope and its 95 % interval", () => {
    const { centre, scale, df } = coefficient(belief, 0)
    expect([df, scale]).toEqual([12, expect.closeTo(0.0893325391288, 12)])
    expect(centre - reach * scale).toBeCloseTo(2.708453901, 8)
    expect(centre + reach * scale).toBeCloseTo(3.097731666, 8)
  })

  test("the next foil of 0.9 g and its 95 % interval", () => {
    const { centre, scale } = predicted(belief, [0.9], 1)
    expect(centre).toBeCloseTo(2.61278350515, 11)
    expect(scale).toBeCloseTo(0.212528850788, 12)
    expect(centre - reach * scale).toBeCloseTo(2.149722918, 8)
    expect(centre + reach * scale).toBeCloseTo(3.075844092, 8)
  })

  test("the evidence", () => {
    expect(logEvidence(foilPrior, foils)).toBeCloseTo(-0.356286583196, 11)
  })

  test("least squares beside it", () => {
    const plain = update(flatBelief(1), foils)
    expect(plain.mean[0]).toBeCloseTo(3.00779220779, 11)
    expect(coefficient(plain, 0).scale).toBeCloseTo(0.0557201885893, 12)
    expect(Math.sqrt(plain.scale / plain.shape)).toBeCloseTo(0.109330904841, 11)
  })
})

describe("laws", () => {
  test("a prior that hardly weighs anything is least squares to 1e-6", () => {
    const faint: Belief = { mean: [0, 0], precision: diagonal([1e-12, 1e-12]), shape: -1, scale: 0 }
    const [near, plain] = [update(faint, two), update(flatBelief(2), two)]
    for (const j of [0, 1]) {
      expect(Math.abs(near.mean[j] / plain.mean[j] - 1)).toBeLessThan(1e-6)
      expect(Math.abs(coefficient(near, j).scale / coefficient(plain, j).scale - 1)).toBeLessThan(1e-6)
    }
  })

  test("rows one at a time are rows all at once, to 1e-12", () => {
    const once = update(twoPrior, two)
    const stepped = two.reduce((belief, row) => update(belief, [row]), twoPrior)
    expect(stepped.shape).toBe(once.shape)
    expect(stepped.scale).toBeCloseTo(once.scale, 12)
    once.mean.forEach((value, j) => {
      expect(stepped.mean[j]).toBeCloseTo(value, 12)
      once.precision[j].forEach((cell, k) => {
        expect(stepped.precision[j][k]).toBeCloseTo(cell, 12)
      })
    })
  })

  test("no rows is the prior; rows keep the precision symmetric, the scale above 0, the shape exact", () => {
    expect(update(twoPrior, [])).toEqual(twoPrior)
    const { precision, scale, shape } = update(twoPrior, two)
    expect(precision[0][1]).toBe(precision[1][0])
    expect(precision[0][0] * precision[1][1] - precision[0][1] ** 2).toBeGreaterThan(0)
    expect(scale).toBeGreaterThan(0)
    expect(shape).toBe(3 + 6 / 2)
  })

  test("twice the grams, prior and all, is twice the figure and twice the range", () => {
    const doubled = foils.map((row) => ({ ...row, y: 2 * row.y }))
    const [single, double] = [
      coefficient(update(foilPrior, foils), 0),
      coefficient(update({ ...foilPrior, mean: [5], scale: 0.4 }, doubled), 0),
    ]
    expect(double.centre).toBeCloseTo(2 * single.centre, 13)
    expect(double.scale).toBeCloseTo(2 * single.scale, 13)
  })

  test("a weight of 3 is three equal rows, for mean and precision", () => {
    const [row, ...others] = two
    const weighted = update(twoPrior, [{ ...row, weight: 3 }, ...others])
    const repeated = update(twoPrior, [row, row, row, ...others])
    expect(weighted.mean[1]).toBeCloseTo(repeated.mean[1], 12)
    expect(weighted.scale).toBeCloseTo(repeated.scale, 12)
  })

  test("what the others say of a row is the prediction learnt without it", () => {
    two.forEach((row, i) => {
      const others = predicted(
        update(
          twoPrior,
          two.filter((_, j) => j !== i),
        ),
        row.x,
        row.weight,
      )
      const found = othersOn(update(twoPrior, two), row)
      expect(found.df).toBe(others.df)
      expect(found.centre).toBeCloseTo(others.centre, 11)
      expect(found.scale).toBeCloseTo(others.scale, 11)
    })
  })

  test("rows that tell nothing of a coefficient are refused under a flat prior", () => {
    expect(() => update(flatBelief(2), [two[0]])).toThrow(/adds no information/)
  })
})

describe("ml-matrix as an oracle, on random rows", () => {
  const cell = fc.double({ min: -10, max: 10, noNaN: true })
  const row = fc.record({
    x: fc.tuple(cell, cell, cell),
    y: cell,
    weight: fc.double({ min: 0.1, max: 10, noNaN: true }),
  })

  test("mean, scale and covariance", () => {
    const prior: Belief = { mean: [0.3, 2, 3], precision: diagonal([4, 1.5, 0.7]), shape: 3, scale: 0.4 }
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 25 }), (rows) => {
        const root = rows.map(({ weight }) => Math.sqrt(weight))
        const priorRoot = [2, Math.sqrt(1.5), Math.sqrt(0.7)]
        // The prior as three more rows of a least squares problem, solved by singular values.
        const design = new Matrix([
          ...rows.map(({ x }, i) => x.map((value) => value * root[i])),
          ...priorRoot.map((value, j) => [0, 1, 2].map((k) => (k === j ? value : 0))),
        ])
        const target = Matrix.columnVector([
          ...rows.map(({ y }, i) => y * root[i]),
          ...priorRoot.map((value, j) => value * prior.mean[j]),
        ])
        const solution = new SingularValueDecomposition(design).solve(target)
        const misfit = Matrix.sub(target, design.mmul(solution)).norm() ** 2
        const covariance = inverse(design.transpose().mmul(design))

        const belief = update(prior, rows)
        expect(belief.scale).toBeCloseTo(0.4 + misfit / 2, 8)
        for (const j of [0, 1, 2]) {
          expect(belief.mean[j]).toBeCloseTo(solution.get(j, 0), 9)
          const expected = Math.sqrt((belief.scale / belief.shape) * covariance.get(j, j))
          expect(coefficient(belief, j).scale).toBeCloseTo(expected, 9)
        }
      }),
    )
  })
})
