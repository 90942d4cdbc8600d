import { describe, expect, test } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { chooseDeveloper, type LiftWish } from "../../../../web/core/mixing/developer"
import { consistencyFor, ratioFor } from "../../../../web/core/mixing/ratio"

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
      why: "7 levels is more than one visit gives: up to 6 with 30 vol, the strongest used here. Plan 2 visits and look at the hair between them.",
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

describe("what cannot be worked out says so", () => {
  test.each([
    [powder, wish(null, 10), "unknown", /level now is not known/],
    [powder, wish(7, null), "unknown", /level to lift to is not known/],
    [
      { ...powder, developers: [{ volume: 20, levels: null }] },
      wish(7, 10),
      "unknown",
      /states no levels of lift; type them in/,
    ],
    [powder, wish(8, 6), "none", /Level 6 is darker than the hair now, 8; lightener cannot darken\. Choose/],
    [powder, wish(8, 8), "none", /level 8 already/],
    [powder, wish(8, 11), "none", /beyond the scale; choose 10/],
    [toner, wish(8, 9), "none", /states no lift/],
  ])("%#", (sheet, asked, kind, words) => {
    const choice = chooseDeveloper(sheet, asked)
    expect(choice.kind).toBe(kind)
    expect(choice.why).toMatch(words)
  })

  test("then the usual 20 vol is at hand where the sheet has it", () => {
    expect(chooseDeveloper(powder, wish(null, 10))).toMatchObject({ usualVolume: 20 })
    expect(chooseDeveloper(toner, wish(null, 10))).toMatchObject({ usualVolume: null })
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
