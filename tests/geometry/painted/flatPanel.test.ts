import { describe, expect, it } from "vitest"
import { edgeAt, edgeDrawn } from "../../../geometry/painted/edge"
import { areaMm2, type FlatPanel, paintedBands, paintedShare } from "../../../geometry/painted/flatPanel"
import { fullCm } from "../../../geometry/painted/fullness"
import type { EdgeShape, Painting } from "../../../geometry/painted/painting"

const saturation = { soft: 0.25, middle: 0.5, full: 0.9 }
const paintingOf = (edge: EdgeShape, changes: Partial<Painting> = {}): Painting => ({
  edge,
  dropShare: 0.4,
  drawn: [0, 1, 0.5],
  featherMm: 60,
  saturation,
  ...changes,
})
/** 70 mm wide, 300 mm long, painted from 0.2 of its length. */
const panelOf = (painting: Painting, changes: Partial<FlatPanel> = {}): FlatPanel => ({
  widthMm: 70,
  lengthMm: 300,
  startMm: 0,
  strand: { from: 0.2, to: 1 },
  painting,
  ...changes,
})

describe("the painted share of a panel laid flat", () => {
  it.each([
    ["straight", 1 - 0.2],
    ["v", 1 - 0.2 - 0.4 / 2],
    ["w", 1 - 0.2 - 0.4 / 2],
    // The mean of a parabola is two thirds of its height; by 24 chords it is 1/576 less.
    ["u", 1 - 0.2 - ((0.4 * 2) / 3) * (1 - 1 / 24 ** 2)],
    // Two trapezia: from 0 to 1, and from 1 to 0.5.
    ["freehand", 1 - 0.2 - 0.4 * ((0.5 + 0.75) / 2)],
  ] as const)("of an edge %s is what lies below it", (edge, share) => {
    expect(paintedShare(panelOf(paintingOf(edge)))).toBeCloseTo(share, 9)
  })

  it("ends where painting ends: a V that hangs lower leaves two triangles", () => {
    const panel = panelOf(paintingOf("v", { dropShare: 0.6 }), { strand: { from: 0.3, to: 0.6 } })
    // The edge is above 0.6 for the outer quarter of the width on either side, where it is 0.3 higher at most.
    expect(paintedShare(panel)).toBeCloseTo((2 * 0.25 * 0.3) / 2, 9)
  })

  it("keeps off the scalp as far as product does", () => {
    const panel = panelOf(paintingOf("straight"), { strand: { from: 0, to: 1 }, startMm: 45 })
    expect(paintedShare(panel)).toBeCloseTo(1 - 45 / 300, 9)
  })

  it("shrinks as the edge starts lower, and as it drops farther", () => {
    const shares = [0.1, 0.25, 0.55].map((from) =>
      paintedShare(panelOf(paintingOf("w"), { strand: { from, to: 1 } })),
    )
    expect(shares).toEqual(shares.toSorted((a, b) => b - a))
    const [shallow, deep] = [0.1, 0.7].map((dropShare) =>
      paintedShare(panelOf(paintingOf("u", { dropShare }))),
    )
    expect(deep).toBeLessThan(shallow)
  })
})

describe("the bands of a painted panel", () => {
  it.each(["straight", "v", "w", "u", "freehand"] as const)(
    "make up all that is painted under an edge %s",
    (edge) => {
      const panel = panelOf(paintingOf(edge))
      const sum = paintedBands(panel).reduce((total, { outline }) => total + areaMm2(outline), 0)
      expect(sum / (70 * 300)).toBeCloseTo(paintedShare(panel), 9)
    },
  )

  it("are half the feather each, and the rest in full", () => {
    const areas = paintedBands(panelOf(paintingOf("straight"))).map(({ band, outline }) => [
      band,
      areaMm2(outline),
    ])
    expect(areas).toEqual([
      ["soft", 70 * 30],
      ["middle", 70 * 30],
      ["full", 70 * (240 - 60)],
    ])
  })

  it("come to as much, strand by strand, as their areas times how full they are", () => {
    const painting = paintingOf("v")
    const panel = panelOf(painting)
    const byArea = paintedBands(panel).reduce(
      (sum, { band, outline }) => sum + saturation[band] * areaMm2(outline),
      0,
    )
    const steps = 2000
    const byStrand = Array.from({ length: steps }, (_, i) => {
      const from = edgeAt(painting, 0.2, (i + 0.5) / steps)
      return (fullCm(painting, 30 * (1 - from)) * 10 * 70) / steps
    }).reduce((sum, each) => sum + each, 0)
    expect(byStrand / byArea).toBeCloseTo(1, 5)
  })
})

describe("what is painted thinly", () => {
  it("counts for less: 2 cm of 5 under a feather of 6 cm are soft alone", () => {
    const painting = paintingOf("straight")
    expect(fullCm(painting, 2)).toBeCloseTo(0.25 * 2, 12)
    expect(fullCm(painting, 5)).toBeCloseTo(0.25 * 3 + 0.5 * 2, 12)
    expect(fullCm(painting, 11)).toBeCloseTo(0.25 * 3 + 0.5 * 3 + 0.9 * 5, 12)
  })
})

describe("an edge drawn by hand", () => {
  it("is kept by where it starts, how far it drops and its run", () => {
    const { fromShare, dropShare, drawn } = edgeDrawn([0.35, 0.6, 0.5])
    expect(fromShare).toBe(0.35)
    expect(dropShare).toBeCloseTo(0.25, 12)
    expect(drawn.map((low) => Number(low.toFixed(9)))).toEqual([0, 1, 0.6])
  })

  it("runs where it was drawn", () => {
    const { fromShare, ...drawn } = edgeDrawn([0.35, 0.6, 0.5])
    const painting = paintingOf("freehand", drawn)
    expect(edgeAt(painting, fromShare, 0)).toBeCloseTo(0.35, 12)
    expect(edgeAt(painting, fromShare, 0.25)).toBeCloseTo(0.475, 12)
    expect(edgeAt(painting, fromShare, 1)).toBeCloseTo(0.5, 12)
  })

  it("may be level", () => {
    const { fromShare, ...drawn } = edgeDrawn([0.4, 0.4])
    expect(edgeAt(paintingOf("freehand", drawn), fromShare, 0.7)).toBe(0.4)
  })
})
