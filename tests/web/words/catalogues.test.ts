import { describe, expect, it } from "vitest"
import { languageFor } from "../../../web/words/every/languages"
import { toolsOf } from "../../../web/words/tools"
import { en, everyLanguage } from "../../support/words"

type Leaf = readonly [path: string, value: unknown]

const leaves = (group: object, path = ""): Leaf[] =>
  Object.entries(group).flatMap(([name, value]) =>
    typeof value === "object" && value !== null
      ? leaves(value, `${path}${name}.`)
      : [[`${path}${name}`, value] as Leaf],
  )

describe.each(everyLanguage)("the catalogue of %s", (_, words) => {
  it("has every message that British English has, of the same kind, and no other", () => {
    const kinds = (group: object) =>
      leaves(group)
        .map(([path]) => path)
        .sort()
    expect(kinds(words)).toEqual(kinds(en))
  })

  it("leaves no message empty", () => {
    expect(leaves(words).filter(([, value]) => value === "" || value === undefined)).toEqual([])
  })
})

describe("tools", () => {
  const english = toolsOf("en-GB")

  it("counts by the plural rules of the language: CLDR has four forms for Ukrainian", () => {
    const forms = { one: "# a", few: "# b", many: "# c", other: "# d" }
    expect([1, 2, 5, 21].map((n) => toolsOf("uk").count(n, forms))).toEqual(["1 a", "2 b", "5 c", "21 a"])
    expect([0, 1, 2].map((n) => english.count(n, forms))).toEqual(["0 d", "1 a", "2 d"])
    expect([1.5, 1200].map((n) => english.count(n, forms))).toEqual(["1.5 d", "1,200 d"])
  })

  it("writes grams in tenths below 10 and as whole ones above", () => {
    expect([0.04, 9.94, 9.96, 40.4].map(english.grams)).toEqual(["0.0 g", "9.9 g", "10 g", "40 g"])
    expect(toolsOf("de").grams(2.5)).toBe("2,5 g")
    expect(english.gramsRange({ low: 2.1, mid: 3, high: 12 })).toBe("2.1–12 g")
  })

  it("never writes a negative nought, nor a number that is none", () => {
    expect(english.number(-0.001)).toBe("0")
    expect(english.number(Number.NaN)).toBe("–")
  })

  it("writes lists and days as the language does", () => {
    expect(english.and(["a", "b", "c"])).toBe("a, b and c")
    expect(english.date("2026-03-09")).toBe("9 March 2026")
    expect(toolsOf("en-US").date("2026-03-09")).toBe("March 9, 2026")
  })
})

describe("the language of the screen", () => {
  it("is the first of the reader’s own that there are words for", () => {
    expect(languageFor(["en-US", "en"])).toBe("en-US")
    expect(languageFor(["en-AU"])).toBe("en-GB")
    expect(languageFor(["xx", "en-US"])).toBe("en-US")
    expect(languageFor([])).toBe("en-GB")
  })
})
