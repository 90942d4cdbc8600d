import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { Hair } from "../../../geometry/hair/hair"
import { hairlineParting, straightParting } from "../../../geometry/parting/parting"
import { makeHeadFromAxes } from "../../../geometry/scalp/head"
import { measureSection, type SectionFigures } from "../../../geometry/section/measureSection"
import { stitchedShare } from "../../../geometry/section/pickedUp"
import type { Section } from "../../../geometry/section/section"
import { cutParting } from "../../../geometry/surface/cutParting"
import { surfacePoint } from "../../../geometry/surface/frames"
import { mirror, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { backcombOf, bandOf, sliceOf, weaveOf } from "../../support/sections"

const head = makeHeadFromAxes([1.01, 0.98, 1.03], "round")
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const straight = fc
  .record({
    reach: between(0.15, 0.85),
    turn: between(0, 6.28),
    lean: between(-0.7, 0.7),
    half: between(0.15, 0.4),
  })
  .map(({ reach, turn, lean, half }) => {
    const [u, v] = [reach * Math.sin(turn), reach * Math.cos(turn)]
    const [du, dv] = [half * Math.cos(turn + lean), -half * Math.sin(turn + lean)]
    return straightParting(head, surfacePoint(u - du, v - dv), surfacePoint(u + du, v + dv))
  })
const followed = fc
  .record({ from: between(-120, 80), long: between(30, 60), behind: between(2, 25) })
  .map(({ from, long, behind }) =>
    hairlineParting(head, { fromAlongMm: from, toAlongMm: from + long, behindMm: behind }),
  )
const partings: fc.Arbitrary<SurfacePath> = fc
  .oneof(straight, followed)
  .filter((parted) => "parting" in parted)
  .map((parted) => ("parting" in parted ? parted.parting : []))

const bands = fc
  .record({
    parting: partings,
    taken: fc.constantFrom("front" as const, "behind" as const),
    depth: between(1.5, 12),
  })
  .map(({ parting, taken, depth }) => ({ ...bandOf(parting, depth), taken }))
const hairs: fc.Arbitrary<Hair> = fc.record({
  densityPerCm2: between(90, 300),
  fibreUm: between(45, 100),
  lengthCm: fc.record({ front: between(6, 60), sides: between(6, 60), back: between(6, 60) }),
})
const sections: fc.Arbitrary<Section> = bands.chain((band) =>
  fc.constantFrom<Section>(
    sliceOf(band, { rootDistanceMm: 4 }),
    weaveOf(band),
    backcombOf(band),
    backcombOf(band, { base: "weave" }),
  ),
)

const asLongEverywhere = (hair: Hair): Hair => {
  const { front } = hair.lengthCm
  return { ...hair, lengthCm: { front, sides: front, back: front } }
}

const measure = (section: Section, hair: Hair) => measureSection(section, head, hair, tradeFigures)
type Amount = "areaCm2" | "hairs" | "hairG" | "strandAreaCm2"
const grew = (less: SectionFigures, more: SectionFigures, amounts: readonly Amount[]) => {
  for (const amount of amounts) expect(more[amount]).toBeGreaterThan(less[amount])
  for (const level of ["low", "mid", "high"] as const)
    expect(more.productG[level]).toBeGreaterThan(less.productG[level])
}
const runs = { numRuns: 60 }

describe("figures grow", () => {
  it("with the depth of a slice", () => {
    fc.assert(
      fc.property(bands, hairs, (band, hair) => {
        // Where the hairline cuts the band a deeper one takes no more, so the shallow one stays clear of it.
        const shallow = bandOf(band.parting, band.depthMm.start / 8)
        const deep = { ...shallow, depthMm: { start: band.depthMm.start / 6, end: band.depthMm.end / 6 } }
        grew(measure(sliceOf(shallow), hair), measure(sliceOf(deep), hair), ["areaCm2", "hairs", "hairG"])
      }),
      runs,
    )
  })

  it("with the length of the hair", () => {
    fc.assert(
      fc.property(sections, hairs, (section, hair) => {
        const { front, sides, back } = hair.lengthCm
        const longer = { ...hair, lengthCm: { front: front + 1, sides: sides + 2, back: back + 1.5 } }
        grew(measure(section, hair), measure(section, longer), ["hairG", "strandAreaCm2"])
      }),
      runs,
    )
  })

  it("with its density and its fibre", () => {
    fc.assert(
      fc.property(sections, hairs, (section, hair) => {
        const once = measure(section, hair)
        grew(once, measure(section, { ...hair, densityPerCm2: hair.densityPerCm2 + 5 }), ["hairs", "hairG"])
        grew(once, measure(section, { ...hair, fibreUm: hair.fibreUm + 1 }), ["hairG"])
      }),
      runs,
    )
  })

  it("with the dip up to the depth, and in step with the stitches that are drawn", () => {
    fc.assert(
      fc.property(bands, hairs, between(0.5, 8), between(0.5, 8), (band, uneven, stitchMm, gapMm) => {
        // As long everywhere: wide stitches with other gaps would else stand where the hair is longer or shorter.
        const hair = asLongEverywhere(uneven)
        const deep = { ...band, depthMm: { start: 12, end: 12 } }
        const weave = weaveOf(deep, { stitchMm, gapMm, dipMm: 1 })
        const once = measure(weave, hair)
        expect(measure({ ...weave, dipMm: 1.2 }, hair).hairs).toBeGreaterThanOrEqual(once.hairs * (1 - 1e-9))
        const other = { ...weave, gapMm: gapMm * 0.7 }
        const drawn = (section: Section) => stitchedShare(section, once.partingMm)
        const grown = measure(other, hair).strandAreaCm2 / once.strandAreaCm2
        expect(Math.abs(grown / (drawn(other) / drawn(weave)) - 1)).toBeLessThan(0.03)
      }),
      runs,
    )
  })

  it("never less with the depth of a weave: no gram is lost where the band goes past the dip", () => {
    fc.assert(
      fc.property(bands, hairs, between(1, 8), between(0.1, 6), (band, hair, dipMm, deeperMm) => {
        const { start, end } = band.depthMm
        const deeper = { start: start + deeperMm, end: end + deeperMm }
        const [once, then] = [band.depthMm, deeper].map((depthMm) => weaveOf({ ...band, depthMm }, { dipMm }))
        const onHair = (of: Hair) => [measure(once, of), measure(then, of)]
        const [less, more] = onHair(hair)
        // Where the band passes the dip, the dip is summed over other steps: the two agree to a ten-thousandth.
        for (const amount of ["hairs", "hairG"] as const)
          expect(more[amount]).toBeGreaterThanOrEqual(less[amount] * (1 - 1e-4))
        // A deeper band may reach shorter hair, which takes a foil less end to end: product is asked of even hair.
        const [lessG, moreG] = onHair(asLongEverywhere(hair)).map(({ productG }) => productG.mid)
        expect(moreG).toBeGreaterThanOrEqual(lessG * (1 - 1e-4))
      }),
      { numRuns: 200 },
    )
  })

  it("with both faces coated, with less pushed back, with a lower cushion, nearer to the scalp", () => {
    fc.assert(
      fc.property(bands, hairs, (band, hair) => {
        const both: Amount[] = ["hairG", "strandAreaCm2"]
        const less = measure(sliceOf(band, { faces: 1 }), hair)
        grew(less, measure(sliceOf(band, { faces: 2 }), hair), ["strandAreaCm2"])
        grew(measure(sliceOf(band, { rootDistanceMm: 9 }), hair), measure(sliceOf(band), hair), both)
        const backcombed = (pushedShare: number, cushionMm: number) =>
          measure(backcombOf(band, { pushedShare, cushionMm }), hair)
        grew(backcombed(0.5, 30), backcombed(0.4, 30), ["hairs", ...both])
        grew(backcombed(0.5, 30), backcombed(0.5, 25), both)
      }),
      runs,
    )
  })
})

describe("parts", () => {
  it("add up to the whole when a parting is cut in two, but for the loss of the second foil", () => {
    fc.assert(
      fc.property(
        bands.filter(({ parting }) => parting.length >= 7),
        hairs,
        between(0.3, 0.7),
        (deep, hair, share) => {
          const band = bandOf(deep.parting, deep.depthMm.start / 2)
          const [whole, first, second] = [band.parting, ...cutParting(head.surface, band.parting, share)].map(
            (parting) => measure(sliceOf({ ...band, parting }), hair),
          )
          for (const amount of ["partingMm", "areaCm2", "hairs", "hairG", "strandAreaCm2"] as const)
            expect(Math.abs((first[amount] + second[amount]) / whole[amount] - 1)).toBeLessThan(0.005)
        },
      ),
      runs,
    )
  })
})

describe("the other side of the head", () => {
  it("gives the same figures", () => {
    fc.assert(
      fc.property(sections, hairs, (section, hair) => {
        const [here, there] = [section, { ...section, parting: mirror(section.parting) }].map((each) =>
          measure(each, hair),
        )
        for (const amount of ["partingMm", "areaCm2", "hairs", "lengthCm", "hairG", "strandAreaCm2"] as const)
          expect(Math.abs(there[amount] - here[amount])).toBeLessThanOrEqual(1e-9 * here[amount])
        expect(there.foils).toBe(here.foils)
      }),
      runs,
    )
  })
})
