import { describe, expect, it } from "vitest"
import { fitParting, otherSide } from "../../../geometry/placing/technique"
import { landmarkNames } from "../../../geometry/scalp/hairlineLandmarks"
import type { Head } from "../../../geometry/scalp/head"
import { isOnMidline, noMoves } from "../../../geometry/scalp/landmarkMoves"
import { nearestOnPath } from "../../../geometry/surface/nearestOnPath"
import { measurePath, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { usualValues } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"
import { movedOn, randomMoves, withMoves } from "../../support/movedHeads"
import { randomHeads } from "../../support/randomHeads"

const partings = techniques.flatMap((house) =>
  house
    .shape(usualValues(house))
    .sections.map(({ parting }, i) => ({ name: `${house.id}, ${i + 1}`, parting })),
)
const steps = [
  { towardNapeMm: 1, behindMm: 0 },
  { towardNapeMm: -1, behindMm: 0 },
  { towardNapeMm: 0, behindMm: 1 },
  { towardNapeMm: 0, behindMm: -1 },
]

/** How far any place of one parting is from the other, mm. */
function apartMm({ surface }: Head, a: SurfacePath, b: SurfacePath) {
  const farthest = (from: SurfacePath, to: SurfacePath) => {
    const nearest = nearestOnPath(surface, measurePath(surface, to))
    return Math.max(...measurePath(surface, from).points.map((at) => nearest(surface.pointAt(at)).chordMm))
  }
  return Math.max(farthest(a, b), farthest(b, a))
}

const fitted = (head: Head, parting: (typeof partings)[number]["parting"]) => {
  const made = fitParting(head, parting)
  if ("refused" in made) throw new Error(`${made.refused} on ${head.axes}, ${head.hairline.form}`)
  return made.parting
}

describe("a landmark of the hairline moved by 1 mm", { timeout: 240_000 }, () => {
  it.each([
    ["as the form has it", 0],
    ["moved by up to 8 mm on each side", 8],
  ])("moves no parting of any technique by more than 3 mm, on a hairline %s", (_, mostMm) => {
    randomHeads(6).forEach((drawn, i) => {
      const start = mostMm > 0 ? randomMoves(mostMm, 11 + i) : noMoves
      const head = withMoves(drawn, start)
      const side = i % 2 === 0 ? (["left", "right"] as const) : (["left"] as const)
      const told = partings.map(({ name, parting }) => ({
        name,
        parting: side.length > 1 ? parting : otherSide(parting),
      }))
      const before = told.map(({ parting }) => fitted(head, parting))
      for (const landmark of landmarkNames)
        for (const by of steps) {
          if (isOnMidline(landmark) && by.towardNapeMm !== 0) continue
          const moved = withMoves(
            drawn,
            movedOn(start, landmark, isOnMidline(landmark) ? ["left", "right"] : side, by),
          )
          const farthest = told
            .map(({ name, parting }, k) => ({ name, mm: apartMm(head, before[k], fitted(moved, parting)) }))
            .reduce((a, b) => (b.mm > a.mm ? b : a))
          expect(farthest.mm, `${farthest.name}, ${head.hairline.form}, ${landmark}`).toBeLessThan(3)
        }
    })
  })
})
