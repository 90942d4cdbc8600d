import { describe, expect, it } from "vitest"
import type { RecordedTap, ServiceRecord } from "../../../../web/core/document/serviceRecord"
import { peopleOf, placedBy } from "../../../../web/core/record/recordPeople"

const foil = { limitMin: 45, firstLookMin: 10, plannedOnMin: 0, plannedMinutesOn: 26 }
const on = (id: string, by?: 1 | 2, undone = false): RecordedTap => ({
  tap: { kind: "on", foil: id, ...(by && { by }) },
  atMs: 0,
  wallAt: "2026-03-09T10:00:00Z",
  onAtMs: 0,
  undone,
  note: null,
})
const service = (change: Partial<ServiceRecord>): ServiceRecord => ({
  startedAt: "2026-03-09T10:00:00Z",
  foils: ["a", "b"].map((id, at) => ({ ...foil, id, mapNumber: at + 1 })),
  log: [],
  clockNotes: [],
  ...change,
})
const lanes = { foils: ["a", "b"].map((id, at) => ({ ...foil, id, mapNumber: at + 1, lane: 1 as const })) }

describe("who worked at a service", () => {
  it("is nobody by name where nobody was named and one worked", () => {
    expect(peopleOf(service({}))).toEqual([])
    expect(placedBy({ service: service({ log: [on("a")] }) })("a")).toBeNull()
  })
  it("is the colourist alone where one worked, and placed all that went on", () => {
    const alone = service({ people: ["Ana Berg-Lund", "Mia"], log: [on("a")] })
    expect(peopleOf(alone)).toEqual([{ who: 1, name: "Ana Berg-Lund", initials: "ABL" }])
    expect(placedBy({ service: alone })("a")?.initials).toBe("ABL")
  })
  it("is two by their lanes, named or not; a foil whose tap does not say is nobody's", () => {
    const two = service({ ...lanes, people: ["Ana"], log: [on("a", 2), on("b", 1, true)] })
    expect(peopleOf(two)).toEqual([
      { who: 1, name: "Ana", initials: "A" },
      { who: 2, name: "", initials: "" },
    ])
    expect(placedBy({ service: two })("a")?.who).toBe(2)
    expect(placedBy({ service: two })("b")).toBeNull()
  })
  it("keeps whole the names of two who would share their letters", () => {
    const two = service({ ...lanes, people: ["Ana", "Anton"] })
    expect(peopleOf(two).map(({ initials }) => initials)).toEqual(["Ana", "Anton"])
  })
  it("takes letters alone, as a card does, and a name without any whole", () => {
    const two = service({ ...lanes, people: ["“Ana” (Berg)", "☆"] })
    expect(peopleOf(two).map(({ initials }) => initials)).toEqual(["AB", "☆"])
  })
})
