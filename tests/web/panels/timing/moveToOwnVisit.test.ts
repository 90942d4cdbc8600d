import "fake-indexeddb/auto"
import { expect, it } from "vitest"
import { newId } from "../../../../web/core/document/newId"
import { keepForAnotherDay } from "../../../../web/core/edits/plan/keepForAnotherDay"
import { moveToOwnVisit } from "../../../../web/panels/timing/moveToOwnVisit"
import { createPlanStore, undo } from "../../../../web/session/planStore"
import { keepPlan, openKept, openShelf } from "../../../../web/storage/shelf"
import { done, samplePlan } from "../../../support/samples"

const [first, second] = samplePlan.sections.map(({ id }) => id)

it("moves the foils of another day: the second plan has them, the first has not, and one undo brings them back", async () => {
  const today = done(keepForAnotherDay(first, second))
  const desk = { store: createPlanStore(today), shelf: openShelf(`own visit ${newId()}`) }
  await keepPlan(desk.shelf, today)
  const visit = await moveToOwnVisit(desk, today)
  if (!visit.ok) throw new Error(visit.why.code)
  const present = () => desk.store.getState().present
  expect(present().later).toBeUndefined()
  expect(present().sections).toEqual(today.sections)
  const opened = await openKept(desk.shelf, visit.id)
  expect(opened.ok && opened.plan.sections.map(({ id }) => id)).toEqual([first, second])
  undo(desk.store)
  expect(present()).toEqual(today)
})
