import { describe, expect, it } from "vitest"
import { stitches } from "../../../presets/placement/foils"
import { usualValues } from "../../../presets/techniques/technique"
import { type HouseTechnique, houseTechniques, techniques } from "../../../presets/techniques/techniques"
import { houseTechnique } from "../../../web/words/every/houseTechnique"
import { everyLanguage } from "../../support/words"

const waysOf = ({ parameters }: HouseTechnique) =>
  "ways" in parameters ? parameters.ways : (["only"] as const)
const measuresOf = ({
  parameters: { stitch: _, ways: __, ...measures },
}: HouseTechnique & { parameters: { stitch?: unknown; ways?: unknown } }) => Object.values(measures)

describe("the techniques of the house", () => {
  it("are twelve, each under an id of its own", () => {
    expect(techniques).toHaveLength(12)
    expect(new Set(techniques.map(({ id }) => id)).size).toBe(12)
    for (const [id, house] of Object.entries(houseTechniques)) expect(house.id).toBe(id)
  })

  it("have two ways through the frames that a head can wear in more than one", () => {
    const several = techniques.filter((house) => waysOf(house).length > 1).map(({ id }) => id)
    expect(several).toEqual(["bright-frame", "off-centre-frame", "unequal-sides", "fan-frame"])
  })

  it.each(techniques)("$id: another way is another work", (house) => {
    const laid = waysOf(house).map((way) =>
      JSON.stringify(house.shape({ ...usualValues(house), way }).sections),
    )
    expect(new Set(laid).size).toBe(laid.length)
  })

  it.each(techniques)("$id: a usual value lies in its span", (house) => {
    for (const { value, range } of measuresOf(house)) {
      expect(value).toBeGreaterThanOrEqual(range[0])
      expect(value).toBeLessThanOrEqual(range[1])
    }
  })
})

// Common practice, no source: fine 1-2 mm, medium 3-5, chunky 6-10.
it("picks stitches as wide as the trade's words for them say", () => {
  const spans = Object.values(stitches).map(({ stitchMm }) => stitchMm.range)
  expect(spans).toEqual([
    [1, 2],
    [3, 5],
    [6, 10],
  ])
  for (const { stitchMm } of Object.values(stitches)) {
    expect(stitchMm.value).toBeGreaterThanOrEqual(stitchMm.range[0])
    expect(stitchMm.value).toBeLessThanOrEqual(stitchMm.range[1])
  }
})

describe.each(everyLanguage)("the techniques of the house in %s", (_, words) => {
  it.each(techniques)("$id: say what it is for and what the hands do, in order, whichever way", (house) => {
    for (const way of waysOf(house))
      for (const count of "count" in house.parameters ? house.parameters.count.range : [0]) {
        const told = houseTechnique(house, words.techniques, { ...usualValues(house), count, way })
        expect(told.aim).toMatch(/\.$/)
        expect(told.notes.length).toBeGreaterThan(60)
        expect(told.steps.length).toBeGreaterThanOrEqual(5)
        for (const step of told.steps) {
          expect(step).toMatch(/^\p{Lu}.*[.]$/u)
          expect(step).not.toMatch(/undefined|NaN|\[object|#/)
        }
        expect(told.name).not.toBe("")
      }
  })

  it("call left-out hair by a name, never by its code", () => {
    const names = techniques.flatMap((house) =>
      houseTechnique(house, words.techniques).sections.flatMap(({ name }) => name ?? []),
    )
    expect(names.length).toBeGreaterThan(2)
    for (const name of names) expect(Object.values(words.techniques.leftOut)).toContain(name)
  })
})

describe("what is varied", () => {
  const house = houseTechniques["temple-to-temple"]
  const values = { ...usualValues(house), depthMm: 2, gapMm: 6, count: 4 }
  const english = everyLanguage.find(([language]) => language === "en-GB")

  it("moves the rows: 3.5 mm of edge, then 2 taken and 6 left, four times", () => {
    const { sections } = house.shape(values)
    expect(sections.map(({ parting }) => ("from" in parting ? parting.from.behindMm : 0))).toEqual([
      5.5, 13.5, 21.5, 29.5,
    ])
    expect(sections.map(({ depthMm }) => depthMm.start)).toEqual([2, 2, 2, 2])
  })

  it("is said in the steps", () => {
    const told = english && houseTechnique(house, english[1].techniques, values)
    expect(told?.steps.join(" ")).toMatch(/5\.5\smm behind.*take 2\smm in front.*Leave 6\smm.*4 slices/)
  })
})
