import { describe, expect, it } from "vitest"
import { leastBendMm } from "../../../geometry/parting/leastBend"
import { hairlineParting } from "../../../geometry/parting/parting"
import { hairlineForms } from "../../../geometry/scalp/hairlineLandmarks"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { smoothLine } from "../../../geometry/surface/spline"
import { measurePath, resampleMeasured } from "../../../geometry/surface/surfacePath"
import { distance } from "../../../geometry/surface/vec3"
import { partingBendMm } from "../../../presets/placement/bends"

const head = (form: (typeof hairlineForms)[number]) => makeHeadFromAxes([1, 1, 1], form)

/** The tightest circle through places 3 mm apart along a parting, mm: a times b times c over four times the triangle (Heron). */
function tightestMm(on: ReturnType<typeof head>, fromAlongMm: number, toAlongMm: number, behindMm: number) {
  const made = hairlineParting(on, { fromAlongMm, toAlongMm, behindMm })
  if (!("parting" in made)) return null
  const line = measurePath(on.surface, smoothLine(made.parting, 8))
  const places = resampleMeasured(line, Math.max(3, Math.ceil(line.lengthMm / 3) + 1)).map(on.surface.pointAt)
  let tightest = Number.POSITIVE_INFINITY
  for (let i = 1; i + 1 < places.length; i++) {
    const [a, b, c] = [
      distance(places[i - 1], places[i]),
      distance(places[i], places[i + 1]),
      distance(places[i - 1], places[i + 1]),
    ]
    const half = (a + b + c) / 2
    const area = Math.sqrt(Math.max(0, half * (half - a) * (half - b) * (half - c)))
    tightest = Math.min(tightest, (a * b * c) / (4 * area + 1e-9))
  }
  return tightest
}

describe("a parting along the hairline", () => {
  it.each(hairlineForms)("bends nowhere tighter than a comb can be led, %s", (form) => {
    const on = head(form)
    for (const behindMm of [1, 3, 6])
      for (let from = -60; from < 260; from += 20) {
        const tightest = tightestMm(on, from, from + 60, behindMm)
        // Points of a parting stand 6 mm apart: the line through them may cut a corner by a little.
        if (tightest !== null) expect(tightest, `${from}, ${behindMm}`).toBeGreaterThan(0.85 * leastBendMm)
      }
  })

  it("ends at the sideburn, where it would have to turn back on itself", () => {
    const on = head("round")
    const made = hairlineParting(on, { fromAlongMm: 100, toAlongMm: 210, behindMm: 3 })
    if (!("parting" in made)) throw new Error(made.refused)
    const ends = [made.parting[0], made.parting[made.parting.length - 1]].map(
      (at) => on.hairline.coordinates(at).alongMm,
    )
    const { landmarkAlongMm } = on.hairline.sides.right
    const sideburn = landmarkAlongMm("sideburn")
    // All of it lies on one side of the sideburn's tip.
    expect(ends.every((along) => along < sideburn) || ends.every((along) => along > sideburn)).toBe(true)
  })

  it("goes by the figure of the presets", () => {
    expect(partingBendMm.value).toBe(leastBendMm)
  })
})
