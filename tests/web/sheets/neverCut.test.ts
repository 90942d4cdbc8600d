import { describe, expect, it } from "vitest"
import { isFoil } from "../../../geometry/section/section"
import { papers } from "../../../presets/sheets/papers"
import { sheetNames } from "../../../presets/sheets/sheetNames"
import { newConsultation } from "../../../web/core/document/consultation"
import { newSalon } from "../../../web/core/document/salon"
import type { Plan } from "../../../web/core/document/schema"
import { letters } from "../../../web/core/fields/limits"
import { examplePlan } from "../../../web/core/file/examplePlan"
import type { Page, Paper, TextItem } from "../../../web/sheets/pens/page"
import { layOutSheet } from "../../../web/sheets/sheetKinds"
import { spanOf, texts } from "../../support/pageTexts"
import { servedPlan } from "../../support/servedPlan"
import { sheetFonts, sheetOptions } from "../../support/sheetFonts"
import { everyLanguage } from "../../support/words"

const filled = (words: string, most: number) => words.repeat(most).slice(0, most)

/** The longest that may be typed: words, one word, and one of the widest letters. */
const longest: Record<string, string> = {
  words: `${filled("Gesichtsrahmen mit Übergang ", letters.name - 1)}x`,
  "one word": filled("Strähnentechnikzusammenstellung", letters.name),
  "wide letters": filled("W", letters.name),
}

/** The example with all that has a name called so. */
function named(name: string): Plan {
  const plan = examplePlan()
  const contact = { name, phone: name, emergency: name.slice(0, letters.moment) }
  return {
    ...plan,
    name,
    client: { initials: filled("W", letters.initials) },
    mixes: plan.mixes.map((mix) => ({ ...mix, product: name })),
    sections: plan.sections.map((each, i) => (i < 3 || !isFoil(each) ? { ...each, name } : each)),
    salon: { ...newSalon(), ...plan.salon, contact },
    consultation: {
      ...(plan.consultation ?? newConsultation()),
      withdrawn: [{ rule: "patch-test-reacted", about: name, at: "2026-03-09T10:00:00.000Z", by: name }],
    },
  }
}

const close = (text: string) => text.replace(/\s/g, "")

function isOutside(item: TextItem, { paper }: Page): boolean {
  const [left, right] = spanOf(item)
  const [, y] = item.at
  return (
    left < paper.marginMm - 0.01 ||
    right > paper.widthMm - paper.marginMm + 0.01 ||
    y < paper.marginMm ||
    y > paper.heightMm - paper.marginMm + 0.01
  )
}

/** Texts whose letters lie over each other, by their base lines and capitals. */
function covered(all: readonly TextItem[]): string[] {
  const boxes = all
    .filter(({ text }) => text.trim())
    .map((item) => ({ item, span: spanOf(item), top: item.at[1] - 0.2 * item.sizePt }))
    .sort((a, b) => a.top - b.top)
  return boxes.flatMap((one, i) => {
    const found: string[] = []
    for (const other of boxes.slice(i + 1)) {
      if (other.top >= one.item.at[1]) break
      const sharedMm = Math.min(one.span[1], other.span[1]) - Math.max(one.span[0], other.span[0])
      if (sharedMm > 0.25) found.push(`${one.item.text} | ${other.item.text}`)
    }
    return found
  })
}

describe.each(everyLanguage)("sheets in %s", (language, words) => {
  const options = (paper: Paper) =>
    sheetOptions({ paper, language, words, alert: words.sheets.map.alerts.notAsked })

  it.each(sheetNames)("cut no title, product or name, and keep within their margins: %s", (sheet) => {
    const faults = Object.entries(longest).flatMap(([kind, name]) =>
      Object.values(papers).flatMap((paper) => {
        const { pages } = layOutSheet(sheet, named(name), options(paper), sheetFonts)
        const whole = close(
          texts(pages)
            .map(({ text }) => text)
            .join(""),
        )
        // Beside the drawing hair left out has room for the beginning of its name: the table says it whole.
        const isToldBelow = (item: TextItem) =>
          sheet === "placement" && item.sizePt === 9.5 && whole.includes(close(name))
        return pages.flatMap((page, i) => {
          const all = texts([page])
          const head = all.filter(({ tag }) => tag?.role === "H1").map(({ text }) => text)
          return [
            ...(close(head.join("")) === close(name) ? [] : [`title ${head.join(" ")}`]),
            ...all
              .filter((item) => item.text.includes("…") && !isToldBelow(item))
              .map(({ text }) => `cut ${text}`),
            ...all.filter((item) => isOutside(item, page)).map(({ text }) => `outside ${text}`),
            ...covered(all).map((both) => `covered ${both}`),
          ].map((fault) => `${kind}, ${paper.name} ${i + 1}: ${fault}`)
        })
      }),
    )
    expect([...new Set(faults)]).toEqual([])
  })

  it.each(sheetNames)("write nothing over anything else: %s", (sheet) => {
    const plans = { planned: examplePlan(), served: servedPlan() }
    const faults = Object.entries(plans).flatMap(([which, plan]) =>
      Object.values(papers).flatMap((paper) =>
        layOutSheet(sheet, plan, options(paper), sheetFonts).pages.flatMap((page, i) => {
          const all = texts([page])
          return [
            ...covered(all),
            ...all.filter((item) => isOutside(item, page)).map(({ text }) => `outside ${text}`),
          ].map((both) => `${which}, ${paper.name} ${i + 1}: ${both}`)
        }),
      ),
    )
    expect(faults).toEqual([])
  })
})
