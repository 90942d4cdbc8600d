import { expect, it } from "vitest"
import { leastBySimplex } from "../../../../web/core/statistics/leastBySimplex"

it("finds the bottom of Rosenbrock's valley, (1, 1), from his own start", () => {
  // Rosenbrock, Comput J 1960;3:175.
  const valley = ([x, y]: readonly number[]) => 100 * (y - x * x) ** 2 + (1 - x) ** 2
  const [x, y] = leastBySimplex(valley, [-1.2, 1], 0.5)
  expect(x).toBeCloseTo(1, 2)
  expect(y).toBeCloseTo(1, 2)
})

it("finds the bottom of a tilted bowl of eight unknowns, by hand at 1 to 8", () => {
  const bowl = (at: readonly number[]) =>
    at.reduce((sum, value, j) => sum + (j + 1) * (value - (j + 1)) ** 2, 0) + (at[0] - 1 + at[7] - 8) ** 2
  const found = leastBySimplex(bowl, Array(8).fill(0), 1)
  found.forEach((value, j) => {
    expect(value).toBeCloseTo(j + 1, 1)
  })
})
