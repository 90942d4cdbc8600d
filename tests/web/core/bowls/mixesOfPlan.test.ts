import { describe, expect, it } from "vitest"
import { runCommand } from "../../../../web/command/command"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import { measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { savePlan } from "../../../../web/core/file/planFile"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done, emptyPlan } from "../../../support/samples"

const rows = (plan: Plan) =>
  mixesOfPlan(plan).map((row) => {
    if (!row.made) throw new Error(`mix ${row.mix.id} is not made`)
    return { ...row, made: row.made }
  })

describe("the mixes of a plan", () => {
  it("serve every foil once, from the smallest sensible bowl of 10 + 20 g (common practice, no source)", () => {
    const plan = examplePlan()
    const served = rows(plan).flatMap(({ made }) => made.bowls.flatMap(({ sections }) => sections))
    expect(served.toSorted()).toEqual(
      plan.sections.flatMap(({ id, kind }) => (kind === "left-out" ? [] : [id])).toSorted(),
    )
    for (const { made } of rows(plan))
      expect(made.bowls.map(({ lightenerG, developerG }) => [lightenerG, developerG])).toEqual([[10, 20]])
  })

  it("want what the foils want, and mix at the minutes of the clock", () => {
    const plan = busyPlan(60)
    const timed = timedPlan(plan)
    if (!timed.ok) throw new Error(timed.problems[0].code)
    const [{ made }] = rows(plan)
    expect(made.wantedG.high).toBeCloseTo(measured(plan).totals.productG.high, 6)
    expect(made.mixedG).toBeGreaterThan(made.wantedG.high)
    expect(made.bowls.map(({ atMin }) => atMin)).toEqual(timed.schedule.bowls.map(({ atMin }) => atMin))
    expect(made.bowls.length).toBeGreaterThan(2)
  })

  it("make nothing where no foil uses them", () => {
    expect(mixesOfPlan(emptyPlan)).toMatchObject([{ users: 0, made: null, problems: [], untimed: [] }])
  })

  it("say when a ratio is upside down", () => {
    const [mix] = examplePlan().mixes
    const plan = done(setMix({ ...mix, ratio: { lightener: 2, developer: 1 } }), examplePlan())
    expect(mixesOfPlan(plan)[0].problems[0]).toMatchObject({
      code: "ratio-upside-down",
      lightener: 2,
      developer: 1,
    })
  })

  it("say so when the goal is darker than the hair is now, with the cure", () => {
    const level = { level: 9, history: [], porosity: null, stretch: null }
    const plan = done(setConsultation({ hair: { top: { roots: level } }, liftToLevel: 6 }), examplePlan())
    expect(mixesOfPlan(plan)[0].proposed).toEqual({
      kind: "none",
      why: { code: "target-darker", fromLevel: 9, toLevel: 6 },
    })
  })

  it("say why there are no bowls where the visit cannot be timed", () => {
    const plan = done(setTiming({ breaks: [{ fromMin: 30, toMin: 20 }] }), examplePlan())
    const [{ made, untimed }] = mixesOfPlan(plan)
    expect(made).toBeNull()
    expect(untimed).toEqual([{ code: "break-backwards" }])
  })

  it("propose the weakest developer that reaches the goal by the sheet: level 7 to 10, 20 vol (common practice)", () => {
    const level = { level: 7, history: [], porosity: null, stretch: null }
    const plan = done(setConsultation({ hair: { top: { roots: level } }, liftToLevel: 10 }), examplePlan())
    expect(mixesOfPlan(plan)[0].proposed).toMatchObject({ kind: "chosen", volume: 20 })
  })
})

describe("mix", () => {
  it("prints each mix with its bowls", async () => {
    const { exit, out } = await runCommand(["mix", "plan.json"], {
      readText: () => savePlan(examplePlan()),
      writeBytes: () => {},
      readFont: async () => new Uint8Array(),
    })
    const { mixes } = JSON.parse(out)
    expect(exit).toBe(0)
    // 20 vol is 6 %; two parts of it in three make 4 % (lightening by mass).
    expect(mixes[0]).toMatchObject({
      id: "A",
      ratio: 2,
      onHeadPercent: 4,
      developer: { volume: 20, percent: 6 },
    })
    expect(mixes[0].bowls[0]).toMatchObject({ lightenerG: 10, developerG: 20 })
    expect(mixes[0].developer.from).toEqual([{ percent: 6, grams: 20 }])
  })

  it("pours the developer from the bottles of the salon and counts what it costs", async () => {
    const bottles = { bottles: [10, 40], developerPrice: { amount: 10, forG: 1000 } }
    const { exit, out } = await runCommand(["mix", "plan.json"], {
      readText: () => savePlan(done(setSalon(bottles), examplePlan())),
      writeBytes: () => {},
      readFont: async () => new Uint8Array(),
    })
    const [{ developer, cost }] = JSON.parse(out).mixes
    expect(exit).toBe(0)
    // 12 and 3 % to 6 %: one part and two parts of 20 g.
    expect(developer.from).toEqual([
      { percent: 12, grams: 6.66667 },
      { percent: 3, grams: 13.3333 },
    ])
    // 10 g of powder at 24 for 500 g, and 20 g of developer at 10 for 1000 g: 0.48 + 0.20.
    expect(cost).toBeCloseTo(0.68, 9)
  })
})
