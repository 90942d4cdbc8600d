import { describe, expect, it } from "vitest"
import { areaText, countText, gramsRange, gramsText, hairsNumber } from "../../../../web/core/text/figureText"

describe("figures as a person reads them", () => {
  it("gives grams in tenths below ten and whole above", () => {
    expect(gramsText(3.94)).toBe("3.9 g")
    expect(gramsText(9.96)).toBe("10 g")
    expect(gramsText(0)).toBe("0.0 g")
    expect(gramsRange({ low: 2.44, mid: 3.9, high: 12.3 })).toBe("2.4–12 g")
  })
  it("counts hairs to two figures", () => {
    expect(hairsNumber(791)).toBe("790")
    expect(hairsNumber(12_345)).toBe("12,000")
    expect(hairsNumber(48)).toBe("50")
    expect(hairsNumber(0)).toBe("0")
  })
  it("writes areas and counts", () => {
    expect(areaText(3.46)).toBe("3.5 cm²")
    expect(areaText(584.6)).toBe("585 cm²")
    expect(countText(1, "foil")).toBe("1 foil")
    expect(countText(1200, "hair")).toBe("1,200 hairs")
  })
})
