import { describe, expect, it } from "vitest"
import type { Tap } from "../../../../web/core/chair/chair"
import { tapChair } from "../../../../web/core/chair/chairClock"
import { plannedAndReal, soFarOf } from "../../../../web/core/chair/chairDue"
import {
  beginService,
  chairOfRecord,
  doneService,
  type LiveService,
  liveServiceOf,
  planAsDone,
  recordOfService,
  withFoilsOf,
} from "../../../../web/core/chair/liveService"
import type { Plan } from "../../../../web/core/document/schema"
import { setBowlLeft } from "../../../../web/core/edits/plan/setBowlLeft"
import { setService } from "../../../../web/core/edits/plan/setService"
import { removeSections } from "../../../../web/core/edits/sections/removeSections"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { restOfService } from "../../../../web/core/fixes/restOfService"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { planService } from "../../../../web/core/schedule/timing"
import { done, samplePlan } from "../../../support/samples"

const minute = 60_000
const startMs = Date.parse("2026-03-09T10:00:00.000Z")
const at = (minutes: number) => ({
  load: "one",
  monotonicMs: minutes * minute,
  wallMs: startMs + minutes * minute,
})
const timed = (plan: Plan) => {
  const clock = timedPlan(plan)
  if (!clock.ok) throw new Error(clock.problems.join(" "))
  return clock
}
const played = (...taps: readonly (readonly [number, Tap])[]): LiveService => {
  const live = beginService(samplePlan, timed(samplePlan), at(0))
  const chair = taps.reduce(
    (before, [when, tap]) => tapChair(before, tap, { at: at(when), revision: before.revision }).chair,
    live.chair,
  )
  return { ...live, chair }
}
const [first, second] = samplePlan.sections.map(({ id }) => id)
const on = (foil: string): Tap => ({ kind: "on", foil })

