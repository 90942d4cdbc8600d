import { describe, expect, it } from "vitest"
import { partingBehind, straightParting } from "../../geometry/parting/parting"
import type { Section } from "../../geometry/section/section"
import { surfacePoint } from "../../geometry/surface/frames"
import type { SurfacePath } from "../../geometry/surface/surfacePath"
import { newSection } from "../../web/core/document/newSection"
import type { Plan } from "../../web/core/document/schema"
import { headOf, measured } from "../../web/core/figures/measured"
import { oracleBand, unionOracleCm2 } from "../support/bandOracle"
import { emptyPlan, rightParting } from "../support/samples"

/** Twenty slices of 3 mm, each a little less than its depth behind the one before: each takes some of the last one's hair again. */
const head = headOf(emptyPlan)
const base = newSection("slice", rightParting, emptyPlan)

function stack(count: number, stepMm: number, depthMm: number): Section[] {
  const sections: Section[] = []
  for (let i = 0; i < count; i++) {
    const made = partingBehind(head, rightParting, i * stepMm)
    if (!("parting" in made)) throw new Error(made.refused)
    const parting: SurfacePath = made.parting
    sections.push({
      ...base,
      id: `s${i}`,
      parting,
      taken: "front",
      depthMm: { start: depthMm, end: depthMm },
    } as Section)
  }
  return sections
}

const planOf = (sections: readonly Section[]): Plan => ({ ...emptyPlan, sections })
const areaOf = (sections: readonly Section[]) => measured(planOf(sections)).totals.areaCm2
const hairOf = (sections: readonly Section[]) => measured(planOf(sections)).totals.hairG

/** One order of many, always the same. */
function shuffled<T>(items: readonly T[], seed: number): T[] {
  const made = [...items]
  let state = seed
  for (let i = made.length - 1; i > 0; i--) {
    state = (state * 16807) % 2147483647
    const j = state % (i + 1)
    ;[made[i], made[j]] = [made[j], made[i]]
  }
  return made
}

describe("slices that each overlap the next by a twentieth", () => {
  const slices = stack(20, 2.85, 3)

  it("come to what they cover together, to 0.2 %: all but the shared strips", () => {
    // Without the overlap: the same partings, each taken only 2.85 mm deep, and the strip in front of the first.
    const apart = stack(20, 2.85, 2.85)
    const first = areaOf([slices[0]]) - areaOf([apart[0]])
    expect(areaOf(slices) / (areaOf(apart) + first)).toBeCloseTo(1, 2.4)
  })

  it("come to the same whatever their order, to 0.2 %", () => {
    const once = { area: areaOf(slices), hair: hairOf(slices) }
    for (const seed of [3, 14, 159, 26535]) {
      const other = shuffled(slices, seed)
      expect(Math.abs(areaOf(other) / once.area - 1)).toBeLessThan(0.002)
      expect(Math.abs(hairOf(other) / once.hair - 1)).toBeLessThan(0.002)
    }
  })

  it("are all told: 19 pairs", () => {
    expect(measured(planOf(slices)).overlaps).toHaveLength(19)
  })
})

/** A slice along the great line through a place of the map, turned so far to the left of where the map's u grows. */
function across(id: string, [u, v]: readonly [number, number], turnDeg: number, depthMm: number): Section {
  const turn = (turnDeg * Math.PI) / 180
  const [du, dv] = [0.3 * Math.cos(turn), 0.3 * Math.sin(turn)]
  const made = straightParting(head, surfacePoint(u - du, v - dv), surfacePoint(u + du, v + dv))
  if (!("parting" in made)) throw new Error(made.refused)
  const depth = { start: depthMm, end: depthMm }
  return { ...base, id, parting: made.parting, taken: "front", depthMm: depth } as Section
}

const places = [
  [0.3, 0],
  [0, 0.5],
  [0.6, -0.4],
  [-0.9, 0.1],
] as const
const crossings = places.flatMap((place) =>
  [[90], [45], [45, 90], [60, 120]].flatMap((turns) =>
    [3, 9, 18].map((depthMm) => ({
      name: `0 ${turns.join(" ")} degrees, ${depthMm} mm deep, at ${place}`,
      bands: [0, ...turns].map((turn) => across(`t${turn}`, place, 10 + turn, depthMm)),
    })),
  ),
)

describe("bands that cross each other", { timeout: 120_000 }, () => {
  const three = stack(3, 4, 9)

  it("come to the same whatever their order, to 0.2 %: three that each lie half over the next", () => {
    const once = areaOf(three)
    for (const seed of [1, 2, 3])
      expect(Math.abs(areaOf(shuffled(three, seed)) / once - 1)).toBeLessThan(0.002)
  })

  it.each(crossings)("come to the same whatever their order, to 0.2 %: $name", ({ bands }) => {
    const once = { area: areaOf(bands), hair: hairOf(bands) }
    for (const other of [bands.toReversed(), [...bands.slice(1), bands[0]]]) {
      expect(Math.abs(areaOf(other) / once.area - 1)).toBeLessThan(0.002)
      expect(Math.abs(hairOf(other) / once.hair - 1)).toBeLessThan(0.002)
    }
  })

  it.each(crossings.slice(0, 12))(
    "come to what a fine mesh finds them to cover, to 0.2 %: $name",
    ({ bands }) => {
      const asked = bands.map((band) => oracleBand(head, band))
      expect(Math.abs(areaOf(bands) / unionOracleCm2(head, asked, 0.3) - 1)).toBeLessThan(0.002)
    },
  )

  it("share a square as wide as they are deep when they cross at right angles", () => {
    const [one, other] = [across("a", [0.3, 0], 0, 9), across("b", [0.3, 0], 90, 9)]
    const shared = areaOf([one]) + areaOf([other]) - areaOf([one, other])
    // 9 x 9 mm of a head of some 85 mm radius, where the map's right angle is one of the head's to a degree or two.
    expect(Math.abs(shared / 0.81 - 1)).toBeLessThan(0.02)
  })
})
