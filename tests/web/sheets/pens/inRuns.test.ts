import { describe, expect, it } from "vitest"
import { inRuns } from "../../../../web/sheets/pens/inRuns"
import type { Item } from "../../../../web/sheets/pens/page"
import { svgPage } from "../../../../web/sheets/pens/svgPages"
import { letters, type } from "../../../../web/sheets/setting/typesetting"
import { fontsOfScreen } from "../../../support/fakeLetters"
import { sheetFonts } from "../../../support/sheetFonts"

const em = (type.body.sizePt * 25.4) / 72
const widthOf = (text: string) => sheetFonts.regular.widthEm(text) * em
const placed = (items: readonly Item[]) =>
  items.map((item) => (item.kind === "text" || item.kind === "run" ? [item.kind, item.text, item.at[0]] : []))

describe("a line in runs", () => {
  it("begins where the whole line would, whatever its side", () => {
    const line = "Ana 山田!"
    const wide = widthOf("Ana ") + 2 * em + widthOf("!")
    for (const [align, from] of [
      ["left", 50],
      ["center", 50 - wide / 2],
      ["right", 50 - wide],
    ] as const) {
      const runs = placed(inRuns([letters(line, [50, 10], type.body, align)], fontsOfScreen))
      expect(runs.map(([kind, text]) => [kind, text])).toEqual([
        ["text", "Ana "],
        ["run", "山田"],
        ["text", "!"],
      ])
      const lefts = [from, from + widthOf("Ana "), from + widthOf("Ana ") + 2 * em]
      for (const [i, [, , left]] of runs.entries()) expect(left).toBeCloseTo(lefts[i], 9)
    }
  })

  it("is one thing that is read", () => {
    const runs = inRuns([letters("Ana 山田!", [0, 0], type.body)], fontsOfScreen)
    expect(new Set(runs.map(({ tag }) => tag)).size).toBe(1)
  })

  it("leaves a line alone that is all of the sheets' own letters", () => {
    const item = letters("Ana", [0, 0], type.body, "right")
    expect(inRuns([item], fontsOfScreen)).toEqual([item])
  })

  it("is shown in the system's letters on the screen", () => {
    const paper = { name: "A4", widthMm: 210, heightMm: 297, marginMm: 12 }
    const items = inRuns([letters("Ana 山<田", [50, 10], type.body)], fontsOfScreen)
    const svg = svgPage({ paper, items }, "page", "")
    expect(svg).toMatch(/font-family="system-ui, sans-serif"[^>]*>山&lt;田</)
  })
})
