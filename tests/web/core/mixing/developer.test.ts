import { describe, expect, test } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { chooseDeveloper, type LiftWish } from "../../../../web/core/mixing/developer"
import { consistencyFor, ratioFor } from "../../../../web/core/mixing/ratio"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const [powder, clay, cream, toner] = houseProducts
const wish = (
  fromLevel: number | null,
  liftToLevel: number | null,
  hair: Partial<LiftWish> = {},
): LiftWish => ({
  fromLevel,
  liftToLevel,
  hairline: false,
  fine: false,
  porous: false,
  lightened: false,
  ...hair,
})
const volumeOf = (sheet: ProductSheet, asked: LiftWish) => {
  const choice = chooseDeveloper(sheet, asked)
  return choice.kind === "chosen" ? choice.volume : choice.kind
}

// The powder's table: 10 vol 1-2 levels, 20 vol 3-4, 30 vol 5-6, 40 vol 7-9.
describe("the weakest developer that reaches the goal by the sheet", () => {
  test("worked choice of common practice: level 7, 3 levels, or 4 from 6: 20 vol at 1 : 2 for foils", () => {
    expect(volumeOf(powder, wish(7, 10))).toBe(20)
    expect(volumeOf(powder, wish(6, 10))).toBe(20)
    const consistency = consistencyFor({ kind: "slice", carrier: "foil", wideCoverage: false })
    expect(ratioFor(consistency, powder)).toEqual({ lightener: 1, developer: 2 })
  })

  test.each([
    [8, 9, 10],
    [7, 9, 10],
    [7, 9.5, 20],
    [5, 10, 30],
    [4, 10, 30],
  ])("from %d to %d: %s vol", (from, to, volume) => {
    expect(volumeOf(powder, wish(from, to))).toBe(volume)
  })

  test("a row without stated lift is passed over", () => {
    expect(volumeOf(clay, wish(8, 9))).toBe(20)
  })
})

describe("one step weaker is offered with its reason", () => {
  test("fine, porous hair: 10 vol, 1 level short", () => {
    const choice = chooseDeveloper(powder, wish(7, 10, { fine: true, porous: true }))
    expect(choice).toMatchObject({ kind: "chosen", volume: 20, weaker: { volume: 10, shortByLevels: 1 } })
    expect(choice.kind === "chosen" && choice.weaker?.reasons).toHaveLength(2)
  })

  test("no reason, or nothing weaker: no offer", () => {
    expect(chooseDeveloper(powder, wish(7, 10))).toMatchObject({ weaker: null })
    expect(chooseDeveloper(powder, wish(8, 9, { lightened: true }))).toMatchObject({
      volume: 10,
      weaker: null,
    })
  })
})

describe("stages come before a stronger developer", () => {
  test("7 levels: two visits of 4 and 3 with 20 vol; 40 vol is named, not chosen", () => {
    expect(chooseDeveloper(powder, wish(3, 10))).toEqual({
      kind: "stages",
      why: { code: "more-than-one-visit", liftLevels: 7, mostLevels: 6, volume: 30, visits: 2 },
      stages: [
        { fromLevel: 3, toLevel: 7, volume: 20, levels: { low: 3, high: 4 } },
        { fromLevel: 7, toLevel: 10, volume: 20, levels: { low: 3, high: 4 } },
      ],
      strongerVolume: 40,
    })
  })

  test("the hairline never goes over 20 vol: 5 levels become 3 and 2", () => {
    const choice = chooseDeveloper(powder, wish(5, 10, { hairline: true }))
    expect(choice).toMatchObject({
      kind: "stages",
      stages: [
        { fromLevel: 5, toLevel: 8, volume: 20 },
        { fromLevel: 8, toLevel: 10, volume: 10 },
      ],
      strongerVolume: 30,
    })
  })

  test("40 vol is never chosen for anyone, nor is anything over 20 at the hairline", () => {
    for (const sheet of houseProducts)
      for (let from = 1; from <= 10; from += 0.5)
        for (let to = 1; to <= 10; to += 0.5)
          for (const hairline of [false, true]) {
            const choice = chooseDeveloper(sheet, wish(from, to, { hairline, porous: true }))
            const volumes =
              choice.kind === "chosen"
                ? [choice.volume]
                : choice.kind === "stages"
                  ? choice.stages.map((s) => s.volume)
                  : []
            expect(Math.max(0, ...volumes)).toBeLessThanOrEqual(hairline ? 20 : 30)
            if (choice.kind === "stages") expect(choice.stages.at(-1)?.toLevel).toBe(to)
          }
  })
})

