import { describe, expect, it } from "vitest"
import { type ClientCard, newCard } from "../../../../web/core/cards/card"
import { openCard, writeCard } from "../../../../web/core/cards/cardFile"
import { type CardVisit, cardRows, dueOf, sortCards } from "../../../../web/core/cards/cardList"
import { mergeCards } from "../../../../web/core/cards/mergeCards"
import { searchCards } from "../../../../web/core/cards/searchCards"
import { processorMs } from "../../../support/processorMs"

const card = (change: Partial<ClientCard> = {}): ClientCard => ({
  ...newCard("c1", "Ada Brightwell"),
  ...change,
})
const visit = (planId: string, change: Partial<CardVisit> = {}): CardVisit => ({
  planId,
  cardId: "c1",
  name: "Frame",
  day: "2026-03-09",
  served: true,
  upkeepWeeks: null,
  ...change,
})
const nickel = { kind: "other", to: "Nickel", since: "2019" } as const

describe("a card in its file", () => {
  it("comes back as it was written", () => {
    const full = card({
      colour: "blue",
      phone: "+00 1234",
      sheetLanguage: "fr",
      allergies: [nickel],
      note: "Tea, no sugar.\nLeft-handed.",
      consent: { said: "yes", on: "2026-03-09" },
    })
    const written = writeCard(full)
    expect(written.ok && openCard(written.text)).toEqual({ ok: true, card: full })
  })

  it("is not written where it could not be read again, and not read where it is no card", () => {
    const tooLong = writeCard(card({ name: "a".repeat(81) }))
    expect(!tooLong.ok && [tooLong.problem.path, tooLong.problem.code]).toEqual(["name", "line"])
    const newer = openCard('{"kind":"partline-card","version":2}')
    expect(!newer.ok && newer.problem.code).toBe("newer-version")
    const plan = openCard('{"kind":"partline-plan","version":2}')
    expect(!plan.ok && plan.problem.code).toBe("another-kind")
  })
})

describe("when a client was here and is to come", () => {
  it("counts the weeks the client wants from the last service, else those of a frame", () => {
    // 9 March and 7 weeks: 22 days to the end of March, then 27 of April.
    expect(dueOf([visit("p", { upkeepWeeks: 7 })], "2026-03-10")).toEqual({
      planned: false,
      from: "2026-04-27",
      to: "2026-04-27",
    })
    // 8 and 12 weeks: 56 and 84 days after 9 March.
    expect(dueOf([visit("p")], "2026-03-10")).toEqual({
      planned: false,
      from: "2026-05-04",
      to: "2026-06-01",
    })
  })

  it("puts a visit that is planned before it, and takes no plan of the past for a visit", () => {
    const planned = visit("q", { day: "2026-04-20", served: false })
    expect(dueOf([visit("p"), planned], "2026-04-20")).toEqual({ planned: true, day: "2026-04-20" })
    expect(dueOf([planned], "2026-04-21")).toBeNull()
    expect(dueOf([visit("p", { day: null })], "2026-04-21")).toBeNull()
  })

  it("sorts by name as a reader would, by the last visit and by who is due first", () => {
    const entries = ["Zoë", "Émile", "Ada"].map((name) => ({ ...card(), id: name, name }))
    const rows = cardRows(
      entries,
      [visit("p", { cardId: "Zoë" }), visit("q", { cardId: "Ada", day: "2026-02-01", upkeepWeeks: 20 })],
      "2026-03-10",
    )
    const names = (order: "name" | "last" | "due") => sortCards(rows, order, "fr").map(({ name }) => name)
    expect(names("name")).toEqual(["Ada", "Émile", "Zoë"])
    expect(names("last")).toEqual(["Zoë", "Ada", "Émile"])
    expect(names("due")).toEqual(["Zoë", "Ada", "Émile"])
    expect(rows[0]).toMatchObject({ visits: 1, lastDay: "2026-03-09" })
  })
})

describe("search as typed", () => {
  const entries = [
    { ...card(), id: "1", name: "Ada Brightwell", phone: "+00 20 7946-0012" },
    { ...card(), id: "2", name: "Émile Dûpré", phone: "" },
    { ...card(), id: "3", name: "B. A.", phone: "555 12" },
  ]
  const found = (sought: string) =>
    searchCards(cardRows(entries, [], "2026-06-01"), sought).map(({ id }) => id)

  it.each([
    ["", ["1", "2", "3"]],
    ["ada", ["1"]],
    ["bright ada", ["1"]],
    ["dupre", ["2"]],
    ["EMI", ["2"]],
    ["79460012", ["1"]],
    ["20 7946", ["1"]],
    ["nobody", []],
  ])("finds %j", (sought, ids) => {
    expect(found(sought)).toEqual(ids)
  })

  it("takes under 50 ms of the processor over 5,000 cards with 20,000 visits, every letter", async () => {
    const many = Array.from({ length: 5000 }, (_, i) => ({
      ...card(),
      id: `c${i}`,
      name: `Élodie ${(i * 7919) % 5000} Quarrenby-${i % 97}`,
      phone: `+00 ${1_000_000 + i * 37}`,
    }))
    const visits = Array.from({ length: 20_000 }, (_, i) =>
      visit(`p${i}`, { cardId: `c${i % 5000}`, day: `2026-0${1 + (i % 9)}-1${i % 10}` }),
    )
    const rows = sortCards(cardRows(many, visits, "2026-06-01"), "due", "en-GB")
    for (const typed of ["e", "el", "elo", "quarrenby-9", "1000"]) {
      const spent = await processorMs(() => searchCards(rows, typed))
      expect(spent).toBeLessThan(50)
    }
    expect(searchCards(rows, "quarrenby-96")).toHaveLength(51)
  })
})

describe("two cards of one person as one", () => {
  it("loses nothing that stands on either", () => {
    const kept = card({ phone: "1", allergies: [nickel], note: "Tea." })
    const other = card({
      id: "c2",
      name: "A. Brightwell",
      colour: "green",
      phone: "2",
      allergies: [
        { ...nickel, to: "nickel " },
        { kind: "dye", to: "PPD", since: "" },
      ],
      note: "Short neck.",
    })
    expect(mergeCards(kept, other)).toEqual({
      ...kept,
      colour: "green",
      allergies: [nickel, { kind: "dye", to: "PPD", since: "" }],
      note: "Tea.\nA. Brightwell, 2\nShort neck.",
    })
  })

  it("takes what was said last of the card being kept, and a no of the same day", () => {
    const said = (said: "yes" | "no", on: string) => card({ consent: { said, on } })
    const consent = (one: ClientCard, two: ClientCard) => mergeCards(one, two)?.consent
    expect(consent(said("yes", "2026-01-01"), said("no", "2026-02-01"))?.said).toBe("no")
    expect(consent(said("no", "2026-01-01"), said("yes", "2026-02-01"))?.said).toBe("yes")
    expect(consent(said("yes", "2026-01-01"), said("no", "2026-01-01"))?.said).toBe("no")
  })

  it("is refused where one card has no room for both", () => {
    const long = card({ note: "a".repeat(1500) })
    expect(mergeCards(long, card({ note: "b".repeat(1500) }))).toBeNull()
  })
})
