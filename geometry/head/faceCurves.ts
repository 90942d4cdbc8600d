import type { Pair } from "../frames"
import type { HeadLine } from "./headLine"

/**
 * A line of the face as seen square on: from in front in (x, z), from the right in (y, z), mm of the unscaled head.
 * Sides are drawn on the right and mirrored; a midline curve has both halves.
 */
export type FaceCurve = {
  part: HeadLine["part"]
  weight: HeadLine["weight"]
  seenFrom: "front" | "right"
  points: readonly Pair[]
  isMirrored: boolean
}

const onBothSides = (
  part: FaceCurve["part"],
  weight: FaceCurve["weight"],
  points: readonly Pair[],
): FaceCurve => ({
  part,
  weight,
  seenFrom: "front",
  points,
  isMirrored: true,
})

/** A curve given by its right half, from the midline outward. */
const across = (part: FaceCurve["part"], weight: FaceCurve["weight"], half: readonly Pair[]): FaceCurve => ({
  part,
  weight,
  seenFrom: "front",
  points: [
    ...half
      .slice(1)
      .map(([x, z]): Pair => [-x, z])
      .reverse(),
    ...half,
  ],
  isMirrored: false,
})

const lashLine: Pair[] = [
  [16, 4.6],
  [19.5, 2.4],
  [24, 0.6],
  [30, -0.4],
  [36, 0],
  [41, 1.7],
  [46, 5],
]
const lidFold: Pair[] = [
  [21, 13.6],
  [26, 15.6],
  [31.5, 16.2],
  [37, 15],
  [41.5, 12.4],
]

export const faceCurves: readonly FaceCurve[] = [
  onBothSides("eye", "bold", lashLine),
  onBothSides("eye", "fine", lidFold),
  ...lashes(),
  ...browHairs(),
  onBothSides("nose", "medium", [
    [15.4, -16],
    [16.9, -19],
    [17, -22.8],
    [15.5, -26],
    [13, -27],
  ]),
  onBothSides("nose", "fine", [
    [11.5, -26.2],
    [9.2, -24.6],
    [6.4, -25],
    [4.4, -27],
  ]),
  across("nose", "fine", [
    [0, -28.6],
    [2, -28.3],
    [3.6, -27.4],
  ]),
  across("lips", "medium", [
    [0, -51.2],
    [4, -50.6],
    [9, -49.9],
    [15, -50.4],
    [20, -50.7],
    [24, -50.1],
  ]),
  across("lips", "fine", [
    [0, -44.2],
    [2, -43.7],
    [4.6, -42.9],
    [8.5, -43.9],
    [14, -46.3],
    [19, -48.8],
    [22.3, -50],
  ]),
  across("lips", "fine", [
    [0, -60],
    [5, -59.7],
    [10, -58.2],
    [14.5, -55.8],
  ]),
  {
    ...onBothSides("jaw", "fine", [
      [14, -60],
      [24, -69],
      [36, -77.5],
      [47, -84],
    ]),
    seenFrom: "right",
  },
]

/** Short strokes down from the lash line, longer toward the outer corner. */
function lashes(): FaceCurve[] {
  return [25, 29, 33, 36.5, 39.8, 42.8, 45.4].map((x, i) => {
    const z = heightOn(lashLine, x)
    const reach = 2.2 + 0.25 * i
    const lean = 0.1 + 0.12 * i
    return onBothSides("eye", "fine", [
      [x, z],
      [x + reach * lean * 0.4, z - reach * 0.6],
      [x + reach * lean, z - reach],
    ])
  })
}

/** Height of a line at a place across, by straight pieces. */
function heightOn(line: readonly Pair[], x: number): number {
  const i = Math.max(
    1,
    line.findIndex(([to]) => to >= x),
  )
  const [[fromX, fromZ], [toX, toZ]] = [line[i - 1], line[i]]
  return fromZ + ((toZ - fromZ) * (x - fromX)) / (toX - fromX)
}

/** Short strokes leaning along the brow, from its lower edge to its upper, as a pencil would. */
function browHairs(): FaceCurve[] {
  const lower: Pair[] = [
    [10.5, 24.6],
    [22, 27.4],
    [33, 30.2],
    [42, 29.8],
    [54, 23.6],
  ]
  const upper: Pair[] = [
    [10.5, 30],
    [22, 33.4],
    [33, 35.4],
    [42, 33.4],
    [54, 23.8],
  ]
  return Array.from({ length: 22 }, (_, i) => {
    const x = 11 + i * 1.85
    const tilt = 1.5 + 0.28 * i
    const to = Math.min(54, x + tilt)
    const [from, up] = [heightOn(lower, x), heightOn(upper, to)]
    return onBothSides("brow", "fine", [
      [x, from],
      [x + (to - x) * 0.4, from + (up - from) * 0.55],
      [to, up],
    ])
  })
}
