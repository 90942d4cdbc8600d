import { describe, expect, it } from "vitest"
import { firstLines, shorten, type, widthMm, wrap } from "../../../../web/sheets/setting/typesetting"
import { fontsOfScreen } from "../../../support/fakeLetters"
import { british } from "../../../support/sheetFonts"

const screen = { ...british, fonts: fontsOfScreen }
const kanji = "山田花子佐藤一郎鈴木次郎"
const codesOf = (text: string) =>
  [...text].map((letter) => `[U+${letter.codePointAt(0)?.toString(16).toUpperCase()}]`)

describe("lines with letters that the typeface lacks", () => {
  it("break between words, and a run that is too wide between its letters, with none lost", () => {
    const lines = wrap(`Client ${kanji} today`, 20, type.body, screen)
    expect(lines.join("").replaceAll(" ", "")).toBe(`Client${kanji}today`)
    for (const line of lines) expect(widthMm(line, type.body, screen)).toBeLessThanOrEqual(20)
    expect(wrap(`Ana ${kanji}`, 60, type.body, screen)).toEqual([`Ana ${kanji}`])
    expect(wrap(`Ana Maria Luisa ${kanji}`, 60, type.body, screen)).toEqual(["Ana Maria Luisa", kanji])
  })

  it("keep each code whole where nothing can draw the letter", () => {
    const lines = wrap(kanji, 40, type.body, british)
    expect(lines.length).toBeGreaterThan(3)
    expect(lines.join("")).toBe(codesOf(kanji).join(""))
    for (const line of lines) expect(line).toMatch(/^(\[U\+[0-9A-F]{4}\])+$/)
  })

  it("are cut between codes, never within one", () => {
    const [first, second] = codesOf(kanji)
    for (const width of [20, 25, 30, 34])
      expect([`…`, `${first}…`, `${first}${second}…`]).toContain(shorten(kanji, width, type.body, british))
    expect(shorten(kanji, 500, type.body, british)).toBe(codesOf(kanji).join(""))
  })

  it("show that there is more where only the first lines are set", () => {
    expect(firstLines("one two three four", 2, 10, type.body, british).at(-1)).toMatch(/…$/)
    expect(firstLines("one two", 2, 10, type.body, british).join(" ")).toBe("one two")
  })

  it("break a long word of the sheets' own letters as well", () => {
    const word = "Donaudampfschifffahrtsgesellschaft"
    const lines = wrap(word, 20, type.body, british)
    expect(lines.join("")).toBe(word)
    for (const line of lines) expect(widthMm(line, type.body, british)).toBeLessThanOrEqual(20)
  })
})
