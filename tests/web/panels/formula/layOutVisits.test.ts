import "fake-indexeddb/auto"
import { expect, it } from "vitest"
import { visitsOfPlan } from "../../../../web/core/bowls/visits"
import { newId } from "../../../../web/core/document/newId"
import type { Plan } from "../../../../web/core/document/schema"
import { layOutVisits, takeVisitsBack } from "../../../../web/panels/formula/mix/layOutVisits"
import { createPlanStore, undo } from "../../../../web/session/planStore"
import { keepPlan, openKept, openShelf } from "../../../../web/storage/shelf"
import { listPlans } from "../../../../web/storage/shelfList"
import { askedAll } from "../../../support/answers"
import { samplePlan } from "../../../support/samples"

const state = { level: 3, history: [], porosity: "usual", stretch: "springs-back" } as const
const plan: Plan = {
  ...samplePlan,
  consultation: askedAll(samplePlan.date, { hair: { top: { roots: state } }, liftToLevel: 9 }),
}

async function laidOut() {
  const desk = { store: createPlanStore(plan), shelf: openShelf(`visits ${newId()}`) }
  await keepPlan(desk.shelf, plan)
  const laid = await layOutVisits(desk, plan)
  if (!laid.ok) throw new Error(laid.why.code)
  return { desk, laid, present: () => desk.store.getState().present }
}

it("lays out two visits: today's with its own aim, the second on the shelf, named after it; one undo gives today's back", async () => {
  const [first, second] = visitsOfPlan(plan)
  const { desk, laid, present } = await laidOut()
  expect(present().consultation?.liftToLevel).toBe(first.toLevel)
  expect(present().note).toMatch(/^Next visit, after 4–12 weeks/)
  const opened = await openKept(desk.shelf, laid.id)
  if (!opened.ok) throw new Error("not on the shelf")
  expect(opened.plan).toMatchObject({ name: "Sample, visit 2", date: laid.day })
  expect(opened.plan.note).toMatch(/^Visit 2, after “Sample” of .*Look at the hair and enter its level first/)
  expect(opened.plan.consultation?.liftToLevel).toBe(second.toLevel)
  undo(desk.store)
  expect(present()).toEqual(plan)
})

it("takes both back with one tap, and leaves today's plan alone once it was worked on", async () => {
  const { desk, laid, present } = await laidOut()
  await takeVisitsBack(desk, laid)
  expect(present()).toEqual(plan)
  expect((await listPlans(desk.shelf)).map(({ id }) => id)).toEqual([plan.id])

  const again = await laidOut()
  again.desk.store.setState((history) => ({
    ...history,
    present: { ...history.present, note: "Bring the long clips." },
  }))
  await takeVisitsBack(again.desk, again.laid)
  expect(again.present().note).toBe("Bring the long clips.")
})
