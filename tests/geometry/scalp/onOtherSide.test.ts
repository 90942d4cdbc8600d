import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../geometry/parting/parting"
import { alongMm } from "../../../geometry/placing/technique"
import { onOtherSide } from "../../../geometry/scalp/onOtherSide"
import { mirror } from "../../../geometry/surface/surfacePath"
import { randomMoves, withMoves } from "../../support/movedHeads"
import { randomHeads } from "../../support/randomHeads"

const parallel = (head: ReturnType<typeof withMoves>, behindMm: number) => {
  const made = hairlineParting(head, {
    fromAlongMm: alongMm(head, 0.4),
    toAlongMm: alongMm(head, 1.8),
    behindMm,
  })
  if ("refused" in made) throw new Error(made.refused)
  return made.parting
}

describe("a parting told on the other side", () => {
  const [even] = randomHeads(1)
  it("is its exact mirror image where both sides are alike", () =>
    expect(onOtherSide(even, parallel(even, 12))).toEqual(mirror(parallel(even, 12))))

  it.each([4, 12, 25])("lies %d mm behind the hairline there, where the sides differ", (behindMm) => {
    randomHeads(8).forEach((drawn, i) => {
      const head = withMoves(drawn, randomMoves(8, 3 + i))
      const image = onOtherSide(head, parallel(head, behindMm))
      const strays = image
        .map((at) => head.hairline.coordinates(at))
        .map((at) => Math.abs(at.behindMm - behindMm))
      expect(image.every(head.hairline.contains)).toBe(true)
      expect(Math.max(...strays)).toBeLessThan(1 + 0.15 * behindMm)
      expect(image.every((at) => head.hairline.coordinates(at).alongMm < 0)).toBe(true)
    })
  })
})
