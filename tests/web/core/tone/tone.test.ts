import { describe, expect, test } from "vitest"
import { pigmentAt, tonePlan } from "../../../../web/core/tone/tone"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

// Pairs as taught in US licensing material: orange-blue, yellow-violet, red-green, and those between. What shows at a
// level, and minutes of 5 to 20, are common practice, no source.
describe("what shows, and what stands across from it", () => {
  test.each([
    [1, "dark-red-brown", "green"],
    [5, "red-orange", "blue-green"],
    [6, "orange", "blue"],
    [7, "yellow-orange", "blue-violet"],
    [8, "yellow", "violet"],
    [10, "very-pale-yellow", "soft-violet"],
  ])("level %d: %s, %s", (level, pigment, neutraliser) => {
    expect(pigmentAt(level)).toMatchObject({ pigment, neutraliser })
  })

  test("between two levels the warmer one counts; beyond the scale its end does", () => {
    expect(pigmentAt(7.9).pigment).toBe("yellow-orange")
    expect(pigmentAt(0.5)).toBe(pigmentAt(1))
    expect(pigmentAt(11)).toBe(pigmentAt(10))
  })
})

describe("a mix a zone", () => {
  const mids = { zone: "mids", level: 8, porous: false } as const
  const hairline = { zone: "hairline", level: 9.5, porous: true } as const
  const melt = { zone: "root-melt", rootLevel: 6, drawnDownMm: 30 } as const

  test("the root melt first, the porous hairline last and shortest", () => {
    const plan = tonePlan([hairline, mids, melt], "cool")
    expect(plan.map(({ zone }) => zone)).toEqual(["root-melt", "mids", "hairline"])
    expect(plan.map(({ minutes }) => [minutes.low, minutes.high])).toEqual([
      [5, 20],
      [5, 20],
      [5, 10],
    ])
    expect(plan.map(({ tone }) => say(en.formula.tone.shows, tone))).toEqual([
      "A shade at level 6, melted down 30 mm.",
      "Level 8 shows yellow; neutralise with violet.",
      "Level 9.5 shows pale yellow; neutralise with violet.",
    ])
  })

  test("porous mids wait for a hairline that is not", () => {
    const plan = tonePlan(
      [
        { ...mids, porous: true },
        { ...hairline, porous: false },
      ],
      "cool",
    )
    expect(plan.map(({ zone }) => zone)).toEqual(["hairline", "mids"])
  })

  test("a warm finish keeps its pigment; a neutral one takes half the tone", () => {
    const [warm, neutral] = (["warm", "neutral"] as const).map((finish) => tonePlan([mids], finish)[0])
    expect(warm).toMatchObject({
      tone: { code: "keep", level: 8, pigment: "yellow" },
      strength: "sheer",
    })
    expect(neutral.strength).toBe("half")
  })

  test("names the family of the toner and how strong", () => {
    const wordsOf = (finish: "cool" | "neutral" | "warm") =>
      tonePlan([melt, mids], finish).map(en.formula.tone.mix)
    expect(wordsOf("cool")).toEqual([
      "Root shade: full strength.",
      "Toner of the violet family: full strength.",
    ])
    expect(wordsOf("neutral")[1]).toBe("Toner of the violet family: half strength (dilute with clear).")
    expect(wordsOf("warm")[1]).toBe("Toner of the gold family: clear or a sheer gold, no neutraliser.")
  })

  test("what is not known says so", () => {
    expect(tonePlan([{ ...mids, level: null }], null)[0].tone).toEqual({ code: "level-unknown" })
    expect(tonePlan([{ ...melt, rootLevel: null, drawnDownMm: null }], null)[0].tone).toEqual({
      code: "melt",
      rootLevel: null,
      downMm: 25,
    })
  })
})
