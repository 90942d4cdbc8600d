import { expect, it } from "vitest"
import { alikeEntries } from "../../../../web/panels/plans/alikeEntries"

const entry = (id: string, name: string, initials: string) => ({
  ...{ id, name, initials, served: false, day: null, upkeepWeeks: null },
  savedAt: "2026-03-09T12:00:00.000Z",
})

it("numbers plans of one name and client, whatever their order, and leaves all others", () => {
  const entries = [
    entry("c", "Frame", "A.K."),
    entry("a", "Frame ", "A.K."),
    entry("b", "Frame", "B."),
    entry("d", "", ""),
    entry("e", "", ""),
  ]
  const numbers = [
    ["a", 1],
    ["c", 2],
    ["d", 1],
    ["e", 2],
  ]
  expect([...alikeEntries(entries)].sort()).toEqual(numbers)
  expect([...alikeEntries(entries.toReversed())].sort()).toEqual(numbers)
})
