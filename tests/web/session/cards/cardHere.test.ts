import "fake-indexeddb/auto"
import { beforeEach, expect, it } from "vitest"
import { newCard } from "../../../../web/core/cards/card"
import { newId } from "../../../../web/core/document/newId"
import { setPlanDetails } from "../../../../web/core/edits/plan/setPlanDetails"
import { followCardHere, readCardHere } from "../../../../web/session/cards/cardHere"
import { openNextVisit } from "../../../../web/session/cards/nextVisit"
import { createPlanStore, edit, type PlanStore, undo } from "../../../../web/session/planStore"
import { keepCard } from "../../../../web/storage/cards"
import { cardOfPlan, putOnCard } from "../../../../web/storage/cardVisits"
import { keepPlan, openShelf, type Shelf } from "../../../../web/storage/shelf"
import { emptyPlan } from "../../../support/samples"
import { servedPlan } from "../../../support/servedPlan"

const nickel = { kind: "other", to: "nickel", since: "" } as const
const card = { ...newCard("ada", "Ada"), allergies: [nickel] }
let shelf: Shelf
let store: PlanStore
beforeEach(() => {
  shelf = openShelf(`here ${newId()}`)
  store = createPlanStore(emptyPlan)
})
const allergies = () => store.getState().present.client.allergies

it("brings what stands on the card into the plan on the screen, and no step back goes past it", async () => {
  await keepCard(shelf, card, null)
  await putOnCard(shelf, emptyPlan.id, "ada")
  const stop = followCardHere(store, shelf)
  edit({ chapter: "plans", code: "rename" }, setPlanDetails({ name: "Frame" }), null, store)
  await readCardHere(store, shelf)
  expect(allergies()).toEqual([nickel])
  undo(store)
  expect([store.getState().present.name, allergies()]).toEqual([emptyPlan.name, [nickel]])
  stop()
})

it("takes nothing from a plan that is on no card", async () => {
  store = createPlanStore({ ...emptyPlan, client: { initials: "", allergies: [nickel] } })
  await readCardHere(store, shelf)
  expect(allergies()).toEqual([nickel])
})

it("puts the next visit on the same card, with what stands there today", async () => {
  const served = { ...servedPlan(), id: "served" }
  await keepPlan(shelf, served)
  const kept = await keepCard(shelf, newCard("ada", "Ada"), null)
  await putOnCard(shelf, "served", "ada")
  await keepCard(shelf, card, kept.rev)
  expect(await openNextVisit(served, "2026-05-18", { store, shelf })).toEqual({ state: "saved" })
  const next = store.getState().present
  expect([next.date, next.lightened?.length, allergies()]).toEqual(["2026-05-18", 2, [nickel]])
  expect(await cardOfPlan(shelf, next.id)).toBe("ada")
})
