import { expect, it } from "vitest"
import { longestRunInside } from "../../../geometry/scalp/longestRunInside"
import { arcOnBall, ballHairReach, ballHead, onBall } from "../../support/ball"

const outAndIn = [
  ...[2.1, 1.95, 1.85, 1.8, 1.95].map((reach, i) => onBall(reach, 0.02 * i)),
  ...[1.86, 1.7, 1.5, 1.3, 2.0].map((reach, i) => onBall(reach, 0.1 + 0.02 * i)),
]

it("keeps the longer of two parts inside and cuts it at the hairline", () => {
  const run = longestRunInside(ballHead.hairline, outAndIn)
  expect(run).toHaveLength(6)
  expect(Math.hypot(...run[0])).toBeCloseTo(ballHairReach, 3)
  expect(Math.hypot(...run[5])).toBeCloseTo(ballHairReach, 3)
  expect(run.slice(1, 5)).toEqual(outAndIn.slice(5, 9))
})

it("keeps a line that lies inside as it is, and nothing of one outside", () => {
  const inside = arcOnBall(1, 0, 2)
  expect(longestRunInside(ballHead.hairline, inside)).toEqual(inside)
  expect(longestRunInside(ballHead.hairline, arcOnBall(2.1, 0, 2))).toEqual([])
})
