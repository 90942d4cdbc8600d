import { describe, expect, it } from "vitest"
import { newConsultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { setTiming } from "../../../../web/core/edits/plan/setTiming"
import { choicesOfPlan } from "../../../../web/core/schedule/choicesOfPlan"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done, samplePlan } from "../../../support/samples"

const spread = (mid: number) => ({ low: mid - 1, mid, high: mid + 1 })
const level = (at: number) => ({ level: at, history: null, porosity: null, stretch: null })

const clock = (plan: Plan) => {
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error(timed.problems.join(" "))
  return timed
}

describe("how a plan says that it is to be timed", () => {
  it("needs nothing said", () =>
    expect(choicesOfPlan(samplePlan)).toMatchObject({
      paceMin: { low: 1.5, mid: 2, high: 2.5 },
      hands: 1,
      breaks: [],
      rinse: "each",
      goal: null,
    }))

  it("takes the darkest hair and the lift wanted from the consultation", () => {
    const consultation = {
      ...newConsultation(),
      liftToLevel: 9,
      hair: { top: { roots: level(6), ends: level(8) }, back: { roots: level(5) } },
    }
    expect(choicesOfPlan({ ...samplePlan, consultation }).goal).toEqual({ fromLevel: 5, toLevel: 9 })
    const asked = done(setTiming({ lift: { fromLevel: 7, toLevel: 8 } }), { ...samplePlan, consultation })
    expect(choicesOfPlan(asked).goal).toEqual({ fromLevel: 7, toLevel: 8 })
  })

  it("has no goal from hair that is light enough", () => {
    const consultation = { ...newConsultation(), liftToLevel: 6, hair: { top: { roots: level(7) } } }
    expect(choicesOfPlan({ ...samplePlan, consultation }).goal).toBeNull()
  })

  it("places a foil in the minutes that were learnt for its kind", () => {
    const pace = { slice: spread(3), weave: spread(5), backcomb: spread(7), painted: spread(11) }
    const { service } = clock(done(setTiming({ pace })))
    for (const { kind, placeMin } of service.foils) expect(placeMin.mid % pace[kind].mid).toBe(0)
  })

  it("lets nobody place a foil in a break", () => {
    const { schedule } = clock(done(setTiming({ breaks: [{ fromMin: 10, toMin: 25 }] }), busyPlan(12)))
    for (const { onAtMin, placedAtMin } of schedule.foils)
      expect(placedAtMin <= 10 || onAtMin >= 25).toBe(true)
  })

  it("says why there is no clock where a break ends before it begins", () => {
    const timed = timedPlan(done(setTiming({ breaks: [{ fromMin: 25, toMin: 10 }] })))
    expect(timed).toMatchObject({ ok: false, problems: [{ code: "break-backwards" }] })
  })

  it("leaves heat out that may not be used, and says why", () => {
    const { schedule, assumed } = clock(done(setTiming({ heatMin: 10 })))
    expect(schedule.heat).toBeNull()
    expect(assumed).toContainEqual(expect.objectContaining({ code: "heat-left-out" }))
  })

  it("looks at a zone of lightened hair, and at the hairline, after 5 minutes, at the others after 10", () => {
    const hair = {
      back: { ends: { level: null, history: ["lightened" as const], porosity: null, stretch: null } },
    }
    const { service } = clock({ ...busyPlan(60), consultation: { ...newConsultation(), hair } })
    for (const { zone, delicate, atHairline } of service.foils)
      expect(delicate).toBe(zone === "back" || atHairline === true)
    expect(service.foils.some(({ delicate }) => !delicate)).toBe(true)
  })
})
