import { describe, expect, it } from "vitest"
import { papers } from "../../../../presets/sheets/papers"
import { newConsultation } from "../../../../web/core/document/consultation"
import { newSalon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { takeHome } from "../../../../web/sheets/cards/takeHome"
import type { Page } from "../../../../web/sheets/pens/page"
import { answersOn } from "../../../support/answers"
import { spanOf, texts } from "../../../support/pageTexts"
import { servedPlan } from "../../../support/servedPlan"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { en } from "../../../support/words"

const example: Plan = {
  ...examplePlan(),
  note: "asthma in childhood",
  toning: { toner: { product: "House toner (invented)", developerVolume: 5, parts: 2 }, rootShade: null },
  consultation: {
    ...newConsultation(),
    scalp: { seen: "sensitive" as const, on: "2026-03-09" },
    answers: answersOn("2026-03-09", { asthma: "yes" }),
  },
}
const lay = (plan = example, paper: (typeof papers)[keyof typeof papers] = papers.a4) =>
  takeHome(plan, sheetOptions({ paper, stops: "NOT CLEARED" }), sheetFonts)
const words = (pages: readonly Page[]) => texts(pages).map(({ text }) => text)

describe("the sheet to take home", () => {
  it("fits one page of either paper, inside its margins, with a toner as well", () => {
    for (const paper of Object.values(papers)) {
      const pages = lay(example, paper)
      expect(pages).toHaveLength(1)
      for (const item of texts(pages)) {
        const [left, right] = spanOf(item)
        expect(left).toBeGreaterThanOrEqual(paper.marginMm - 1e-6)
        expect(right).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 1e-6)
        expect(item.at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm)
      }
    }
  })
  it("sets what is to be read in 14 points or more", () => {
    const furniture = /^(To take home|9 March 2026, page|Client |As you see yourself)/
    for (const { text, sizePt } of texts(lay()))
      if (!furniture.test(text)) expect([text, sizePt >= 14]).toEqual([text, true])
  })
  it("names what was used, the days to come back, and what to do about skin and breath", () => {
    const said = words(lay()).join(" ")
    expect(said).toContain("To be lightened with House powder (invented).")
    expect(said).toContain("To be toned with House toner (invented).")
    expect(said).toContain("6 – 20 April 2026")
    expect(said).toContain("by 4 April 2026")
    const winter = words(lay({ ...example, date: "2026-12-01" })).join(" ")
    expect(winter).toContain("29 December 2026 – 12 January 2027")
    expect(said).toContain("call your emergency number (_________) at once")
  })
  it("says how the salon is reached: as the desk has it, and what the desk does not say as the plan brought it", () => {
    const contact = { name: "Corner (invented)", phone: "555 0100", emergency: "112" }
    const old = { ...example, salon: { ...newSalon(), contact } }
    const said = words(lay(old)).join(" ")
    for (const part of ["Corner (invented), 555 0100", "call 112 at once"]) expect(said).toContain(part)
    const here = { name: "", phone: "555 0199", emergency: "999" }
    const now = words(takeHome(old, sheetOptions({ contact: here }), sheetFonts)).join(" ")
    for (const part of ["Corner (invented), 555 0199", "call 999 at once"]) expect(now).toContain(part)
    const bare = words(takeHome({ ...example, salon: undefined }, sheetOptions({ contact }), sheetFonts))
    expect(bare.join(" ")).toContain("call 112 at once")
  })
  it("prints no gram, no volume, no stop and no health answer", () => {
    const said = words(lay()).join(" ")
    expect(said).not.toMatch(/\b\d+(\.\d+)? ?g\b|\bvol|NOT CLEARED|asthma|sensitive|childhood/i)
    expect(said).not.toMatch(/\b(safe|guaranteed?|no damage)\b/i)
  })
  it("draws the foils that went on and no other", () => {
    const drawn = (plan: typeof example) => lay(plan)[0].items.filter(({ kind }) => kind === "clipped")
    const { service, ...served } = servedPlan()
    const onAlone = service?.log.flatMap(({ tap }) => (tap.kind === "on" ? tap.foil : [])) ?? []
    const sections = served.sections.filter(({ id }) => onAlone.includes(id))
    expect(drawn({ ...example, ...servedPlan() })).toEqual(drawn({ ...example, sections }))
    expect(drawn({ ...example, ...servedPlan() })).not.toEqual(drawn(example))
  })
  it("prints a plan without foils too", () => {
    expect(words(lay({ ...example, sections: [] })).join(" ")).toContain(en.sheets.cards.takeHome.skin)
  })
  it("is the same drawing turned left to right as in the mirror, whatever the map's front is", () => {
    const drawn = (mirror: boolean) => JSON.stringify(takeHome(example, sheetOptions({ mirror }), sheetFonts))
    expect(drawn(true)).toBe(drawn(false))
  })
})
