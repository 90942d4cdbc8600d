import { describe, expect, it } from "vitest"
import { lacksLetter, lineWidthEm, runsOf, toPrintable } from "../../../../web/sheets/pens/printable"
import { fontsOfScreen } from "../../../support/fakeLetters"
import { sheetFonts } from "../../../support/sheetFonts"

const print = (text: string) => toPrintable(text, sheetFonts)

describe("text made printable without a screen", () => {
  it("keeps the letters of Europe", () => {
    for (const name of ["Łucja Żółć", "Ελένη Παπαδοπούλου", "Мария Щукина", "Tuyết Nhi", "Gonçalo & Søren"])
      expect(print(name)).toBe(name)
  })

  it("joins an accent written apart to its letter", () => {
    expect(print("Zoe\u0308")).toBe("Zo\u00eb")
  })

  it("puts the code of each letter or picture it lacks, one for all the code points of a picture", () => {
    expect(print("漢字")).toBe("[U+6F22][U+5B57]")
    expect(print("سلمى")).toBe("[U+0633][U+0644][U+0645][U+0649]")
    expect(print("👩🏽‍🦱 Ana")).toBe("[U+1F469+U+1F3FD+U+1F9B1] Ana")
  })

  it("is the same when it is made printable twice", () => {
    for (const text of ["漢字 Ana", "👩🏽‍🦱", "a\u202eb"]) expect(print(print(text))).toBe(print(text))
  })

  it("drops signs that turn the direction of writing, and makes one line of several", () => {
    expect(print("a\u202eb\u200fc")).toBe("abc")
    expect(print("a\nb\tc")).toBe("a b c")
  })

  it("keeps a space that does not break, the narrow one as the usual one", () => {
    expect(print("30\u202f%, 40\u00a0%")).toBe("30\u00a0%, 40\u00a0%")
  })

  it("says whether a letter is lost", () => {
    expect(lacksLetter("Zoe\u0308 \u200f&\u202f30", sheetFonts)).toBe(false)
    expect(lacksLetter("漢", sheetFonts)).toBe(true)
    expect(lacksLetter("漢", fontsOfScreen)).toBe(false)
    expect(lacksLetter("漢\u0e01", fontsOfScreen)).toBe(true)
  })
})

describe("text beside a system's own letters", () => {
  it("is kept, with what joins its letters and without what turns their direction", () => {
    const persian = "می\u200cخواهم"
    expect(toPrintable(`\u202e${persian}`, fontsOfScreen)).toBe(persian)
    expect(toPrintable("漢\u0e01", fontsOfScreen)).toBe("漢[U+0E01]")
  })

  it("is set in runs, and what stands between two words of another script goes with them", () => {
    const runs = (text: string) =>
      runsOf(text, fontsOfScreen, "regular").map((run) => (run.isOwn ? run.text : `<${run.text}>`))
    expect(runs("Client 山田 花子, 14")).toEqual(["Client ", "<山田 花子>", ", 14"])
    expect(runs("سلمى (2) حسن")).toEqual(["<سلمى (2) حسن>"])
    expect(runs("김 & Ana & 이")).toEqual(["<김>", " & Ana & ", "<이>"])
    expect(runs("Ana")).toEqual(["Ana"])
  })

  it("is as wide as its runs together", () => {
    const own = sheetFonts.regular.widthEm("Client ")
    expect(lineWidthEm("Client 山田", fontsOfScreen, "regular")).toBeCloseTo(own + 2, 12)
  })
})
