import { describe, expect, it } from "vitest"
import { drawHead } from "../../../../geometry/portrait/outline"
import { isFoil } from "../../../../geometry/section/section"
import { fixedViews } from "../../../../geometry/surface/views"
import { papers } from "../../../../presets/sheets/papers"
import { newConsultation } from "../../../../web/core/document/consultation"
import { figuresOf, headOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { placementMap } from "../../../../web/sheets/map/placementMap"
import type { Page } from "../../../../web/sheets/pens/page"
import { busyPlan } from "../../../support/busyPlan"
import { backPlan, framePlan, manyPlan } from "../../../support/framePlan"
import { spanOf, texts } from "../../../support/pageTexts"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { en } from "../../../support/words"

const lay = (plan = framePlan, options: Partial<Parameters<typeof placementMap>[1]> = {}) =>
  placementMap(plan, sheetOptions(options), sheetFonts)

const words = (pages: readonly Page[]) => texts(pages).map(({ text }) => text)

describe("the placement map", () => {
  it("says whose it is, and which page of how many", () => {
    expect(words(lay())).toEqual(
      expect.arrayContaining(["Face frame", "Client K.W.", "9 March 2026, page 1 of 2"]),
    )
    const pages = lay(manyPlan(60))
    expect(pages.length).toBeGreaterThan(2)
    expect(words([pages[2]])).toContain(`9 March 2026, page 3 of ${pages.length}`)
  })

  it("names the client's left and right in words at every view", () => {
    const shown = words(lay())
    expect(shown.filter((text) => text === "CLIENT’S LEFT")).toHaveLength(1)
    expect(shown.filter((text) => text === "CLIENT’S RIGHT")).toHaveLength(1)
    expect(shown.filter((text) => text === "CLIENT’S")).toHaveLength(2)
  })

  it("numbers every foil on the drawing in 18 point or more", () => {
    const numbers = texts(lay()).filter(({ sizePt }) => sizePt >= 18)
    for (const number of ["1", "2", "3"]) expect(numbers.map(({ text }) => text)).toContain(number)
  })

  it.each(["stop", "notAsked"] as const)(
    "says in the head of each page that it is held, in type no smaller than the foil numbers: %s",
    (state) => {
      const alert = en.sheets.map.alerts[state]
      const pages = lay(manyPlan(60), { alert })
      expect(pages.length).toBeGreaterThan(2)
      for (const page of pages) {
        const [said, ...more] = texts([page]).filter(({ text }) => text === alert)
        expect(more).toEqual([])
        expect(said.sizePt).toBeGreaterThanOrEqual(18)
        expect(said.at[1]).toBeLessThan(page.paper.marginMm + 30)
      }
    },
  )

  it.each(Object.values(papers))("prints a head full of foils, each with its number, on $name", (paper) => {
    const pages = lay(busyPlan(60), { paper })
    const numbers = texts(pages).filter(({ sizePt }) => sizePt >= 18)
    const shown = new Set(numbers.map(({ text }) => text))
    for (let number = 1; number <= 60; number++) expect(shown).toContain(String(number))
    for (const { at } of texts(pages)) {
      expect(at[0]).toBeGreaterThanOrEqual(paper.marginMm - 0.01)
      expect(at[0]).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 0.01)
      expect(at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm + 0.01)
    }
  })

  it("prints a scale bar that is true for the head beside it", () => {
    const [page] = lay()
    const xs = (paths: readonly (readonly (readonly number[])[])[]) => paths.flat().map(([x]) => x)
    const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
    const profile = page.items.filter((item) => item.kind === "clipped")[1]
    const head = profile.items.flatMap((item) => (item.kind === "stamp" ? item.parts : []))
    const outline = head.filter((item) => item.kind === "lines" && item.weightPt === 1.5)
    const printedMm = spread(xs(outline.flatMap((item) => (item.kind === "lines" ? item.paths : []))))
    const drawn = drawHead(headOf(framePlan).axes, fixedViews.right).lines
    const headMm = spread(xs(drawn.filter(({ weight }) => weight === "bold").map(({ path }) => path)))
    const bar = page.items.find(
      (item) =>
        item.kind === "lines" &&
        item.closed &&
        Math.abs(spread(item.paths[0].map(([, y]) => y)) - 1.8) < 1e-9,
    )
    const barMm = bar?.kind === "lines" ? spread(xs(bar.paths)) : 0
    expect(barMm / 50).toBeCloseTo(printedMm / headMm, 6)
  })

  it("changes left and right over as in the mirror, and says so", () => {
    const placeOf = (text: string, mirror: boolean) =>
      texts(lay(framePlan, { mirror })).find((item) => item.text === text && item.sizePt === 18)?.at[0]
    expect(words(lay(framePlan, { mirror: true }))).toContain("IN THE MIRROR")
    expect(words(lay())).not.toContain("IN THE MIRROR")
    const [facing, mirrored] = [placeOf("1", false), placeOf("1", true)]
    const middle = papers.a4.marginMm + (210 - 16 - 4) / 2 / 2
    expect((facing ?? 0) - middle).toBeCloseTo(middle - (mirrored ?? 0), 3)
  })

  it("gives every foil its row of figures, and hair left out its name", () => {
    const shown = words(lay())
    for (const section of framePlan.sections.filter(isFoil)) {
      const { partingMm, hairG, productG } = figuresOf(section, framePlan)
      expect(shown).toContain(String(Math.round(partingMm)))
      for (const grams of [hairG, productG.low, productG.mid, productG.high])
        expect(shown).toContain(grams.toFixed(1))
    }
    expect(shown).toEqual(expect.arrayContaining(["2–3.5", "Weave 3/2", "Left out: Veil", "Veil"]))
  })

  it("gives the mix with product, strength, ratio and the bowl at the upper figure", () => {
    const shown = words(lay()).join("\n")
    expect(shown).toContain("House clay\n10 vol (3 %), 2 : 3")
    const upperG = figuresOf(framePlan.sections[3], framePlan).productG.high
    // 5 % and 6 g stay in bowl and brush, and no bowl is under 30 g: 2 parts of 5 are lightener (common practice).
    const lightenerG = Math.ceil((Math.max(30, upperG * 1.05 + 6) * 2) / 5)
    expect(shown).toContain(
      `${lightenerG} g lightener + ${Math.round((lightenerG * 3) / 2)} g developer, minute`,
    )
  })

  it("carries cautions, and neither notes nor anything about health", () => {
    const shown = words(lay()).join(" ")
    expect(shown).toContain("Maker’s directions first, then local law")
    expect(shown).toContain("No heat unless the directions allow it.")
    // The plan is of foils: "No metal" could not be obeyed.
    expect(shown).toContain("No metal bowls or clips.")
    expect(shown).not.toMatch(/No metal\./)
    expect(shown).not.toContain("asthma")
    expect(shown).not.toContain("sore spot")
    expect(shown).not.toMatch(/\b(safe|guaranteed|no damage)\b/i)
  })

  it("runs on over as many pages as it needs, the head of the table on each", () => {
    const pages = lay(manyPlan(60))
    const heads = pages.filter((page) => words([page]).includes("Parting"))
    expect(heads.length).toBeGreaterThan(1)
    const rows = texts(pages).filter(({ sizePt }) => sizePt === 14)
    expect(rows.map(({ text }) => Number(text))).toEqual(Array.from({ length: 60 }, (_, i) => i + 1))
  })

  it("shows the back only when a foil lies there", () => {
    expect(words(lay())).not.toContain("BACK")
    expect(words(lay(backPlan))).toContain("BACK")
  })

  it("keeps every word inside the margins of either paper, in type of 9.5 point or more", () => {
    for (const paper of [papers.a4, papers.letter])
      for (const plan of [framePlan, backPlan, manyPlan(60)])
        for (const item of texts(lay(plan, { paper }))) {
          const [left, right] = spanOf(item)
          expect(left, item.text).toBeGreaterThanOrEqual(paper.marginMm - 0.01)
          expect(right, item.text).toBeLessThanOrEqual(paper.widthMm - paper.marginMm + 0.01)
          expect(item.at[1]).toBeLessThanOrEqual(paper.heightMm - paper.marginMm)
          expect(item.sizePt).toBeGreaterThanOrEqual(9.5)
        }
  })

  it("prints no number over another", () => {
    for (const page of lay(manyPlan(40))) {
      const numbers = texts([page]).filter(({ sizePt }) => sizePt === 18)
      for (const [i, one] of numbers.entries())
        for (const other of numbers.slice(i + 1)) {
          const isBeside = spanOf(one)[1] < spanOf(other)[0] || spanOf(other)[1] < spanOf(one)[0]
          expect(isBeside || Math.abs(one.at[1] - other.at[1]) > 4.2, `${one.text} ${other.text}`).toBe(true)
        }
    }
  })

  it("needs no third page for a usual face frame with toner and root melt, and loses nothing of it", () => {
    const toner = { product: "House toner (invented)", developerVolume: 10, parts: 2 }
    const consultation = { ...newConsultation(), rootMeltMm: 25 }
    const plan = { ...examplePlan(), consultation, toning: { toner, rootShade: toner } }
    for (const paper of Object.values(papers)) {
      const pages = lay(plan, { paper })
      expect(pages, paper.name).toHaveLength(2)
      const { starts, stitches, title } = en.sheets.map.ruler
      const headings = [en.sheets.map.toner.title, title, starts, stitches]
      for (const heading of [...headings, "Clock, minutes from the first parting"])
        expect(words(pages).filter((text) => text === heading)).toHaveLength(1)
    }
  })

  it("can be printed before a foil is drawn", () => {
    const pages = lay({ ...framePlan, name: "", sections: [] })
    expect(pages).toHaveLength(1)
    expect(words(pages)).toContain("Plan without a name")
  })

  it("keeps a crowd of mixes on its pages", () => {
    const letters = Array.from("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
    const many = manyPlan(26)
    const plan = {
      ...many,
      mixes: letters.map((id) => ({ ...many.mixes[0], id, product: `Powder ${id}` })),
      sections: many.sections.map((section, i) => ({ ...section, mix: letters[i] })),
    }
    const items = texts(lay(plan))
    for (const id of letters) expect(items.map(({ text }) => text)).toContain(`Powder ${id}`)
    for (const { at } of items) expect(at[1]).toBeLessThanOrEqual(papers.a4.heightMm - papers.a4.marginMm)
  })

  it("says so when letters cannot be printed", () => {
    const note = en.sheets.cautions.codedLetters
    const said = (pages: readonly Page[]) => words(pages).join(" ")
    expect(said(lay())).not.toContain(note)
    const plan = { ...framePlan, name: "Łucja 🌟", client: { initials: "山田" } }
    expect(said(lay(plan))).toContain(note)
    expect(words(lay(plan))).toEqual(expect.arrayContaining(["Łucja [U+1F31F]", "Client [U+5C71][U+7530]"]))
    const toning = { toner: { product: "염색약", developerVolume: 5, parts: 2 }, rootShade: null }
    expect(said(lay({ ...framePlan, toning }))).toContain(note)
  })
})
