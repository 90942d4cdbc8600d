import { describe, expect, test } from "vitest"
import { pigmentAt, tonePlan, tonerWords } from "../../../../web/core/tone/tone"

// Pairs as taught in US licensing material: orange-blue, yellow-violet, red-green, and those between. What shows at a
// level, and minutes of 5 to 20, are common practice, no source.
describe("what shows, and what stands across from it", () => {
  test.each([
    [1, "dark red-brown", "green"],
    [5, "red-orange", "blue-green"],
    [6, "orange", "blue"],
    [7, "yellow-orange", "blue-violet"],
    [8, "yellow", "violet"],
    [10, "very pale yellow", "soft violet or pearl"],
  ])("level %d: %s, %s", (level, pigment, neutraliser) => {
    expect(pigmentAt(level)).toMatchObject({ pigment, neutraliser })
  })

  test("between two levels the warmer one counts; beyond the scale its end does", () => {
    expect(pigmentAt(7.9).pigment).toBe("yellow-orange")
    expect(pigmentAt(0.5).level).toBe(1)
    expect(pigmentAt(11).level).toBe(10)
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
    expect(plan.map(({ words }) => words)).toEqual([
      "A shade at level 6, drawn down 30 mm.",
      "Level 8 shows yellow; violet stands across from it.",
      "Level 9.5 shows pale yellow; violet stands across from it.",
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
      words: "Level 8 shows yellow; keep it.",
      strength: expect.stringMatching(/no neutraliser/),
    })
    expect(neutral.strength).toMatch(/^half/)
  })

  test("names the family of the toner and how strong", () => {
    const wordsOf = (finish: "cool" | "neutral" | "warm") => tonePlan([melt, mids], finish).map(tonerWords)
    expect(wordsOf("cool")).toEqual([
      "Root shade: full strength.",
      "Toner of the violet family: full strength.",
    ])
    expect(wordsOf("neutral")[1]).toBe("Toner of the violet family: half strength, let down with clear.")
    expect(wordsOf("warm")[1]).toBe("Toner of the gold family: clear or a sheer gold, no neutraliser.")
  })

  test("what is not known says so", () => {
    expect(tonePlan([{ ...mids, level: null }], null)[0].words).toMatch(
      /not known yet; choose the tone at the basin/,
    )
    expect(tonePlan([{ ...melt, rootLevel: null, drawnDownMm: null }], null)[0].words).toBe(
      "A shade as deep as the root, drawn down 25 mm.",
    )
  })
})
