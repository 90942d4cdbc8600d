import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { isMixedSo, proposeMixes } from "../../../../web/core/bowls/proposeMixes"
import type { Plan } from "../../../../web/core/document/schema"
import { regroupMixes } from "../../../../web/core/edits/plan/regroupMixes"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setHair } from "../../../../web/core/edits/plan/setHair"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import { figuresOf, measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { zoneOf } from "../../../../web/core/schedule/scheduleFromPlan"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done, refusal } from "../../../support/samples"

const state = (level: number) => ({ level, history: [], porosity: null, stretch: null })
const recipes = (plan: Plan) =>
  proposeMixes(plan).map(({ mix, foils }) => ({
    ...mix,
    parts: mix.ratio.developer,
    foils: foils.length,
  }))

/** A plan that asks for two strengths: the hairline from level 8, the rest from level 5, all to level 9. */
const twoHairs = done(
  setConsultation({
    hair: {
      hairline: { roots: state(8), midLengths: state(8), ends: state(8) },
      top: { roots: state(5) },
      left: { roots: state(5) },
      right: { roots: state(5) },
      back: { roots: state(5) },
    },
    liftToLevel: 9,
  }),
  busyPlan(40),
)

describe("mixes proposed from the hair", () => {
  it("take 20 vol at 1 : 2 for foils from level 7 to 10 (common practice, no source)", () => {
    const plan = done(setConsultation({ hair: { top: { roots: state(7) } }, liftToLevel: 10 }), busyPlan(40))
    const creamy = recipes(plan).find(({ parts }) => parts === 2)
    expect(creamy).toMatchObject({ developerVolume: 20, parts: 2 })
  })

  it("give the hairline the weakest that reaches from its own level, the rest from theirs: 10 and 20 vol", () => {
    const plan = twoHairs
    for (const { mix, foils } of proposeMixes(plan)) {
      const zones = new Set(foils.map((foil) => zoneOf(foil, plan) === "hairline"))
      expect(zones.size).toBe(1)
      expect(mix.developerVolume).toBe(zones.has(true) ? 10 : 20)
    }
  })

  it("serve every foil once, in the order of application, lettered from A", () => {
    const proposed = proposeMixes(twoHairs)
    const served = proposed.flatMap(({ foils }) => foils.map(({ id }) => id))
    expect(served.toSorted()).toEqual(
      twoHairs.sections
        .filter(isFoil)
        .map(({ id }) => id)
        .toSorted(),
    )
    expect(proposed.map(({ mix }) => mix.id)).toEqual(["A", "B", "C", "D"].slice(0, proposed.length))
  })

  it("never go above 20 vol at the hairline, whatever the goal", () => {
    const plan = done(setConsultation({ liftToLevel: 10, hair: { hairline: { roots: state(2) } } }), twoHairs)
    for (const { mix, foils } of proposeMixes(plan))
      if (foils.some((foil) => zoneOf(foil, plan) === "hairline"))
        expect(mix.developerVolume).toBeLessThanOrEqual(20)
  })

  it("join a mix too small for the smallest bowl to the largest of its developer, mixed as that is", () => {
    // A generous frame with backcombed panels is one mix at 1 : 2 (common practice, no source).
    const plan = done(setConsultation({ hair: { top: { roots: state(7) } }, liftToLevel: 9 }), examplePlan())
    const gramsOf = (isBackcomb: boolean) =>
      measured(plan).sections.reduce(
        (sum, { section, figures }) =>
          (section.kind === "backcomb") === isBackcomb ? sum + figures.productG.high : sum,
        0,
      )
    expect(Math.min(gramsOf(true), gramsOf(false))).toBeLessThan(30)
    const [only, ...others] = recipes(plan)
    expect(others).toEqual([])
    expect(only.parts).toBe(gramsOf(true) > gramsOf(false) ? 1.5 : 2)
  })

  it("are loose where a foil has much hair to cover, thick on a board, like yoghurt in foils, inside the sheet", () => {
    const long = { front: 90, sides: 90, back: 90 }
    const plan = done(setHair({ lengthCm: long }), busyPlan(40))
    const wide = plan.sections
      .filter(isFoil)
      .filter((foil) => foil.kind !== "backcomb" && figuresOf(foil, plan).strandAreaCm2 >= 840)
    expect(wide.length).toBeGreaterThan(0)
    for (const { mix, foils } of proposeMixes(plan)) {
      const mostly = foils.filter(({ kind }) => kind !== "backcomb")
      if (mostly.length > 0 && mostly.every((foil) => wide.includes(foil)))
        expect(mix.ratio.developer).toBe(2.5)
    }
    expect(proposeMixes(plan).map(({ mix }) => mix.ratio.developer)).toContain(2.5)
    expect(proposeMixes(busyPlan(40)).map(({ mix }) => mix.ratio.developer)).not.toContain(2.5)
  })

  it("leave a product without a sheet as it is", () => {
    const [mix] = examplePlan().mixes
    const plan = done(setMix({ ...mix, product: "From a tub", developerVolume: 15 }), examplePlan())
    expect(recipes(plan)).toContainEqual(
      expect.objectContaining({ product: "From a tub", developerVolume: 15 }),
    )
  })

  it("propose no strength where a level is not known: ten foils planned at 10 vol stay at 10 vol", () => {
    const [mix] = examplePlan().mixes
    const foils = examplePlan().sections.map((section) =>
      isFoil(section) ? { ...section, mix: mix.id } : section,
    )
    const plan: Plan = { ...examplePlan(), mixes: [{ ...mix, developerVolume: 10 }], sections: foils }
    expect(new Set(recipes(plan).map(({ developerVolume }) => developerVolume))).toEqual(new Set([10]))
    expect(mixesOfPlan(plan)[0].proposed).toEqual({ kind: "unknown", why: { code: "level-now-unknown" } })
  })

  describe("where levels were said for the clock", () => {
    const asked = (from: number, to: number) =>
      done(setConsultation({ hair: { top: { roots: state(from) } }, liftToLevel: to }), busyPlan(40))
    const told = (fromLevel: number, toLevel: number, plan: Plan) =>
      done(setTiming({ lift: { fromLevel, toLevel } }), plan)

    it("go by them too, as if they had been asked, gentler or stronger", () => {
      for (const [from, to] of [
        [8, 9],
        [5, 9],
      ])
        expect(recipes(told(from, to, asked(7, 10)))).toEqual(recipes(asked(from, to)))
      expect(recipes(told(8, 9, asked(7, 10)))).not.toEqual(recipes(asked(7, 10)))
    })

    it("propose no strength by them alone: the hair's own level and the target are still unknown", () => {
      const [mix] = busyPlan(40).mixes
      const weak = done(setMix({ ...mix, developerVolume: 10 }), busyPlan(40))
      expect(recipes(told(3, 9, weak))).toEqual(recipes(weak))
      const { proposed } = mixesOfPlan(told(3, 9, weak))[0]
      expect(proposed).toEqual({ kind: "unknown", why: { code: "level-now-unknown" } })
      const aimless = done(setConsultation({ hair: { top: { roots: state(5) } } }), weak)
      expect(mixesOfPlan(told(3, 9, aimless))[0].proposed).toEqual({
        kind: "unknown",
        why: { code: "target-unknown" },
      })
    })
  })

  it("are expected ready within the longest time of their product", () => {
    for (const from of [5, 6, 7, 8]) {
      const plan = done(
        setConsultation({ hair: { top: { roots: state(from) } }, liftToLevel: 10 }),
        examplePlan(),
      )
      const proposed = proposeMixes(plan)
      if (proposed.every(({ why }) => why.every(({ code }) => !code.endsWith("one-visit")))) {
        const timed = timedPlan(done(regroupMixes(proposed), plan))
        if (!timed.ok) throw new Error(timed.problems[0].code)
        expect(timed.conflicts.filter(({ code }) => code === "under-processed")).toEqual([])
      }
    }
  })

  it("are not proposed again once taken", () => {
    const proposed = proposeMixes(twoHairs)
    expect(isMixedSo(twoHairs, proposed)).toBe(false)
    const grouped = done(regroupMixes(proposed), twoHairs)
    expect(isMixedSo(grouped, proposeMixes(grouped))).toBe(true)
  })

  it("are refused when a foil is in none of them", () => {
    const [first] = proposeMixes(examplePlan())
    expect(refusal(regroupMixes([{ ...first, foils: first.foils.slice(1) }]), examplePlan())).toMatch(
      /^Foil \d+ is in none of the mixes\.$/,
    )
  })
})
