import { expect, it } from "vitest"
import { lastVisit } from "../../../../web/core/record/lastVisit"
import { nextService } from "../../../../web/core/record/nextService"
import { servedPlan } from "../../../support/servedPlan"

const zone = "Europe/London"

it("tells what went wrong the last time first, and how long each foil was on, to which level", () => {
  const last = lastVisit(nextService(servedPlan(), "2026-05-18", zone), zone)
  expect(last?.day).toBe("2026-03-09")
  expect(last?.reactions).toEqual([
    { code: "alarm", alarm: { what: "eye" }, foils: [] },
    { code: "limp", foil: 1 },
  ])
  // Foil 1 went on at minute 5 and off at 33; foil 2 was never tapped off.
  expect(last?.foils).toMatchObject([
    { number: 1, minutesOn: 28, level: 8.5 },
    { number: 2, minutesOn: null, level: null },
  ])
})

it("says nothing where nothing was done, and nothing of a tap that was taken back", () => {
  expect(lastVisit({}, zone)).toBeNull()
  const { service, ...plan } = servedPlan()
  if (!service) throw new Error("served, and no service")
  const undone = { ...service, log: service.log.map((entry) => ({ ...entry, undone: true })) }
  expect(lastVisit(nextService({ ...plan, service: undone }, "2026-05-18", zone), zone)).toMatchObject({
    reactions: [],
    foils: [],
  })
})
