import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { runCommand } from "../../../../web/command/command"
import { tonerBowlOf } from "../../../../web/core/bowls/tonerBowl"
import { tonersOfPlan, usualChoice } from "../../../../web/core/bowls/toners"
import { checkPlan } from "../../../../web/core/cautions/visitOfPlan"
import type { AlertTest } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { setToning } from "../../../../web/core/edits/plan/setToning"
import { figuresOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { tonesOfPlan } from "../../../../web/core/tone/tonesOfPlan"
import { answersOn } from "../../../support/answers"
import { done } from "../../../support/samples"

const [, , , toner, rootShade] = houseProducts
const now = { moment: "2026-03-09T10:00:00Z", zone: "Europe/London" }
const wished = done(
  setConsultation({
    liftToLevel: 9,
    finish: "cool",
    rootMeltMm: 25,
    answers: answersOn("2026-03-09", { breathingReaction: "no" }),
  }),
  examplePlan(),
)
const toned = done(setToning({ toner: usualChoice(toner), rootShade: usualChoice(rootShade) }), wished)
const direct = {
  ...toner,
  id: "direct",
  name: "Conditioning toner",
  kind: "direct-toner" as const,
  developers: [],
  alertTest: false,
}

describe("what is toned with", () => {
  it("is mixed with its weakest developer, 1 : 2 where the sheet leaves the choice", () => {
    expect(usualChoice(toner)).toEqual({ product: toner.name, developerVolume: 10, parts: 2 })
    expect(usualChoice(rootShade)).toMatchObject({ developerVolume: 10, parts: 1.5 })
    expect(usualChoice(direct)).toEqual({ product: direct.name, developerVolume: null, parts: 0 })
  })

  it("is weighed for the lightened hair of its zones: 1 to 4 g of toner to a gram", () => {
    const hairG = toned.sections.filter(isFoil).reduce((sum, foil) => sum + figuresOf(foil, toned).hairG, 0)
    const [melt, lengths] = tonersOfPlan(toned)
    expect([melt, lengths].map(({ tones }) => tones.map(({ zone }) => zone))).toEqual([
      ["root-melt"],
      ["mids", "hairline"],
    ])
    expect(lengths.wantedG).toEqual({
      low: expect.closeTo(hairG, 9),
      mid: expect.closeTo(2 * hairG, 9),
      high: expect.closeTo(4 * hairG, 9),
    })
    // Both are far above the smallest mix of toner: 4 g to a gram of hair, 5 % and 6 g, at 1 : 2 and 1 : 1.5.
    const mixG = 4 * hairG * 1.05 + 6
    expect(lengths.bowl?.lightenerG).toBe(Math.ceil(mixG / 3))
    expect(lengths.bowl?.developerG).toBe(2 * Math.ceil(mixG / 3))
    expect(tonerBowlOf(lengths)).toMatchObject({
      code: "toner-mixed",
      product: toner.name,
      tonerG: Math.ceil(mixG / 3),
      clearG: 0,
      volume: 10,
      percent: 3,
    })
  })

  it("shares one bowl between zones of the same shade, and has one each where the shades differ", () => {
    const differing = done(setConsultation({ liftToLevel: null }), toned)
    expect(tonersOfPlan(toned)).toHaveLength(2)
    expect(tonersOfPlan(differing).map(({ tones }) => tones.length)).toEqual([1, 2])
  })

  it("at half strength prints as much of the maker’s clear, which together are the toner of a full one", () => {
    const grams = (finish: "cool" | "neutral") => {
      const plan = done(
        setConsultation({ finish, rootMeltMm: null }),
        done(setSalon({ scaleStepG: 0.1 }), toned),
      )
      const [{ bowl }] = tonersOfPlan(plan)
      if (!bowl) throw new Error("no bowl")
      return bowl
    }
    const [full, half] = [grams("cool"), grams("neutral")]
    expect(full.clearG).toBe(0)
    expect(half.lightenerG + half.clearG).toBeCloseTo(full.lightenerG, 9)
    expect(Math.abs(half.clearG - half.lightenerG)).toBeLessThanOrEqual(0.1 + 1e-9)
    expect(half.developerG).toBe(full.developerG)
  })

  it("is weighed in tenths where the scale shows them, and from less than a powder", () => {
    const one = { ...toned, sections: toned.sections.filter(isFoil).slice(0, 1) }
    const [{ bowl }] = tonersOfPlan(
      done(setConsultation({ rootMeltMm: null }), done(setSalon({ scaleStepG: 0.1 }), one)),
    )
    // The smallest toner, 15 g at 1 : 2.
    expect([bowl?.lightenerG, bowl?.developerG]).toEqual([5, 10])
    const wide = tonersOfPlan(
      done(setConsultation({ rootMeltMm: null }), done(setSalon({ scaleStepG: 0.1 }), toned)),
    )
    expect((10 * (wide[0].bowl?.lightenerG ?? 0)) % 10).not.toBe(0)
  })

  it("stays no longer than the sheet of its toner allows", () => {
    const sheet = { ...toner, longestMin: 8 }
    const minutes = (plan: Plan) =>
      tonesOfPlan(plan).map(({ zone, minutes: { low, high } }) => [zone, low, high])
    expect(minutes(toned)).toEqual([
      ["root-melt", 5, 20],
      ["mids", 5, 20],
      ["hairline", 5, 20],
    ])
    expect(minutes(done(setSalon({ sheets: [sheet] }), toned))).toEqual([
      ["root-melt", 5, 20],
      ["mids", 5, 8],
      ["hairline", 5, 8],
    ])
  })

  it("without developer is weighed alone", () => {
    const plan = done(setToning({ toner: usualChoice(direct) }), done(setSalon({ sheets: [direct] }), wished))
    expect(tonerBowlOf(tonersOfPlan(plan)[1])).toMatchObject({
      code: "toner-alone",
      product: "Conditioning toner",
    })
    expect(checkPlan(plan, now).stops).toEqual([])
  })

  it("asks for an alert test of each, the root shade too, and says so before any is chosen", () => {
    const { stops, cautions } = checkPlan(wished, now)
    expect(stops).toEqual([])
    expect(cautions.map(({ rule }) => rule)).toContain("toner-not-chosen")
    expect(checkPlan(toned, now).stops.map(({ rule, mixes }) => [rule, mixes])).toEqual([
      ["alert-test", ["toner"]],
      ["alert-test", ["root-shade"]],
    ])
    const tests = [toner, rootShade].map(
      ({ name }): AlertTest => ({
        product: name,
        place: "behind the ear",
        appliedAt: "2026-03-06T10:00:00Z",
        result: { outcome: "clear", readBy: "J", readAt: "2026-03-08T10:30:00Z" },
        validUntil: null,
        visit: "2026-03-09",
        changedSince: { said: "no", on: "2026-03-09" },
      }),
    )
    expect(checkPlan(done(setConsultation({ alertTests: tests }), toned), now).stops).toEqual([])
    expect(checkPlan(done(setConsultation({ rootMeltMm: null }), toned), now).stops).toHaveLength(1)
  })

  it("asks for its test even when its sheet has been taken out", () => {
    const gone = done(setToning({ toner: { product: "From a tub", developerVolume: 10, parts: 2 } }), wished)
    const { stops, cautions } = checkPlan(gone, now)
    expect(stops.map(({ rule }) => rule)).toEqual(["alert-test"])
    expect(cautions.map(({ rule }) => rule)).toContain("no-sheet")
  })

  it("goes through the file door and back, and is printed by the command with what the mixes cost", async () => {
    const priced = done(setSalon({ developerPrice: { amount: 10, forG: 1000 } }), toned)
    expect(openPlan(savePlan(priced))).toMatchObject({ ok: true, plan: { toning: toned.toning } })
    const { exit, out, err } = await runCommand(["mix", "plan.json"], {
      readText: () => savePlan(priced),
      writeBytes: () => {},
      readFont: async () => new Uint8Array(),
    })
    const printed = JSON.parse(out)
    expect(exit).toBe(0)
    expect(
      printed.toners.map(({ zones, tonerG }: { zones: string[]; tonerG: number }) => [zones, tonerG]),
    ).toEqual([
      [["root-melt"], expect.any(Number)],
      [["mids", "hairline"], expect.any(Number)],
    ])
    // Two bowls of 10 g of powder at 24 for 500 g and 20 g of developer at 10 for 1000 g.
    expect(printed.cost).toBeCloseTo(2 * 0.68, 9)
    expect(err).toContain("Do not mix: No patch test with House toner (invented)")
  })
})
