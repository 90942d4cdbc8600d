import { describe, expect, it } from "vitest"
import { cardRows } from "../../../../web/core/cards/cardList"
import { longUnseen, noRetention } from "../../../../web/core/cards/retention"

const today = "2026-03-09"
const entry = (id: string) => ({ id, name: id.toUpperCase(), colour: "none" as const, phone: "" })
const visit = (cardId: string, day: string | null, served: boolean) => ({
  planId: `${cardId} ${day}`,
  cardId,
  name: "",
  day,
  served,
  upkeepWeeks: null,
})
const rows = cardRows(
  ["old", "older", "planned", "edge", "paper", "dateless", "nothing"].map(entry),
  [
    visit("old", "2020-01-31", true),
    visit("older", "2018-06-01", true),
    visit("planned", "2018-06-01", true),
    visit("planned", "2026-04-01", false),
    visit("edge", "2021-03-09", true),
    // Of a salon that works from paper no service is written down: the plan's day counts.
    visit("paper", "2026-02-01", false),
    visit("dateless", null, false),
  ],
  today,
)
const writtenOn = new Map([
  ["dateless", "2019-05-05"],
  ["nothing", "2025-05-05"],
])
const asked = (stays: Record<string, string> = {}) =>
  longUnseen(rows, { years: 5, stays }, { today, writtenOn })

describe("cards that nobody came for in five years, on 9 March 2026", () => {
  it("are those whose latest plan, or else latest change, lies before 9 March 2021, the oldest first", () => {
    expect(asked().map(({ id, since }) => [id, since])).toEqual([
      ["older", "2018-06-01"],
      ["dateless", "2019-05-05"],
      ["old", "2020-01-31"],
    ])
  })

  it("are none where the salon does not want to be asked, and none of which nothing is known", () => {
    expect(longUnseen(rows, noRetention, { today, writtenOn })).toEqual([])
    expect(longUnseen(rows, { years: 5, stays: {} }, { today, writtenOn: new Map() })).toHaveLength(2)
  })

  it("are asked about once: what stays is asked about again after five more years", () => {
    expect(asked({ old: "2021-03-10" }).map(({ id }) => id)).toEqual(["older", "dateless"])
    expect(asked({ old: "2021-03-08" }).map(({ id }) => id)).toEqual(["older", "dateless", "old"])
  })
})
