import { describe, expect, it } from "vitest"
import { lengthCmAt } from "../../../geometry/hair/hair"
import { usualWhorlAt, type WornParting } from "../../../geometry/parting/wornParting"
import type { Head } from "../../../geometry/scalp/head"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { headDistance } from "../../../geometry/scalp/headDistanceField"
import { bustDistance, bustFromMm } from "../../../geometry/strands/bust"
import type { WornFront } from "../../../geometry/strands/gather"
import { growStrands, pointsEach, type Strands } from "../../../geometry/strands/grow"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { strandFigures } from "../../../presets/placement/strands"
import { newPlan } from "../../../web/core/document/newPlan"
import { wholeHead } from "../../../web/core/figures/wholeHead"

const { hair } = newPlan(new Date())
const usual = makeHeadFromAxes([1, 1, 1], "round")
const few = { ...strandFigures, count: 2500 }

type Asked = {
  head?: Head
  parting?: WornParting
  lengthCm?: typeof hair.lengthCm
  seed?: number
  strands?: typeof few
  front?: WornFront
}
const grow = ({
  head = usual,
  parting = { kind: "centre" },
  lengthCm = hair.lengthCm,
  seed = 1,
  strands = few,
  front = "cheek",
}: Asked) =>
  growStrands({
    head,
    hair: { ...hair, lengthCm },
    worn: { parting, whorl: { at: usualWhorlAt, turns: "clockwise" }, front },
    figures: tradeFigures,
    strands,
    seed,
  })

const pointOf = ({ points }: Strands, strand: number, k: number) => {
  const i = 3 * (strand * pointsEach + k)
  return [points[i], points[i + 1], points[i + 2]] as const
}

function* eachPoint(strands: Strands) {
  for (let strand = 0; strand < strands.count; strand++)
    for (let k = 0; k < pointsEach; k++) yield pointOf(strands, strand, k)
}

const even = (cm: number) => ({ front: cm, sides: cm, back: cm })
const cases: [string, Asked][] = [
  ["long hair parted in the middle", { lengthCm: even(50) }],
  [
    "chin length parted on her left",
    { parting: { kind: "side", side: "left", offCentreMm: 35 }, lengthCm: even(22) },
  ],
  [
    "a zigzag on a long, narrow head",
    { head: makeHeadFromAxes([0.92, 1.08, 1], "receding"), parting: { kind: "zigzag" } },
  ],
  [
    "hair of all lengths combed back on a broad head",
    {
      head: makeHeadFromAxes([1.07, 0.95, 1.03], "peaked"),
      parting: { kind: "none" },
      lengthCm: { front: 12, sides: 8, back: 40 },
    },
  ],
]

describe.each(cases)("%s", (_, asked) => {
  const { axes } = asked.head ?? usual
  const strands = grow(asked)
  it("stays outside the head, half a millimetre at most", () => {
    // Below -120 mm the shoulders are a body of their own.
    let deepest = 0
    for (const [x, y, z] of eachPoint(strands))
      if (z > -120 * axes[2]) deepest = Math.min(deepest, headDistance(x / axes[0], y / axes[1], z / axes[2]))
    expect(deepest).toBeGreaterThan(-0.5)
  })
  it("lies on the shoulders, not in them: 2 mm at most", () => {
    let deepest = 0
    for (const [x, y, z] of eachPoint(strands))
      if (z < (bustFromMm - 12) * axes[2])
        deepest = Math.min(deepest, bustDistance(x / axes[0], y / axes[1], z / axes[2]))
    expect(deepest).toBeGreaterThan(-2)
  })
  it("has the length of the plan at its root, within one in a hundred", () => {
    const lengthCm = asked.lengthCm ?? hair.lengthCm
    for (let strand = 0; strand < strands.count; strand += 7) {
      let mm = 0
      for (let k = 1; k < pointsEach; k++) {
        const [a, b] = [pointOf(strands, strand, k - 1), pointOf(strands, strand, k)]
        mm += Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
      }
      const wanted =
        10 * lengthCmAt(asked.head ?? usual, { ...hair, lengthCm }, tradeFigures, pointOf(strands, strand, 0))
      expect(Math.abs(mm / wanted - 1)).toBeLessThan(0.01)
    }
  })
  it("leaves eyes, nose and mouth free", () => {
    let before = 0
    for (const [x, y, z] of eachPoint(strands))
      if (Math.abs(x) < 38 * axes[0] && y > 50 * axes[1] && z > -70 && z < 25) before += 1
    expect(before).toBe(0)
  })
})

