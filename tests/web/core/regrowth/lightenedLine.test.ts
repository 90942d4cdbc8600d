import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { checkPlan } from "../../../../web/core/cautions/visitOfPlan"
import { newConsultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { setMeasuredRegrowth } from "../../../../web/core/edits/plan/setMeasuredRegrowth"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { coatedTwice, coatMm, lightenedLine } from "../../../../web/core/regrowth/coatedTwice"
import { proposeRegrowth, regrow } from "../../../../web/core/regrowth/regrow"
import { done } from "../../../support/samples"

const now = { moment: "2026-05-18T10:00:00Z", zone: "Europe/London" }
const [first] = examplePlan().sections.filter(isFoil)
/** The first foil of the example, lightened from 20 mm on 9 March, ten weeks before the day of the plan. */
const then = { ...first, rootDistanceMm: 20, strand: { from: 0, to: 1 } }
const grown: Plan = {
  ...examplePlan(),
  date: "2026-05-18",
  sections: [then],
  lightened: [{ on: "2026-03-09", level: 9, section: then }],
}
const startAt = (rootDistanceMm: number, to = 1): Plan => ({
  ...grown,
  sections: [{ ...then, rootDistanceMm, strand: { from: 0, to } }],
})
const stopsOf = (plan: Plan) => checkPlan(plan, now).stops.filter(({ rule }) => rule === "coated-twice")

describe("the line that product must not pass, worked by hand", () => {
  // 10 weeks of 52 in a year of 12 months: 2.308 months. At 10, 12 and 14 mm a month 23.1, 27.7 and 32.3 mm.
  it("lies where the old start has grown to: 20 mm and 27.7 mm, 47.7 mm; it may be 43.1 to 52.3", () => {
    const line = lightenedLine(then, grown)
    expect(line?.midMm).toBeCloseTo(47.69, 2)
    expect([line?.lowMm, line?.highMm].map((mm) => mm?.toFixed(1))).toEqual(["43.1", "52.3"])
  })

  it("is known where regrowth was measured: 20 mm and 25 mm", () => {
    const measured = done(setMeasuredRegrowth(25), grown)
    expect(lightenedLine(then, measured)).toEqual({ lowMm: 45, midMm: 45, highMm: 45 })
  })

  it("is the nearest of two visits, and none where nothing was lightened in this hair", () => {
    const earlier = { on: "2026-04-27", level: null, section: { ...then, rootDistanceMm: 6 } }
    const twice = { ...grown, lightened: [...(grown.lightened ?? []), earlier] }
    // 3 weeks at 10 mm a month, from 6 mm: 12.9 mm.
    expect(lightenedLine(then, twice)?.lowMm).toBeCloseTo(12.92, 2)
    expect(lightenedLine(then, { ...grown, lightened: [] })).toBeNull()
    const far = examplePlan().sections.filter(isFoil).at(-1)
    expect(far && lightenedLine(far, grown)).toBeNull()
  })
})

describe("product past the line", () => {
  it("is a stop of that foil's mix, with from where to where, that the colourist may override in writing", () => {
    const [stop, ...others] = stopsOf(grown)
    expect(others).toEqual([])
    expect(stop).toMatchObject({ severity: "stop", decides: "colourist", passable: true, mixes: [first.mix] })
    const { why } = stop
    if (why.code !== "coated-twice") throw new Error(why.code)
    expect([why.foils, why.fromMm.toFixed(1)]).toEqual([[first.mapNumber], "43.1"])
    expect(why.toMm).toBeCloseTo(coatMm(then, grown).toMm, 6)
  })

  it("holds each of two mixes along a strand for its own stretch past the line", () => {
    const [other] = grown.mixes.map(({ id }) => id).filter((id) => id !== first.mix)
    const rooted = (toMm: number): Plan => ({
      ...grown,
      sections: [{ ...then, kind: "slice", roots: { mix: other, toMm, first: "ends" } }],
    })
    const held = (plan: Plan) =>
      stopsOf(plan).map(({ mixes, why }) => {
        if (why.code !== "coated-twice") throw new Error(why.code)
        return [...(mixes ?? []), why.fromMm.toFixed(1), why.toMm.toFixed(1)]
      })
    const end = coatMm(then, grown).toMm.toFixed(1)
    // The line is 43.1 mm off the scalp: roots to 60 mm pass it, and the ends begin there; roots to 30 mm do not.
    expect(held(rooted(60)).sort()).toEqual(
      [
        [first.mix, "60.0", end],
        [other, "43.1", "60.0"],
      ].sort(),
    )
    expect(held(rooted(30))).toEqual([[first.mix, "43.1", end]])
  })

  it("is none where product ends before it, or where it is a brush's edge", () => {
    const { toMm } = coatMm(then, grown)
    const [before, edge, past] = [42, 43.4, 44].map((mm) => startAt(6, mm / toMm))
    expect([before, edge, past].map((plan) => coatedTwice(plan).length)).toEqual([0, 0, 1])
    expect(stopsOf(before)).toEqual([])
  })

  it("goes with what is proposed, and comes back with what is kept as it was", () => {
    const proposed = done(proposeRegrowth, grown)
    expect(stopsOf(proposed)).toEqual([])
    expect(stopsOf(done(regrow([first.id], "keep"), proposed))).toHaveLength(1)
  })

  it("is overridden for these foils and this stretch, and for no other", () => {
    const [{ about }] = stopsOf(grown)
    const pass = { rule: "coated-twice", reason: "Gloss over old ends.", by: "J", about, visit: grown.date }
    const overridden = (plan: Plan): Plan => ({
      ...plan,
      consultation: { ...newConsultation(), passes: [pass] },
    })
    expect(stopsOf(overridden(grown))).toEqual([])
    const { toMm } = coatMm(then, grown)
    expect(stopsOf(overridden(startAt(6, (toMm - 30) / toMm)))).toHaveLength(1)
  })
})
