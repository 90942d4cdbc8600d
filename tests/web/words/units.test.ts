import { describe, expect, it } from "vitest"
import { toolsOf } from "../../../web/words/tools"
import { customaryBeside } from "../../../web/words/units"
import { en, everyLanguage } from "../../support/words"

const us = toolsOf("en-US", customaryBeside).told
const plain = (text: string) => text.replaceAll("\u00a0", " ")

describe("units beside the metric ones, by NIST SP 811 (2008), B.8", () => {
  it("are told in American English alone", () => {
    for (const locale of ["en-GB", "de", "ja"]) {
      const { told, cm, mm, grams } = toolsOf(locale)
      expect([told.cm(25), told.mm(4), told.grams(60)]).toEqual([cm(25), mm(4), grams(60)])
    }
  })

  it.each([
    // 1 in = 25.4 mm: 25 cm are 9.84 in, 2.5 cm 0.98, 5 cm 1.97, 62 cm 24.41.
    [25, "25 cm (10 in)"],
    [2.5, "2.5 cm (1 in)"],
    [5, "5 cm (2 in)"],
    [62, "62 cm (24 1/2 in)"],
    [0, "0 cm"],
  ])("a length of hair of %f cm to half an inch", (cm, told) => expect(plain(us.cm(cm, 1))).toBe(told))

  it.each([
    // In 32nds of an inch: 1 mm is 1.26, 1.5 is 1.89, 4 is 5.04. In 16ths: 10 mm is 6.30, 20 is 12.60.
    [1, "1 mm (1/32 in)"],
    [1.5, "1.5 mm (1/16 in)"],
    [4, "4 mm (5/32 in)"],
    [10, "10 mm (3/8 in)"],
    [20, "20 mm (13/16 in)"],
    // In eighths: 25.4 mm is 8 and 62 mm 19.53.
    [25.4, "25.4 mm (1 in)"],
    [62, "62 mm (2 1/2 in)"],
    [0, "0 mm"],
  ])("a parting of %f mm as a ruler shows it", (mm, told) => expect(plain(us.mm(mm, 1))).toBe(told))

  it.each([
    // 1 oz = 28.3495 g: 60 g are 2.116 oz, 20 g 0.705, 28.3495 g 1.
    [60, "60 g (2.1 oz)"],
    [20, "20 g (0.71 oz)"],
    [28.3495, "28 g (1 oz)"],
    [0, "0.0 g"],
  ])("a bowl of %f g in ounces", (grams, told) => expect(plain(us.grams(grams))).toBe(told))

  it("a foil by both sides: 127 mm are 5 in, 305 mm 12.01, 100 mm 3.94 and 300 mm 11.81", () => {
    expect(plain(us.size(127, 305))).toBe("127 × 305 mm (5 × 12 in)")
    expect(plain(us.size(100, 300))).toBe("100 × 300 mm (3 7/8 × 11 3/4 in)")
    expect(toolsOf("en-GB").told.size(100, 300)).toBe("100 × 300 mm")
  })

  it("a range, and a temperature: 45 °C is 9/5 × 45 + 32", () => {
    expect(plain(us.gramsRange({ low: 40, mid: 50, high: 60 }))).toBe("40–60 g (1.4–2.1 oz)")
    expect(plain(us.celsius(45))).toBe("45 °C (113 °F)")
  })

  it("never leave a bracket within a bracket", () => {
    for (const [, { client, teaching }] of everyLanguage)
      expect(
        teaching.stepLines.product({
          code: "product",
          coats: [
            { part: "ends", mix: "A", rootsToMm: 25 },
            { part: "roots", mix: "B", rootsToMm: 25 },
          ],
          startMm: 12,
          isPastCushion: true,
          fromShare: 0,
          toShare: 1,
          faces: 2,
        }) + client.measures.lengthOption("chin", 25),
      ).not.toMatch(/\([^)]*\(/)
  })

  it("stay away from a figure that a choice near the root is known by", () => {
    const [, words] = everyLanguage.find(([language]) => language === "en-US") ?? ["", en]
    expect(plain(words.client.goals.rootOption("Tight", 3))).toBe("Tight, 3 mm")
    expect(plain(words.client.goals.rootOption("Soft", 20))).toBe("Soft, 20 mm (13/16 in)")
  })
})
