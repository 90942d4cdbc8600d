import { describe, expect, it } from "vitest"
import { toPrintable } from "../../../../web/sheets/pens/printable"
import { sheetFonts } from "../../../support/sheetFonts"

const print = (text: string) => toPrintable(text, sheetFonts)

describe("text made printable", () => {
  it("keeps the letters of Europe", () => {
    for (const name of ["Łucja Żółć", "Ελένη Παπαδοπούλου", "Мария Щукина", "Tuyết Nhi", "Gonçalo & Søren"])
      expect(print(name)).toBe(name)
  })

  it("joins an accent written apart to its letter", () => {
    expect(print("Zoe\u0308")).toBe("Zo\u00eb")
  })

  it("puts one box for each letter or picture it lacks, however many code points that is", () => {
    expect(print("漢字")).toBe("□□")
    expect(print("👩🏽‍🦱 Ana")).toBe("□ Ana")
  })

  it("drops signs that turn the direction of writing, and makes one line of several", () => {
    expect(print("a\u202eb\u200fc")).toBe("abc")
    expect(print("a\nb\tc")).toBe("a b c")
  })
})
