import { expect, it } from "vitest"
import { type Strand, strandMarks } from "../../../web/drawing/strandMarks"

const begins = { lowMm: 43, midMm: 48, highMm: 52 }
const endsOf = (strand: Strand, lengthMm = 80) =>
  Object.fromEntries(
    strandMarks(strand, lengthMm).flatMap((mark) => {
      const points = mark.kind === "hatch" ? mark.segments.flat() : "path" in mark ? mark.path : []
      const x = points.map(([at]) => at)
      return [[mark.ink, [Math.min(...x), Math.max(...x)]]]
    }),
  )

it("draws a strand with its coat, the lightened part, and the line where that may begin first", () => {
  expect(endsOf({ coat: { fromMm: 6, toMm: 42 }, begins })).toEqual({
    "head-bold": [0, 0],
    "head-fine": [0, 80],
    "left-out-hatch": [43, 79],
    "strand-coat": [6, 42],
    "not-past": [43, 43],
  })
})

it("draws no line where nothing is lightened or it lies further out, and no coat where there is none", () => {
  expect(Object.keys(endsOf({ coat: null, begins: null }))).toEqual(["head-bold", "head-fine"])
  expect(Object.keys(endsOf({ coat: { fromMm: 6, toMm: 400 }, begins }, 40))).toEqual([
    "head-bold",
    "head-fine",
    "strand-coat",
  ])
  expect(endsOf({ coat: { fromMm: 6, toMm: 400 }, begins }, 40)["strand-coat"]).toEqual([6, 40])
})
