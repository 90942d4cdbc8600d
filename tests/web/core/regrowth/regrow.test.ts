import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../../web/core/document/schema"
import { setMeasuredRegrowth } from "../../../../web/core/edits/plan/setMeasuredRegrowth"
import { measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { lightenedAfter } from "../../../../web/core/record/lightenedAfter"
import { nextService } from "../../../../web/core/record/nextService"
import { coatedTwice } from "../../../../web/core/regrowth/coatedTwice"
import { growthSince } from "../../../../web/core/regrowth/lightened"
import {
  proposeRegrowth,
  type RegrowthAction,
  regrow,
  regrowthActions,
} from "../../../../web/core/regrowth/regrow"
import { oldFoils } from "../../../../web/core/regrowth/sectionStates"
import { strandLengthCm } from "../../../../web/core/regrowth/strandLength"
import { makeDice } from "../../../support/dice"
import { done } from "../../../support/samples"
import { servedPlan } from "../../../support/servedPlan"

const zone = "Europe/London"
/** The example ten weeks after foils 1 and 2 went on, on 9 March. */
const tenWeeksOn = nextService(servedPlan(), "2026-05-18", zone)
const foilsOf = ({ sections }: Plan) => sections.filter(isFoil)

/** Every foil of the example lightened on a day, for a plan of another. */
const wholeFrame = (day: string, change: Partial<Plan> = {}): Plan => {
  const plan = examplePlan()
  const lightened = foilsOf(plan).map((section) => ({ on: "2026-03-09", level: 9, section }))
  return { ...plan, date: day, lightened, ...change }
}

describe("hair history", () => {
  it("is written forward: the foils that went on, on which day, to which level", () => {
    expect(tenWeeksOn.lightened?.map(({ on, level, section }) => [on, level, section.id])).toEqual([
      ["2026-03-09", 8.5, foilsOf(examplePlan())[0].id],
      ["2026-03-09", null, foilsOf(examplePlan())[1].id],
    ])
    expect(openPlan(savePlan(tenWeeksOn)).ok).toBe(true)
  })

  it("keeps what was lightened before, also where nothing was done since", () => {
    expect(lightenedAfter(tenWeeksOn, zone)).toBe(tenWeeksOn.lightened)
    const again = { ...tenWeeksOn, service: servedPlan().service }
    expect(lightenedAfter(again, zone)).toHaveLength(4)
  })

  it("knows nothing where no service was done", () => {
    expect(nextService(examplePlan(), "2026-05-18", zone).lightened).toBeUndefined()
  })
})

describe("an emergency outside of the service", () => {
  const alarm = { what: "eye" as const, wallAt: "2026-03-09T10:40:00Z" }
  it("goes with the service into the next plan, and stays where no service was", () => {
    const log = nextService({ ...servedPlan(), alarms: [alarm] }, "2026-05-18", zone).earlier?.at(-1)?.log
    expect(log?.at(-1)).toMatchObject({ tap: { kind: "alarm", what: "eye" }, atMs: 2_400_000 })
    expect(nextService({ ...examplePlan(), alarms: [alarm] }, "2026-05-18", zone).alarms).toEqual([alarm])
  })
})

describe("growth by the day of the plan", () => {
  it("is reckoned until it is measured; before the last visit it is reckoned still", () => {
    expect(growthSince(tenWeeksOn, "2026-03-09").midMm).toBeCloseTo(27.69, 2)
    const measuredPlan = done(setMeasuredRegrowth(21), tenWeeksOn)
    expect(growthSince(measuredPlan, "2026-03-09")).toEqual({ lowMm: 21, midMm: 21, highMm: 21 })
    // 4 weeks before the last visit: 4/52 of 12 months at 12 mm is 11.08 mm.
    expect(growthSince(measuredPlan, "2026-02-09").midMm).toBeCloseTo(32.08, 2)
    expect(done(setMeasuredRegrowth(null), measuredPlan).regrowth).toBeUndefined()
  })
})

describe("an old foil, this time", () => {
  const plan = wholeFrame("2026-05-18")
  const [first] = foilsOf(plan)
  const doing = (action: RegrowthAction) => done(regrow([first.id], action), plan)
  const twice = (each: Plan) => coatedTwice(each).filter(({ foil }) => foil.id === first.id)

  it("as it was coats lightened hair, from where that may begin", () => {
    const [found] = twice(doing("keep"))
    expect(found.fromMm).toBeCloseTo(Math.max(first.rootDistanceMm, first.rootDistanceMm + 23.08), 1)
    expect(found.toMm).toBeCloseTo(10 * strandLengthCm(first, plan).most, 6)
  })

  it("at the root alone coats none of it, and less of everything", () => {
    const root = doing("root")
    expect(twice(root)).toEqual([])
    const figuresOf = (each: Plan) =>
      measured(each).sections.find(({ section }) => section.id === first.id)?.figures
    const [all, some] = [figuresOf(doing("keep")), figuresOf(root)]
    expect(some?.productG.mid).toBeLessThan(all?.productG.mid ?? 0)
    expect(some?.hairG).toBeLessThan(0.5 * (all?.hairG ?? 0))
    expect(some?.foils).toBeLessThanOrEqual(all?.foils ?? 0)
  })

  it("half a pitch behind or in front lies on either side of where it was", () => {
    const behindMm = (each: Plan) => {
      const section = foilsOf(each).find(({ id }) => id === first.id)
      return measured(each).head.hairline.coordinates(section?.parting[1] ?? first.parting[1]).behindMm
    }
    expect(behindMm(doing("behind"))).toBeGreaterThan(behindMm(plan))
    expect(behindMm(doing("before"))).toBeLessThan(behindMm(plan))
  })

  it("skipped is gone, and comes back with a number of its own", () => {
    const skipped = doing("skip")
    expect(foilsOf(skipped).some(({ id }) => id === first.id)).toBe(false)
    const back = done(regrow([first.id], "root"), skipped)
    expect(foilsOf(back).map(({ mapNumber }) => mapNumber)).toHaveLength(foilsOf(plan).length)
    expect(openPlan(savePlan(back)).ok).toBe(true)
  })
})

describe("what is proposed", () => {
  it("is new growth alone where it is due, and nothing where it is too early", () => {
    const proposed = done(proposeRegrowth, wholeFrame("2026-05-18"))
    expect(coatedTwice(proposed)).toEqual([])
    expect(foilsOf(proposed).length).toBeGreaterThan(0)
    expect(foilsOf(done(proposeRegrowth, wholeFrame("2026-03-30")))).toEqual([])
  })

  it("puts product on no hair that was lightened, whatever the hair, the day, the starts and the visits before", () => {
    const dice = makeDice(17).even
    for (let i = 0; i < 12; i++) {
      const weeks = Math.floor(dice() * 40)
      const day = new Date(Date.UTC(2026, 2, 9) + weeks * 7 * 86_400_000).toISOString().slice(0, 10)
      const cm = () => 6 + 44 * dice()
      const base = wholeFrame(day, { ...(dice() < 0.3 && { regrowth: { measuredMm: 60 * dice() } }) })
      const lightened = foilsOf(base).flatMap((section) => {
        const changed = {
          ...section,
          rootDistanceMm: 3 + 40 * dice(),
          strand: { from: dice() < 0.2 ? 0.3 : 0, to: 1 },
        }
        const earlier =
          dice() < 0.5 ? [{ on: "2025-12-01", level: null, section: { ...section, rootDistanceMm: 3 } }] : []
        return [...earlier, { on: "2026-03-09", level: null, section: changed }]
      })
      const plan: Plan = {
        ...base,
        hair: { ...base.hair, lengthCm: { front: cm(), sides: cm(), back: cm() } },
        lightened,
      }
      const proposed = done(proposeRegrowth, plan)
      expect(coatedTwice(proposed)).toEqual([])
      const states = new Map(oldFoils(plan).map((old) => [old.lightened.section.id, old.state]))
      for (const { id } of foilsOf(proposed)) expect(states.get(id)).toBe("due")
    }
  })

  it("has an action for every foil that ends in a plan or in a reason", () => {
    const plan = wholeFrame("2026-05-18")
    for (const action of regrowthActions)
      for (const { id } of foilsOf(plan)) expect(regrow([id], action)(plan)).toBeDefined()
  })
})
