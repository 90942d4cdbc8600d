import { describe, expect, it } from "vitest"
import { papers } from "../../../../presets/sheets/papers"
import { newConsultation } from "../../../../web/core/document/consultation"
import { recordCard } from "../../../../web/sheets/cards/recordCard"
import type { Page } from "../../../../web/sheets/pens/page"
import { flow } from "../../../../web/sheets/setting/flow"
import { type } from "../../../../web/sheets/setting/typesetting"
import { busyPlan } from "../../../support/busyPlan"
import { spanOf, texts } from "../../../support/pageTexts"
import { servedPlan } from "../../../support/servedPlan"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { en, everyLanguage } from "../../../support/words"

const lay = (plan = servedPlan(), paper: (typeof papers)[keyof typeof papers] = papers.a4) =>
  recordCard(plan, sheetOptions({ paper, stops: "" }), sheetFonts)
const words = (pages: readonly Page[]) => texts(pages).map(({ text }) => text)

describe("the record card", () => {
  it("holds what was planned, done, seen and written, and says that it is private", () => {
    const said = words(lay()).join("\n")
    for (const part of [
      en.sheets.cards.record.private,
      "28 min on",
      "10 min: level 8",
      "Product in the eye",
      "Two minutes longer at the temple.",
      "Softer root on the left.",
      "mix A ________ g, mix B ________ g",
    ])
      expect(said).toContain(part)
  })
  it("says who worked, who placed each foil, and who asked", () => {
    const plan = servedPlan()
    if (!plan.service || !plan.consultation) throw new Error("no service")
    const { foils, log } = plan.service
    const said = words(
      lay({
        ...plan,
        consultation: { ...plan.consultation, askedBy: "Cleo D." },
        service: {
          ...plan.service,
          people: ["Ana Berg", "Mia"],
          foils: foils.map((foil, at) => ({ ...foil, lane: at === 1 ? 2 : 1 })),
          log: log.map((entry, at) =>
            entry.tap.kind === "on" ? { ...entry, tap: { ...entry.tap, by: at === 0 ? 1 : 2 } } : entry,
          ),
        },
      }),
    )
    for (const part of ["Cleo D.", "Colourist Ana Berg (AB), assistant Mia (M)"]) expect(said).toContain(part)
    expect(said.filter((part) => part.startsWith("placed by"))).toEqual(["placed by AB", "placed by M"])
  })
  it("says who mixed each bowl and who made each check where two worked, and of one alone nothing more", () => {
    const plan = servedPlan()
    if (!plan.service) throw new Error("no service")
    const { foils, log } = plan.service
    const bowl = {
      mix: "B",
      product: "House",
      developerVolume: 20,
      ratio: { lightener: 1, developer: 2 },
      lightenerG: 10,
      developerG: 20,
      foils: foils.map(({ id }) => id),
      potLifeMin: 60,
      mixedAtMs: 0,
      leftG: null,
    }
    const mixed = { ...log[0], tap: { kind: "mixed" as const, by: 1 as const }, atMs: 0, onAtMs: null }
    const service = {
      ...plan.service,
      endedAt: "2026-03-09T11:00:00Z",
      people: ["Ana Berg", "Mia"],
      bowls: [bowl],
      log: [mixed, ...log].map((entry) =>
        entry.tap.kind === "looked" ? { ...entry, tap: { ...entry.tap, by: 2 as const } } : entry,
      ),
    }
    const two = { ...service, foils: foils.map((foil, at) => ({ ...foil, lane: at === 1 ? 2 : 1 }) as const) }
    const close = (pages: readonly Page[]) => words(pages).join(" ")
    const said = close(lay({ ...plan, service: two }))
    for (const part of ["mixed at minute 0 by AB", "10 min: level 8, checked by M"])
      expect(said).toContain(part)
    expect(close(lay({ ...plan, service: { ...service, foils } }))).not.toMatch(
      /mixed at minute 0 by|checked by/,
    )
  })
  it("lays out a stop that was taken back in lines of its own, beside what it is, whole and within the page", () => {
    const about = `${"Two weeks ago at the hairline behind both ears ".repeat(6)}end`
    const withdrawn = [
      { rule: "patch-test-reacted", about, at: "2026-03-09T10:00:00.000Z", by: "W".repeat(80) },
    ]
    const plan = servedPlan()
    const consultation = { ...(plan.consultation ?? newConsultation()), withdrawn }
    for (const paper of Object.values(papers))
      for (const [language, catalogue] of everyLanguage) {
        const options = sheetOptions({ paper, language, words: catalogue })
        const all = texts(recordCard({ ...plan, consultation }, options, sheetFonts))
        const tag = all.find(({ text }) => text.includes("Two weeks"))?.tag
        const ofStop = all.filter((item) => item.tag === tag)
        const close = (text: string) => text.replace(/\s/g, "")
        const said = close(ofStop.map(({ text }) => text).join(""))
        expect(said.startsWith(close(catalogue.record.labels.withdrawn))).toBe(true)
        for (const part of [about, "W".repeat(80)]) expect(said).toContain(close(part))
        const labels = ofStop.filter(({ weight }) => weight === "semibold")
        const lines = ofStop.filter(({ weight }) => weight === "regular")
        expect(lines.length).toBeGreaterThan(3)
        expect(Math.max(...labels.map((item) => spanOf(item)[1]))).toBeLessThan(
          Math.min(...lines.map((item) => spanOf(item)[0])),
        )
        for (const item of ofStop)
          expect(spanOf(item)[1]).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 0.01)
      }
  })
  it("leaves rules to write on without beginning a page for them", () => {
    for (const paper of Object.values(papers)) {
      // The served card is as long as a Letter page: its note still fits, its rules are cut short.
      expect(lay(servedPlan(), paper)).toHaveLength(1)
    }
  })
  it("says on each page that the plan is held, in the type of the foil numbers, and why", () => {
    const held = {
      alert: en.sheets.map.alerts.stop,
      stops: "Do not mix: 1 stop. Patch test missing (invented).",
    }
    for (const paper of Object.values(papers)) {
      const pages = recordCard(busyPlan(60), sheetOptions({ paper, ...held }), sheetFonts)
      for (const page of pages) {
        const alert = texts([page]).find(({ text }) => text === held.alert)
        expect(alert?.sizePt).toBeGreaterThanOrEqual(type.number.sizePt)
        for (const { at } of texts([page])) expect(at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm)
      }
      expect(words([pages[0]]).join(" ")).toContain(held.stops)
    }
  })
  it("keeps inside the margins of either paper, over as many pages as it takes, with the table's head on each", () => {
    for (const paper of Object.values(papers)) {
      const pages = lay(busyPlan(120), paper)
      expect(pages.length).toBeGreaterThan(2)
      for (const item of texts(pages)) {
        const [left, right] = spanOf(item)
        expect(left).toBeGreaterThanOrEqual(paper.marginMm - 1e-6)
        expect(right).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 1e-6)
        expect(item.at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm)
      }
      expect(words([pages[1]])).toContain(en.sheets.cards.record.heads.checks)
    }
  })
})

describe("blocks in a run over pages", () => {
  const block = (heightMm: number) => ({ heightMm, items: [] })
  it("begin a page where they no longer fit, with their head over them again", () => {
    const head = block(2)
    const run = [block(6), { ...block(5), again: head }, { ...block(4), again: head }]
    expect(flow(run, 11)).toEqual([run.slice(0, 2), [head, run[2]]])
  })
  it("have a page to themselves where they are higher than one", () => {
    expect(flow([block(3), block(30), block(3)], 10).map(({ length }) => length)).toEqual([1, 1, 1])
  })
})
