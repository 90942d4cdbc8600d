import { expect, it } from "vitest"
import { pointsEach } from "../../../geometry/strands/grow"
import { opennessOf } from "../../../geometry/strands/openness"

/**
 * Strands 200 mm long that hang straight down on the right, so many side by side at each distance from the head; the
 * rest of eight thousand hang far off.
 */
function hanging(depthsMm: readonly number[], each: number) {
  const count = 8000
  const points = new Float32Array(3 * pointsEach * count).fill(-400)
  depthsMm.forEach((x, layer) => {
    for (let i = 0; i < each; i++)
      for (let k = 0; k < pointsEach; k++)
        points.set(
          [x, -112 + (200 * i) / each, 20 - (200 * k) / (pointsEach - 1)],
          3 * ((layer * each + i) * pointsEach + k),
        )
  })
  return { count, points, lengthsMm: new Float32Array(count).fill(200) }
}

const middleOf = (open: Uint8Array, strand: number) => open[strand * pointsEach + (pointsEach >> 1)]

it("lies the less open the more hair lies over it, and fully open outermost", () => {
  const open = opennessOf(hanging([60, 76, 92, 108], 200))
  const [deepest, deep, near, outermost] = [100, 300, 500, 700].map((strand) => middleOf(open, strand))
  expect(deepest).toBeLessThan(deep)
  expect(deep).toBeLessThan(near)
  expect(near).toBeLessThan(outermost)
  expect(outermost).toBe(255)
})

it("is alike on both sides", () => {
  const right = hanging([60, 76], 100)
  const left = { ...right, points: right.points.map((value, i) => (i % 3 === 0 ? -value : value)) }
  const [one, two] = [opennessOf(right), opennessOf(left)]
  expect(Math.abs(middleOf(one, 50) - middleOf(two, 50))).toBeLessThan(12)
})
