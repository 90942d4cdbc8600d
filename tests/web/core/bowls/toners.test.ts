import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { runCommand } from "../../../../web/command/command"
import { tonerBowlWords } from "../../../../web/core/bowls/tonerBowlWords"
import { tonersOfPlan, usualChoice } from "../../../../web/core/bowls/toners"
import { checkPlan } from "../../../../web/core/cautions/visitOfPlan"
import type { AlertTest } from "../../../../web/core/document/consultation"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { setToning } from "../../../../web/core/edits/plan/setToning"
import { figuresOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { zoneOf } from "../../../../web/core/schedule/scheduleFromPlan"
import { done } from "../../../support/samples"

const [, , , toner, rootShade] = houseProducts
const now = { moment: "2026-03-09T10:00:00Z", zone: "Europe/London" }
const wished = done(
  setConsultation({ liftToLevel: 9, finish: "cool", rootMeltMm: 25, answers: { breathingReaction: "no" } }),
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

  it("is weighed for the lightened hair of its zone: 1 to 4 g of toner to a gram", () => {
    const hairG = toned.sections
      .filter(isFoil)
      .filter((foil) => zoneOf(foil, toned) === "hairline")
      .reduce((sum, foil) => sum + figuresOf(foil, toned).hairG, 0)
    const [melt, mids, hairline] = tonersOfPlan(toned)
    expect([melt, mids, hairline].map(({ tone }) => tone.zone)).toEqual(["root-melt", "mids", "hairline"])
    expect(hairline.wantedG).toEqual({ low: hairG, mid: 2 * hairG, high: 4 * hairG })
    // The smallest sensible bowl is 30 g: 10 + 20, and 12 + 18 of the root shade at 1 : 1.5 (common practice, no source).
    expect(hairline.bowl).toMatchObject({ lightenerG: 10, developerG: 20, developerMl: 20 })
    expect(melt.bowl).toMatchObject({ lightenerG: 12, developerG: 18 })
    expect(tonerBowlWords(hairline)).toMatch(
      /^10 g House toner \(invented\) \+ 20 g \(20 mL\) of 10 vol \(3 %\), for [\d.]+–[\d.]+ g on the hair\.$/,
    )
  })

  it("without developer is weighed alone", () => {
    const plan = done(setToning({ toner: usualChoice(direct) }), done(setSalon({ sheets: [direct] }), wished))
    const words = tonerBowlWords(tonersOfPlan(plan)[2])
    expect(words).toMatch(/^\d+ g Conditioning toner, for /)
    expect(checkPlan(plan, now).stops).toEqual([])
  })

  it("asks for an alert test of each, the root shade too, and says so before any is chosen", () => {
    const { stops, cautions } = checkPlan(wished, now)
    expect(stops).toEqual([])
    expect(cautions.find(({ rule }) => rule === "toner-not-chosen")?.why).toMatch(
      /^No toner or root shade is chosen/,
    )
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
        changedSince: "no",
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
      printed.toners.map(({ zone, tonerG }: { zone: string; tonerG: number }) => [zone, tonerG]),
    ).toEqual([
      ["root-melt", 12],
      ["mids", expect.any(Number)],
      ["hairline", 10],
    ])
    // Two bowls of 10 g of powder at 24 for 500 g and 20 g of developer at 10 for 1000 g.
    expect(printed.cost).toBeCloseTo(2 * 0.68, 9)
    expect(err).toContain("Held: No alert test with House toner (invented) is written down")
  })
})
