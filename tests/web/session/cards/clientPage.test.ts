import { describe, expect, it } from "vitest"
import { newCard } from "../../../../web/core/cards/card"
import { savePlan } from "../../../../web/core/file/planFile"
import { nextService } from "../../../../web/core/record/nextService"
import { clientPage } from "../../../../web/session/cards/clientPage"
import { servedPlan } from "../../../support/servedPlan"
import { en, everyLanguage } from "../../../support/words"

const zone = "Europe/London"
const card = {
  ...newCard("c", "Ada <Brightwell>"),
  phone: "0123",
  allergies: [{ kind: "other" as const, to: "nickel & co", since: "2019" }],
  note: "Tea, no sugar.\nLeft-handed.",
}
const served = { ...servedPlan(), name: "March frame" }
const page = (plans: readonly string[], words = en) =>
  clientPage({ madeAt: "2026-05-18T09:00:00Z", card, plans }, { words, zone })
const said = (html: string) =>
  html
    .slice(html.indexOf("<main>"))
    .replace(/<[^>]*>/g, "\n")
    .replace(/\n+/g, "\n")

describe("one client as a page to read", () => {
  it("holds the card, what was asked, what went wrong, what was mixed and every foil", () => {
    const text = said(page([savePlan(served)]))
    for (const each of [
      "Ada &lt;Brightwell&gt;",
      "All that is kept of this client, saved on 18 May 2026",
      "nickel &amp; co",
      "Left-handed.",
      "9 March 2026: March frame",
      "yes: Contact lenses in today?",
      "Foil 1: the hair was limp",
      "Foil 1, 28 min, level 8.5",
      "Softer root on the left.",
      "House toner (invented)",
    ])
      expect(text, each).toContain(each)
  })

  it("tells a service whose own plan is gone, and one that has its plan once", () => {
    const next = nextService(served, "2026-05-18", zone)
    const limp = en.cards.last.limp(1)
    expect(said(page([savePlan(next)]))).toContain(`Done on 9 March 2026`)
    expect(said(page([savePlan(next), savePlan(served)])).split(limp)).toHaveLength(2)
  })

  it("says of a plan that cannot be read that it is in the file", () => {
    expect(said(page(["{"]))).toContain(
      "A plan that cannot be read\nIt stands in the file as it was written.",
    )
  })

  it("asks nothing of the network, runs nothing, and is in the language of the screen", () => {
    for (const [language, words] of everyLanguage) {
      const html = page([savePlan(served)], words)
      expect(html).toContain(`<html lang="${language}">`)
      expect(html).toContain("default-src 'none'")
      expect(html).not.toMatch(/<script|<img|<link|https?:/)
    }
  })
})