describe("a service at the chair of a plan", () => {
  it("keeps what was planned for each foil when it began", () => {
    const live = played()
    const { schedule } = timed(samplePlan)
    expect(live.startedAt).toBe("2026-03-09T10:00:00.000Z")
    expect(live.planned.map(({ id, plannedOnMin }) => [id, plannedOnMin])).toEqual(
      schedule.foils.map(({ id, onAtMin }) => [id, onAtMin]),
    )
  })

  it("plans the rest again from a late tap: all that follow are later too", () => {
    // Planned on at minute 4; it came at 20, sixteen minutes late.
    const { chair } = played([20, on(first)])
    const { service, schedule: planned } = timed(samplePlan)
    const again = planService({ ...service, soFar: soFarOf(chair) })
    expect(again.foils[0].onAtMin).toBe(20)
    expect(again.foils[1].onAtMin).toBeGreaterThan(planned.foils[1].onAtMin + 10)
    expect(again.foils[0].limitAtMin).toBe(65) // 45 minutes from its own first contact
    const { onAtMin, offAtMin, rinseMin } = restOfService(service, soFarOf(chair))
    expect(onAtMin[second]).toBeCloseTo(again.foils[1].onAtMin, 1)
    expect(offAtMin).toEqual({ [first]: Math.round(again.foils[0].offAtMin) })
    expect(rinseMin).toBe(Math.round(again.rinseMin))
  })

  it("carries the client's initials, also when they are written down after the start, and never loses them", () => {
    const named = { ...samplePlan, client: { initials: "K.W." } }
    expect(beginService(named, timed(named), at(0)).initials).toBe("K.W.")
    expect(withFoilsOf(played(), named, timed(named)).initials).toBe("K.W.")
    const nameless = { ...samplePlan, client: { initials: "" } }
    expect(withFoilsOf(beginService(named, timed(named), at(0)), nameless, timed(nameless)).initials).toBe(
      "K.W.",
    )
  })

  it("follows the plan when a foil is taken out, but never forgets one that is on", () => {
    const goneFrom = done(removeSections(first, second))
    const gone = timed(goneFrom)
    expect(withFoilsOf(played(), goneFrom, gone).chair.foils.map(({ mapNumber }) => mapNumber)).toEqual([3])
    const touched = withFoilsOf(played([4, on(first)]), goneFrom, gone)
    expect(touched.chair.foils.map(({ mapNumber }) => mapNumber)).toEqual([1, 3])
    const same = played([4, on(first)])
    expect(withFoilsOf(same, samplePlan, timed(samplePlan))).toBe(same)
  })

  it("is kept with the plan, through the file and back, with planned against real", () => {
    const live = played([5, on(first)], [7.5, on(second)], [31, { kind: "off", foil: first }])
    const plan = done(setService(recordOfService(live)))
    const opened = openPlan(savePlan(plan))
    if (!opened.ok || !opened.plan.service) throw new Error("the service was lost")
    expect(opened.plan.service.log[0].wallAt).toBe("2026-03-09T10:05:00.000Z")
    const chair = chairOfRecord(opened.plan.service)
    expect(chair.log).toEqual(live.chair.log)
    const planned = opened.plan.service.foils.map(({ id, plannedOnMin, plannedMinutesOn }) => ({
      id,
      onAtMin: plannedOnMin,
      onMin: plannedMinutesOn,
    }))
    expect(plannedAndReal(planned, chair)[0]).toMatchObject({
      plannedOnMin: 4,
      realOnMin: 5,
      realMinutesOn: 26,
    })
  })

  it("keeps both bowls where one was mixed afresh, each with the foils that it was on", () => {
    const live = played(
      [1, { kind: "mixed", bowl: 0 }],
      [5, on(first)],
      [70, { kind: "mixed", bowl: 0 }],
      [75, on(second)],
    )
    const { bowls = [] } = recordOfService(live)
    const ofFirst = bowls.filter(({ mixedAtMs }) => mixedAtMs !== null)
    expect(ofFirst.map(({ mixedAtMs }) => mixedAtMs)).toEqual([70 * minute, minute])
    const [fresh, stale] = ofFirst
    expect([fresh.lightenerG, fresh.developerG]).toEqual([stale.lightenerG, stale.developerG])
    expect(stale.foils).toContain(first)
    expect(stale.foils).not.toContain(second)
    expect(fresh.foils).not.toContain(first)
    expect([...fresh.foils, ...stale.foils].toSorted()).toEqual(
      [...(live.chair.bowls?.[0].foils ?? [])].toSorted(),
    )
    expect(recordOfService(played([1, { kind: "mixed" }], [5, on(first)])).bowls?.length).toBe(
      live.chair.bowls?.length,
    )
  })

  it("keeps what was mixed and drawn as it was done, whatever the plan becomes", () => {
    const live = played([1, { kind: "mixed" }], [5, on(first)])
    const plan = done(setService(doneService({ ...live, endedAt: "2026-03-09T12:00:00.000Z" }, samplePlan)))
    const bowl = plan.service?.bowls?.[0]
    expect(bowl?.mixedAtMs).toBe(minute)
    const changed = done(removeSections(second), {
      ...plan,
      mixes: plan.mixes.map((mix) => ({ ...mix, developerVolume: 10 })),
    })
    expect(changed.service).toEqual(plan.service)
    expect(planAsDone(changed)?.sections).toEqual(samplePlan.sections)
    expect(planAsDone(changed)?.mixes).toEqual(samplePlan.mixes)
    const weighed = done(setBowlLeft(0, 4.5), changed)
    expect(weighed.service?.bowls?.[0]).toEqual({ ...bowl, leftG: 4.5 })
    const opened = openPlan(savePlan(weighed))
    expect(opened.ok && opened.plan.service?.drawn?.mixes[0].developerVolume).toBe(
      samplePlan.mixes[0].developerVolume,
    )
    // A mixed bowl is what it was; one still to be mixed follows the plan.
    expect(withFoilsOf(live, changed, timed(changed)).chair.bowls?.[0]).toEqual(live.chair.bowls?.[0])
  })

  it("is known from anything else that a database may hold", () => {
    expect(liveServiceOf(structuredClone(played()))).toEqual(played())
    expect([null, "", {}, { planId: "a" }].map(liveServiceOf)).toEqual([null, null, null, null])
  })
})
