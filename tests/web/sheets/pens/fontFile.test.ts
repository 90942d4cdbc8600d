import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { readFontFile } from "../../../../web/sheets/pens/fontFile"

const regular = readFontFile(readFileSync("web/sheets/pens/fonts/PartlineSans-Regular.ttf"))

describe("the typeface of the sheets", () => {
  // Source Sans sets every figure 497 units wide in a square of 1000, and the space 200.
  it("has figures of one width", () => {
    for (const figure of "0123456789") expect(regular.widthEm(figure)).toBe(0.497)
  })

  it("adds the widths of a line", () => {
    expect(regular.widthEm("12 7")).toBeCloseTo(3 * 0.497 + 0.2, 12)
  })

  it("has the letters of Europe and the signs the sheets use, and no others", () => {
    for (const letter of "ÅłżőşČΩάѣЖїỹ·²…−×°–’→↓")
      expect(regular.has(letter.codePointAt(0) ?? 0), letter).toBe(true)
    for (const letter of "漢ع😀ก") expect(regular.has(letter.codePointAt(0) ?? 0), letter).toBe(false)
  })
})