describe("what the clock does not expect is not proposed", () => {
  const reachedBy = (mostLevels: Readonly<Record<number, number>>) => (volume: number, levels: number) =>
    levels <= (mostLevels[volume] ?? 0)
  const expects = reachedBy({ 10: 1, 20: 3.4, 30: 5.4 })

  test("2 levels, which 10 vol prints but is not expected to give in time: 20 vol, the usual", () => {
    expect(chooseDeveloper(powder, wish(7, 9), expects)).toMatchObject({
      kind: "chosen",
      volume: 20,
      why: { code: "lift-expected", liftLevels: 2, volume: 20, weakerVolume: 10 },
    })
  })

  test("4 levels, which 20 vol prints but is not expected to give: two visits of 2, never 30 vol", () => {
    expect(chooseDeveloper(powder, wish(6, 10), expects)).toMatchObject({
      kind: "stages",
      why: { code: "not-in-one-visit", liftLevels: 4, volume: 20, visits: 2 },
      stages: [
        { fromLevel: 6, toLevel: 8, volume: 20 },
        { fromLevel: 8, toLevel: 10, volume: 20 },
      ],
    })
  })

  test("no visit of any goal is one that is not expected", () => {
    for (const hairline of [false, true])
      for (let from = 1; from < 10; from += 0.5)
        for (let to = from + 0.5; to <= 10; to += 0.5) {
          const choice = chooseDeveloper(powder, wish(from, to, { hairline }), expects)
          if (choice.kind === "chosen") expect(expects(choice.volume, to - from)).toBe(true)
          if (choice.kind === "stages")
            for (const { volume, fromLevel, toLevel } of choice.stages)
              expect(expects(volume, toLevel - fromLevel)).toBe(true)
        }
  })
})

describe("what cannot be worked out says so", () => {
  test.each([
    [powder, wish(null, 10), "unknown", /^Current level not entered\. Enter it before/],
    [powder, wish(7, null), "unknown", /^Target level not entered/],
    [
      { ...powder, developers: [{ volume: 20, levels: null }] },
      wish(7, 10),
      "unknown",
      /states no levels of lift\. Enter them/,
    ],
    [
      powder,
      wish(8, 6),
      "none",
      /^Target level 6 is darker than the hair \(8\)\. Lightener cannot darken: choose/,
    ],
    [powder, wish(8, 8), "none", /level 8 already/],
    [powder, wish(8, 11), "none", /beyond the scale\. Choose 10/],
    [toner, wish(8, 9), "none", /states no lift/],
  ])("%#", (sheet, asked, kind, words) => {
    const choice = chooseDeveloper(sheet, asked)
    expect(choice.kind).toBe(kind)
    expect(say(en.formula.mixing.why, choice.why)).toMatch(words)
  })

  test("and names no strength: none follows from not knowing", () => {
    for (const sheet of houseProducts)
      for (const asked of [wish(null, 10), wish(7, null), wish(null, null)])
        expect(Object.keys(chooseDeveloper(sheet, asked)).toSorted()).toEqual(["kind", "why"])
  })
})

describe("ratio by consistency, inside the sheet", () => {
  test.each([
    ["slice", "foil", false, 2],
    ["slice", "foil", true, 2.5],
    ["backcomb", "foil", true, 1.5],
    ["weave", "board", false, 1.5],
    ["slice", "open-air", false, 1.5],
  ] as const)("%s on %s, wide %s: 1 : %d", (kind, carrier, wideCoverage, developer) => {
    expect(ratioFor(consistencyFor({ kind, carrier, wideCoverage }), powder).developer).toBe(developer)
  })

  test("the sheet's range holds: clay at most 1 : 1.5, cream at most 1 : 2", () => {
    expect(ratioFor("creamy", clay).developer).toBe(1.5)
    expect(ratioFor("loose", cream).developer).toBe(2)
    expect(ratioFor("thick", { ratio: { low: 2, high: 3 } }).developer).toBe(2)
  })
})
