import { describe, expect, it } from "vitest"
import { fitAxes } from "../../geometry/scalp/fit"
import { hairlineForms } from "../../geometry/scalp/hairlineLandmarks"
import { makeHeadFromAxes } from "../../geometry/scalp/head"
import { type Zone, zoneAreas, zones } from "../../geometry/scalp/zones"
import { areaCm2 } from "../../geometry/surface/surfacePatch"
import { headFigures } from "../../presets/client/headSizes"
import { readCsv } from "../support/readCsv"

/** The mean woman and man of the 1988 survey (TR-89/044). */
const sizes = {
  woman: { kind: "caliper", lengthMm: 187.2, breadthMm: 144.4, heightMm: 123.5 },
  man: { kind: "caliper", lengthMm: 197.1, breadthMm: 151.7, heightMm: 131 },
} as const
const headOf = (who: keyof typeof sizes, form: (typeof hairlineForms)[number] = "round") =>
  makeHeadFromAxes(fitAxes(sizes[who], headFigures), form)
const hairArea = (who: keyof typeof sizes, form?: (typeof hairlineForms)[number]) => {
  const { surface, hairline } = headOf(who, form)
  return areaCm2(surface, hairline.points)
}

describe("the hair-bearing scalp", () => {
  it("of the mean woman is 550 to 610 cm2, as on four head meshes of her size with a hairline like hers", () => {
    expect(hairArea("woman")).toBeGreaterThan(550)
    expect(hairArea("woman")).toBeLessThan(610)
  })

  /**
   * Hairlines of 456 Japanese (Kashiyama et al., Plast Reconstr Surg Glob Open 2021;9:e3751): linear, triangular, round
   * and M-shaped. A man's head under a woman's usual round hairline has 638 cm2, but one man in nine has it.
   */
  const menWith = { straight: 0.46, peaked: 0.01, round: 0.11, receding: 0.43 }

  it("of the mean man, with the hairlines that men have, is 600 to 625 cm2, as on four head meshes of his size with a hairline like his", () => {
    const forms = hairlineForms.map((form) => ({ share: menWith[form], cm2: hairArea("man", form) }))
    const men = forms.reduce((sum, { share }) => sum + share, 0)
    const mean = forms.reduce((sum, { share, cm2 }) => sum + share * cm2, 0) / men
    expect(mean).toBeGreaterThan(600)
    expect(mean).toBeLessThan(625)
  })

  it("of woman and man, with any hairline, is 480 to 640 cm2 (tape formula, Cureus 2026, to exposure tables, EPA 2011)", () => {
    for (const who of ["woman", "man"] as const)
      for (const form of hairlineForms) {
        expect(hairArea(who, form)).toBeGreaterThan(480)
        expect(hairArea(who, form)).toBeLessThan(640)
      }
  })

  it("grows with the square of the size", () => {
    const [once, twice] = [1, 2].map((size) => makeHeadFromAxes([size, size, size], "straight"))
    const ratio = areaCm2(twice.surface, twice.hairline.points) / areaCm2(once.surface, once.hairline.points)
    expect(ratio).toBeCloseTo(4, 6)
  })
})

describe("its zones", () => {
  const shares = new Map<Zone, number>()
  for (const { region, share_percent } of readCsv("salt-regions.csv"))
    shares.set(zones.find((zone) => `${region}`.startsWith(zone)) as Zone, Number(share_percent))

  it.each(["woman", "man"] as const)("have the shares of the SALT score within 3 points (%s)", (who) => {
    const areas = zoneAreas(headOf(who))
    const whole = zones.reduce((sum, zone) => sum + areas[zone], 0)
    expect(shares.size).toBe(4)
    for (const zone of zones)
      expect(Math.abs((100 * areas[zone]) / whole - (shares.get(zone) as number))).toBeLessThan(3)
  })

  it("make up the whole", () => {
    const areas = zoneAreas(headOf("woman"))
    expect(zones.reduce((sum, zone) => sum + areas[zone], 0) / hairArea("woman")).toBeCloseTo(1, 2.5)
  })
})
