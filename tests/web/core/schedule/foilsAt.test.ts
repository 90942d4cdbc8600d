import { expect, it } from "vitest"
import { foilsAt } from "../../../../web/core/schedule/foilsAt"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { samplePlan } from "../../../support/samples"

// The first foil goes on at minute 4 and comes off, ready, at 30; the house powder's longest time is 45.
it("tells how long each foil has been on at a minute, and stops counting when it is off", () => {
  const timed = timedPlan(samplePlan)
  if (!timed.ok) throw new Error(timed.problems.join(" "))
  const first = (min: number) => foilsAt(timed.schedule, min).get(timed.schedule.foils[0].id)
  expect(first(3)).toEqual({ state: "waiting", onMin: 0, limitShare: 0 })
  expect(first(13)).toEqual({ state: "on", onMin: 9, limitShare: 9 / 45 })
  expect(first(60)).toEqual({ state: "off", onMin: 26, limitShare: 26 / 45 })
})
