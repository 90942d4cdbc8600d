import { expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { tonersOfPlan, usualChoice } from "../../../../web/core/bowls/toners"
import { tapChair } from "../../../../web/core/chair/chairClock"
import { beginService, doneService } from "../../../../web/core/chair/liveService"
import { setTonerLeft } from "../../../../web/core/edits/plan/setBowlLeft"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setService } from "../../../../web/core/edits/plan/setService"
import { setToning } from "../../../../web/core/edits/plan/setToning"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { tonerBowlsMixed } from "../../../../web/core/record/asMixed"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { done } from "../../../support/samples"

const [, , , toner] = houseProducts
const at = { load: "a", monotonicMs: 0, wallMs: Date.parse("2026-03-09T10:00:00Z") }

it("keeps the clear that lets a shade down, and what was left of the bowl that zones share", () => {
  const wished = done(setConsultation({ liftToLevel: 9, finish: "neutral", rootMeltMm: null }), examplePlan())
  const plan = done(setToning({ toner: usualChoice(toner), rootShade: null }), wished)
  const [{ bowl, tones }] = tonersOfPlan(plan)
  const timed = timedPlan(plan)
  if (!timed.ok || !bowl) throw new Error("not timed")
  const live = beginService(plan, timed, at)
  const { chair } = tapChair(live.chair, { kind: "toner-on", zone: tones[0].zone }, { at, revision: 0 })
  const ended = doneService({ ...live, chair, endedAt: "2026-03-09T12:00:00.000Z" }, plan)
  const kept = done(setService(ended), plan)
  // Half strength is half clear: as much of it as of the toner.
  expect(bowl.clearG).toBeGreaterThan(0)
  expect(kept.service?.toners?.[0]).toMatchObject({
    productG: bowl.lightenerG,
    clearG: bowl.clearG,
    leftG: null,
  })

  const weighed = openPlan(savePlan(done(setTonerLeft(0, 2.4), kept)))
  if (!weighed.ok || !weighed.plan.service) throw new Error("the service was lost")
  const mixed = { productG: bowl.lightenerG, clearG: bowl.clearG, developerG: bowl.developerG, leftG: 2.4 }
  expect(tonerBowlsMixed(weighed.plan.service)).toEqual([
    { at: 0, product: toner.name, zones: tones.map(({ zone }) => zone), ...mixed },
  ])
})
