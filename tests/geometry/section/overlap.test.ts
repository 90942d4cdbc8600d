import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../geometry/parting/parting"
import type { Head } from "../../../geometry/scalp/head"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { isNear, overlapCm2 } from "../../../geometry/section/overlap"
import { surfacePoint } from "../../../geometry/surface/frames"
import { lengthMm } from "../../../geometry/surface/surfacePath"
import { bandOf } from "../../support/sections"

const head: Head = makeHeadFromAxes([1.01, 0.98, 1.03], "round")
const behind = (behindMm: number, depthMm: number) => {
  const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 70, behindMm })
  if ("refused" in made) throw new Error(made.refused)
  return { ...bandOf(made.parting, depthMm), taken: "front" as const }
}

describe("two bands on one head", () => {
  it("share nothing when one ends where the other begins", () => {
    expect(overlapCm2(behind(20, 6), behind(13.5, 6), head)).toBeLessThan(0.02)
  })

  it("share the strip between their edges: 2 mm of it, as long as a parting down its middle", () => {
    const shared = overlapCm2(behind(20, 6), behind(16, 6), head)
    const middleMm = lengthMm(head.surface, behind(15, 6).parting)
    expect(shared / ((middleMm * 2) / 100)).toBeGreaterThan(0.93)
    expect(shared / ((middleMm * 2) / 100)).toBeLessThan(1.07)
  })

  it("share as much either way round, and are near only when their boxes meet", () => {
    const [a, b] = [behind(20, 6), behind(16, 6)]
    expect(overlapCm2(a, b, head)).toBeCloseTo(overlapCm2(b, a, head), 9)
    const far = bandOf([surfacePoint(-0.5, -1), surfacePoint(-0.2, -1.1)], 5)
    expect([isNear(a, b, head), isNear(a, far, head)]).toEqual([true, false])
  })
})