describe("the front of the hair", () => {
  /** How much hair hangs beside the face, before the ears and under the brow, mm of all strands. */
  const besideFace = (front: WornFront) => {
    let points = 0
    for (const [, y, z] of eachPoint(grow({ front }))) if (y > 14 && z < 20 && z > -110) points += 1
    return points
  }
  it("hangs on the cheek, far less of it tucked, none of it tied back", () => {
    const [cheek, tucked, tied] = (["cheek", "tucked", "tied"] as const).map(besideFace)
    expect(cheek).toBeGreaterThan(3000)
    expect(tucked).toBeLessThan(0.35 * cheek)
    expect(tied).toBeLessThan(0.05 * cheek)
  })
  it("leaves eyes, nose and mouth free however it is worn", () => {
    for (const front of ["tucked", "tied"] as const) {
      let before = 0
      for (const [x, y, z] of eachPoint(grow({ front })))
        if (Math.abs(x) < 38 && y > 50 && z > -70 && z < 25) before += 1
      expect([front, before]).toEqual([front, 0])
    }
  })
  it("is gathered at the nape where all of it is tied, whatever it grew from", () => {
    const strands = grow({ front: "tied" })
    const apart = Array.from({ length: strands.count }, (_, strand) =>
      Math.min(
        ...Array.from({ length: pointsEach }, (_, k) => {
          const [x, y, z] = pointOf(strands, strand, k)
          return Math.hypot(x, y + 104, z + 22)
        }),
      ),
    )
    const long = apart.filter((_, strand) => strands.lengthsMm[strand] > 300)
    expect(long.filter((mm) => mm > 40).length / long.length).toBeLessThan(0.03)
  })
})

describe("a head of hair", () => {
  const strands = grow({ strands: strandFigures })
  it("stands for as many hairs as grow on the scalp, summed another way, within its sampling error", () => {
    const { mid } = wholeHead(usual, hair).hairs
    expect(Math.abs((strands.count * strands.hairsEach) / mid - 1)).toBeLessThan(3 / Math.sqrt(strands.count))
    expect(Math.abs(strands.hairsEach * strandFigures.count - mid) / mid).toBeLessThan(0.01)
  })
  it("lies between the least and the most that published scalps and counts give", () => {
    // Adult scalps: 492 +- 31 cm2 (Cureus 2026, doi 10.7759/cureus.104173) to 640 by head meshes; 161 to 226 hairs/cm2 (Loussouarn 2005). 480 x 161, 640 x 226.
    const hairs = strands.count * strands.hairsEach
    expect(hairs).toBeGreaterThan(77_280)
    expect(hairs).toBeLessThan(144_640)
  })
  it("is the same for the same seed and another for another", () => {
    expect(grow({}).points).toEqual(grow({}).points)
    expect(grow({ seed: 2 }).points).not.toEqual(grow({}).points)
  })
  it("falls to both sides of the parting and does not cross it", () => {
    let crossed = 0
    for (let strand = 0; strand < strands.count; strand++) {
      const [rootX, rootY] = pointOf(strands, strand, 0)
      if (Math.abs(rootX) > 3 && rootY > 0 && Math.sign(pointOf(strands, strand, 5)[0]) !== Math.sign(rootX))
        crossed += 1
    }
    expect(crossed).toBe(0)
  })
})
