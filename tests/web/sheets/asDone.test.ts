import { describe, expect, it } from "vitest"
import type { SheetName } from "../../../presets/sheets/sheetNames"
import type { Plan } from "../../../web/core/document/schema"
import type { RecordedBowl } from "../../../web/core/document/serviceRecord"
import { examplePlan } from "../../../web/core/file/examplePlan"
import { layOutSheet } from "../../../web/sheets/sheetKinds"
import { texts } from "../../support/pageTexts"
import { servedPlan } from "../../support/servedPlan"
import { sheetFonts, sheetOptions } from "../../support/sheetFonts"
import { en } from "../../support/words"

const bowl: RecordedBowl = {
  mix: "A",
  product: "House powder (invented)",
  developerVolume: 20,
  ratio: { lightener: 1, developer: 2 },
  lightenerG: 11,
  developerG: 22,
  foils: [],
  potLifeMin: 60,
  mixedAtMs: 3 * 60_000,
  leftG: 6.5,
}

/** A service that was done with one bowl of 11 + 22 g and a toner; then the plan took 30 vol, another tone and one foil less. */
function doneThenChanged(): Plan {
  const plan = servedPlan()
  if (!plan.service) throw new Error("no service")
  const { head, hair, mixes, sections, toning } = plan
  const drawn = { head, hair, mixes, sections, ...(toning && { toning }) }
  const toner = {
    zone: "mids" as const,
    product: "House gloss (invented)",
    developerVolume: 6,
    productG: 20.5,
    clearG: 10.2,
    developerG: 41,
    plannedMin: 5,
    limitMin: 20,
    onAtMs: 60 * 60_000,
    offAtMs: 67 * 60_000,
    leftG: 3.4,
  }
  const unused = { ...toner, zone: "hairline" as const, onAtMs: null, offAtMs: null }
  return {
    ...plan,
    mixes: plan.mixes.map((mix) => ({ ...mix, developerVolume: 30, product: "Another powder" })),
    sections: plan.sections.slice(1),
    service: {
      ...plan.service,
      endedAt: "2026-03-09T12:00:00Z",
      bowls: [bowl, { ...bowl, mixedAtMs: null, lightenerG: 99, leftG: null }],
      toners: [toner, unused],
      drawn,
    },
  }
}

/** Two bowls of mix A by two recipes, one of a mix that is gone, and a plan that says a third at the end. */
function changedBetweenBowls(): Plan {
  const { service, ...plan } = doneThenChanged()
  if (!service?.drawn) throw new Error("no drawing")
  const first = { ...bowl, product: "First powder (invented)" }
  const second = {
    ...bowl,
    developerVolume: 30,
    ratio: { lightener: 1, developer: 1.5 },
    mixedAtMs: 20 * 60_000,
  }
  const dropped = { ...bowl, mix: "Z", product: "Dropped powder (invented)" }
  const mixes = service.drawn.mixes.map((mix) =>
    mix.id === "A" ? { ...mix, product: "Named at the end", developerVolume: 40 } : mix,
  )
  return {
    ...plan,
    service: { ...service, bowls: [first, second, dropped], drawn: { ...service.drawn, mixes } },
  }
}

const lines = (name: SheetName, plan: Plan) =>
  texts(layOutSheet(name, plan, sheetOptions(), sheetFonts).pages).map(({ text }) => text)
const said = (name: SheetName, plan: Plan) => lines(name, plan).join(" ")

describe("the sheets of a service that was done", () => {
  it.each(["placement", "record"] as const)(
    "%s: says what was mixed and toned, not what the plan would mix now",
    (name) => {
      const words = said(name, doneThenChanged())
      expect(words).toContain("11 g lightener + 22 g developer, mixed at minute 3")
      expect(words).not.toContain("99 g")
      expect(words).toContain("House gloss (invented), 6 vol")
      expect(words).toContain("20.5 + 10.2 + 41 g (toner, clear, developer), 7 min on")
      expect(words).not.toContain("Another powder")
      expect(words).not.toContain("30 vol")
    },
  )
  it("heads the map's bowls so, and writes what was left where it was weighed", () => {
    expect(said("placement", doneThenChanged())).toContain(en.sheets.map.bowls.doneTitle)
    expect(said("record", doneThenChanged())).toContain("mix A 6.5 g")
    expect(said("record", doneThenChanged())).toContain("House gloss (invented) 3.4 g")
  })
  it.each(["placement", "record"] as const)(
    "%s: gives each bowl the product and strength it was weighed with, not those of the plan at the end",
    (name) => {
      const words = said(name, changedBetweenBowls())
      for (const weighed of ["First powder (invented)", "20 vol (6 %), 1 : 2", "30 vol (9 %), 1 : 1.5"])
        expect(words).toContain(weighed)
      expect(words).toContain("House powder (invented)")
      expect(words).not.toContain("40 vol")
      // Foils of mix B went on, and nobody tapped its bowl.
      expect(words).toContain(en.formula.onSheet.notRecorded)
      // Mixed for a mix that no foil is left of.
      expect(words).toContain("Dropped powder (invented)")
    },
  )
  it("names to the client what was weighed", () => {
    const { service, ...plan } = doneThenChanged()
    if (!service?.drawn) throw new Error("no drawing")
    const { drawn } = service
    const bowls = drawn.mixes.map(({ id }) => ({ ...bowl, mix: id, product: "First powder (invented)" }))
    const mixes = drawn.mixes.map((mix) => ({ ...mix, product: "Named at the end" }))
    const words = said("take-home", { ...plan, service: { ...service, bowls, drawn: { ...drawn, mixes } } })
    expect(words).toContain("First powder (invented)")
    expect(words).not.toContain("Named at the end")
  })
  it("tells the grams of a bowl of toner at the zone that got some, where the first it was mixed for got none", () => {
    const plan = doneThenChanged()
    if (!plan.service?.toners) throw new Error("no toners")
    const [mids] = plan.service.toners
    const hairline = { ...mids, zone: "hairline" as const, productG: null, developerG: null }
    const toners = [{ ...mids, onAtMs: null, offAtMs: null }, hairline]
    const words = said("record", { ...plan, service: { ...plan.service, toners } })
    expect(words).toContain("Hairline last: 20.5 + 10.2 + 41 g (toner, clear, developer), 7 min on")
    expect(words).toContain("House gloss (invented) 3.4 g")
    expect(words).not.toContain("Mid-lengths:")
  })
  it("tells the client of the toner that went on", () => {
    expect(said("take-home", doneThenChanged())).toContain("House gloss (invented)")
  })
  it("keeps every foil that went on, also one that the plan has dropped since", () => {
    const before = servedPlan()
    expect(said("take-home", doneThenChanged())).toBe(
      said("take-home", { ...doneThenChanged(), mixes: before.mixes, sections: before.sections }),
    )
  })
  it("heads the record's bowls as mixed only once the service has ended: until then they are planned", () => {
    const { mixed, planned } = en.sheets.cards.record
    const titles = (plan: Plan) => {
      const written = lines("record", plan)
      return [mixed, planned].filter((title) => written.includes(title))
    }
    expect(titles(doneThenChanged())).toEqual([mixed])
    expect(titles(examplePlan())).toEqual([planned])
    expect(titles(servedPlan())).toEqual([planned])
  })
  it("plans on where nothing was done", () => {
    expect(said("placement", examplePlan())).toContain(en.sheets.map.bowls.title)
    expect(said("placement", examplePlan())).not.toContain("mixed at minute")
  })
})
