import { describe, expect, it } from "vitest"
import { addRanges } from "../../geometry/hair/product"
import { hairlineParting, straightParting } from "../../geometry/parting/parting"
import { makeHeadFromAxes } from "../../geometry/scalp/head"
import { measureSection } from "../../geometry/section/measureSection"
import type { Section } from "../../geometry/section/section"
import { type SurfacePoint, surfacePoint } from "../../geometry/surface/frames"
import { lengthMm } from "../../geometry/surface/surfacePath"
import { walk } from "../../geometry/surface/surfaceWalk"
import { densityPerCm2, fibreUm } from "../../presets/client/hairTypes"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import {
  backcombDepthMm,
  backcombing,
  sliceDepthMm,
  stitches,
  weaveDepthMm,
} from "../../presets/placement/foils"
import { backcombOf, bandOf, evenHair, sliceOf, weaveOf } from "../support/sections"

/** Grams that colourists know, against ours. Common practice, no published source. */
const head = makeHeadFromAxes([1, 1, 1], "round")
const hair = evenHair(30, { densityPerCm2: densityPerCm2.medium.value, fibreUm: fibreUm.medium.value })
const grams = (section: Section) => measureSection(section, head, hair, tradeFigures).productG

/** A parting 70 mm long, combed straight through a place, from left to right round the crown. */
function acrossAt(middle: SurfacePoint, heading: readonly [number, number, number]) {
  const [from, to] = [-35, 35].map((mm) => walk(head.surface, { at: middle, heading }, mm).at)
  const parted = straightParting(head, from, to)
  return "parting" in parted ? parted.parting : []
}
const onTop = acrossAt(surfacePoint(0, 0.45), [1, 0, 0])

describe("a slice 7 x 0.5 cm of medium hair 30 cm long", () => {
  it("takes 3.5 to 4.5 g, inside the 3 to 8 g of a saturated foil", () => {
    expect(lengthMm(head.surface, onTop)).toBeCloseTo(70, 0)
    const { low, mid, high } = grams(sliceOf(bandOf(onTop, sliceDepthMm.standard.value)))
    expect(mid).toBeGreaterThan(3.5)
    expect(mid).toBeLessThan(4.5)
    expect(low).toBeGreaterThan(2)
    expect(high).toBeLessThan(8)
  })
})

describe("a first slice 2 mm behind the hairline", () => {
  it("takes 1.5 to 2.5 g, as a fine short slice does", () => {
    const parted = hairlineParting(head, { fromAlongMm: -35, toAlongMm: 35, behindMm: 2 })
    if ("refused" in parted) throw new Error(parted.refused)
    const { mid } = grams({ ...sliceOf(bandOf(parted.parting, 2)), taken: "front" })
    expect(mid).toBeGreaterThan(1.5)
    expect(mid).toBeLessThan(2.5)
  })
})

describe("ninety fine weaves over the head", () => {
  it("take the 120 to 200 g of a full head of foils", () => {
    const { fine } = stitches
    const weaves = Array.from({ length: 90 }, (_, i) => {
      const [reach, turn] = [1.05 * Math.sqrt((i + 0.5) / 90), i * 2.399963]
      const middle = surfacePoint(reach * Math.sin(turn), reach * Math.cos(turn))
      return weaveOf(bandOf(acrossAt(middle, [1, 0, 0]), weaveDepthMm.value), {
        stitchMm: fine.stitchMm.value,
        gapMm: fine.gapMm.value,
        dipMm: fine.dipMm.value,
      })
    })
    expect(weaves.every(({ parting }) => parting.length > 8)).toBe(true)
    const { mid } = addRanges(weaves.map(grams))
    expect(mid).toBeGreaterThan(120)
    expect(mid).toBeLessThan(200)
  })
})

describe("a face frame with backcombed panels", () => {
  it("of six fine slices and four panels takes the 20 to 60 g of common practice", () => {
    const panel = backcombOf(bandOf(onTop.slice(1, -1), backcombDepthMm.value), {
      pushedShare: backcombing.pushedShare.value,
      cushionMm: backcombing.cushionMm.value,
    })
    const slice = sliceOf(bandOf(onTop, sliceDepthMm.fine.value))
    const { mid } = addRanges([...Array(6).fill(slice), ...Array(4).fill(panel)].map(grams))
    expect(mid).toBeGreaterThan(20)
    expect(mid).toBeLessThan(60)
  })
})
