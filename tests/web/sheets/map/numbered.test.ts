import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { papers } from "../../../../presets/sheets/papers"
import type { Plan } from "../../../../web/core/document/schema"
import { techniqueSections } from "../../../../web/core/edits/lay/layTechnique"
import { headOf } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { pictureOf } from "../../../../web/drawing/headDrawing"
import { bandMiddle } from "../../../../web/drawing/marks"
import { placementMap } from "../../../../web/sheets/map/placementMap"
import type { Item, TextItem } from "../../../../web/sheets/pens/page"
import { spanOf } from "../../../support/pageTexts"
import { emptyPlan } from "../../../support/samples"
import { sheetFonts, sheetOptions } from "../../../support/sheetFonts"
import { usualTechniques } from "../../../support/techniques"
import { en } from "../../../support/words"

const plans: [name: string, plan: Plan][] = [
  ["the example", examplePlan()],
  ...usualTechniques.map((technique): [string, Plan] => [
    technique.name,
    { ...emptyPlan, sections: techniqueSections(technique, emptyPlan) },
  ]),
]

/** The figures of a map: each with its view and the numbers written on it. */
function viewsOf(plan: Plan, paper: (typeof papers)[keyof typeof papers]) {
  const { captions } = en.sheets.views
  const items = placementMap(plan, sheetOptions({ paper }), sheetFonts).flatMap((page) => page.items)
  const byFigure = new Map<string, TextItem[]>()
  for (const item of items) {
    const alt = item.tag?.role === "Figure" ? (item.tag.alt ?? "") : ""
    const name = Object.entries(captions).find(([, caption]) => alt.includes(`: ${caption}.`))?.[0]
    if (!name) continue
    byFigure.set(name, [...(byFigure.get(name) ?? []), ...numbersIn(item)])
  }
  return byFigure
}

const numbersIn = (item: Item): TextItem[] =>
  item.kind === "text" && item.sizePt === 18 && /^\d+$/.test(item.text) ? [item] : []

describe("the numbers on a map", () => {
  it.each(plans)("stand once at each view that shows the foil, and each readable: %s", (_, plan) => {
    const foils = plan.sections.filter(isFoil)
    const numbers = foils.map(({ mapNumber }) => mapNumber)
    expect([...numbers].sort((a, b) => a - b)).toEqual(numbers.map((_, i) => i + 1))
    for (const paper of Object.values(papers)) {
      const views = viewsOf(plan, paper)
      expect(views.size).toBeGreaterThanOrEqual(3)
      const shownAnywhere = new Set<number>()
      for (const [name, written] of views) {
        const { scene } = pictureOf(headOf(plan), name as Parameters<typeof pictureOf>[1])
        const seen = foils.filter((foil) => bandMiddle(foil, plan, scene) !== null)
        const said = written.map(({ text }) => Number(text))
        expect([name, said.sort((a, b) => a - b)]).toEqual([
          name,
          seen.map(({ mapNumber }) => mapNumber).sort((a, b) => a - b),
        ])
        for (const number of said) shownAnywhere.add(number)
        for (const [i, one] of written.entries())
          for (const other of written.slice(i + 1)) {
            const [a, b] = [spanOf(one), spanOf(other)]
            const isBeside = a[1] < b[0] || b[1] < a[0]
            expect(
              isBeside || Math.abs(one.at[1] - other.at[1]) > 4.2,
              `${name}: ${one.text} ${other.text}`,
            ).toBe(true)
          }
      }
      expect([...shownAnywhere].sort((a, b) => a - b)).toEqual([...numbers].sort((a, b) => a - b))
    }
  })
})
