import { describe, expect, it, test } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { newSalon, type Salon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { netOf } from "../../../../web/core/figures/measured"
import { startBelief } from "../../../../web/core/grams/startBelief"
import { followScale } from "../../../../web/core/weighing/followScale"
import { learntOf } from "../../../../web/core/weighing/learnt"
import { isEmptySalon, needOf, salonForPlans } from "../../../../web/core/weighing/salonOfPlan"
import { salonProblem } from "../../../../web/core/weighing/salonProblem"
import {
  emptySalonShelf,
  joinedSalon,
  type KeptWeighing,
  readSalonShelf,
  type SalonShelf,
} from "../../../../web/core/weighing/salonRecord"
import { isSameSalon, sameLearnt, sameStart } from "../../../../web/core/weighing/sameSalon"
import { trustCode, weighingsAsked } from "../../../../web/core/weighing/trust"
import { placedFrom } from "../../../../web/core/weighing/weighedBowl"
import { readWeighings, tooLargeList } from "../../../../web/core/weighing/weighingCsv"
import { weighingsFile } from "../../../../web/core/weighing/weighingsFile"
import { weighingsNeeded } from "../../../../web/core/weighing/weighingsNeeded"
import { weighingsSeen } from "../../../../web/core/weighing/weighingsSeen"
import { keptWeighing as weighing } from "../../../support/keptWeighing"
import { done, samplePlan } from "../../../support/samples"

const [powder] = houseProducts
const bowls = (count: number): KeptWeighing[] =>
  Array.from({ length: count }, (_, i) => ({ ...weighing, id: `w${i}`, productG: 17 + i / 10 }))
const shelf = (change: Partial<SalonShelf> = {}): SalonShelf => ({ ...emptySalonShelf(), ...change })
const start = { salons: 3, grams: null, halfTimes: null, paces: null } as unknown as NonNullable<
  Salon["start"]
>
const price = { amount: 24, forG: 500 }
const contact = { name: "Corner", phone: "1", emergency: "112" }

describe("whether a salon has anything of its own", () => {
  it("has not, new or with nothing said of how it is reached", () => {
    expect(isEmptySalon(newSalon())).toBe(true)
    expect(isEmptySalon({ ...newSalon(), contact: { name: "", phone: "", emergency: "" } })).toBe(true)
  })
  test.each<[string, Partial<Salon>]>([
    ["a sheet", { sheets: [powder] }],
    ["a bottle", { bottles: [20] }],
    ["a price of developer", { developerPrice: price }],
    ["a scale", { scaleStepG: 1 }],
    ["a start from others", { start }],
    ["a telephone", { contact: { name: "", phone: "1", emergency: "" } }],
    ["a price", { prices: { ...newSalon().prices, toner: 12 } }],
    ["what its scale taught", { learnt: learntOf(bowls(9)) }],
  ])("has with %s", (_, change) => {
    expect(isEmptySalon({ ...newSalon(), ...change })).toBe(false)
  })
})

describe("what a bowl went on", () => {
  const mixOf = (id: string) =>
    samplePlan.sections.filter(isFoil).find((section) => section.id === id)?.mix ?? ""
  const foil = (id: string) => netOf({ ...samplePlan.sections[0], id }, samplePlan)
  it("is the hair and the strand of its foils together, and their kind where it is one", () => {
    const [one, two] = [foil("s1"), foil("s2")]
    expect(needOf(["s1", "s2"], "A", samplePlan)).toEqual({
      need: {
        panels: one.foils + two.foils,
        hairG: one.hairG + two.hairG,
        strandAreaCm2: one.strandAreaCm2 + two.strandAreaCm2,
      },
      kind: null,
    })
    expect(needOf(["s2"], mixOf("s2"), samplePlan)).toMatchObject({
      need: { hairG: two.hairG },
      kind: "weave",
    })
    expect(needOf([], "A", samplePlan)).toEqual({
      need: { panels: 0, hairG: 0, strandAreaCm2: 0 },
      kind: null,
    })
  })
  it("is a panel of a board, though no foil is used up", () => {
    const onBoard: Plan = {
      ...samplePlan,
      sections: samplePlan.sections.map((section) =>
        section.id === "s1" && section.kind !== "left-out"
          ? { ...section, carrier: { ...section.carrier, kind: "board" as const } }
          : section,
      ),
    }
    expect(netOf(onBoard.sections[0], onBoard).hairG).toBeGreaterThan(0)
    expect(needOf(["s1"], mixOf("s1"), onBoard).need.panels).toBeGreaterThanOrEqual(1)
  })
})

it("learns nothing from a weighing that is left out", () => {
  const some = bowls(9).map((row, i) => (i < 7 ? { ...row, leftOut: true } : row))
  expect(salonForPlans(shelf({ weighings: some })).learnt).toEqual([])
  expect(salonForPlans(shelf({ weighings: bowls(9) })).learnt).not.toEqual([])
  expect(salonForPlans(shelf({ bottles: [20] }))).not.toHaveProperty("weighings")
})

it("learns of a product and a kind each by itself, from three weighings on", () => {
  const rows = [...bowls(3), ...bowls(2).map((row) => ({ ...row, product: "Clay", kind: "weave" as const }))]
  expect(learntOf(rows).map(({ product, kind, weighings }) => [product, kind, weighings])).toEqual([
    [null, null, 5],
    [null, "slice", 3],
    [powder.name, null, 3],
    [powder.name, "slice", 3],
  ])
})

describe("what the browser kept of a salon", () => {
  const own = shelf({ scaleStepG: 0.5, contact, developerPrice: price, bottles: [20] })
  const broken = { ...weighing, id: "" }

  it("is a new one where nothing was kept, and no record at all where it is none", () => {
    expect(readSalonShelf(undefined)).toEqual({ salon: emptySalonShelf(), unread: [] })
    expect(readSalonShelf("a word")).toEqual({
      salon: emptySalonShelf(),
      unread: [{ field: null, value: "a word" }],
    })
  })
  it("is read as it was, and part by part beside a row that cannot be", () => {
    expect(readSalonShelf(own)).toEqual({ salon: own, unread: [] })
    expect(readSalonShelf({ ...own, sheets: [powder], weighings: [broken] })).toEqual({
      salon: { ...own, sheets: [powder] },
      unread: [{ field: "weighings", value: broken }],
    })
  })
  it("has no part that nobody said, and none of a later Partline", () => {
    const { salon } = readSalonShelf({ ...emptySalonShelf(), weighings: [broken] })
    expect(Object.keys(salon).toSorted()).toEqual(
      ["bottles", "developerPrice", "prices", "sheets", "weighings"].toSorted(),
    )
  })
  it("tells of each part that cannot be read, once, and takes the usual in its place", () => {
    const kept = {
      ...own,
      sheets: "none",
      scaleStepG: -1,
      contact: 7,
      developerPrice: "much",
      prices: [],
      start: "x",
    }
    const { salon, unread } = readSalonShelf(kept)
    expect(salon).toEqual(shelf({ bottles: [20] }))
    expect(unread.map(({ field, value }) => [field, value])).toEqual(
      expect.arrayContaining([
        ["sheets", "none"],
        ["scaleStepG", -1],
        ["contact", 7],
        ["developerPrice", "much"],
        ["prices", []],
        ["start", "x"],
      ]),
    )
    expect(unread).toHaveLength(6)
  })
  it("lacks what was never written without a word", () => {
    const { sheets: _, ...without } = own
    expect(readSalonShelf(without)).toEqual({ salon: own, unread: [] })
  })
})

describe("a salon's things with those of another beside them", () => {
  const clay = { ...houseProducts[1] }
  const here = shelf({ sheets: [powder], bottles: [20], weighings: [weighing] })
  const other = shelf({
    sheets: [{ ...powder, longestMin: 5 }, clay],
    bottles: [20, 30],
    developerPrice: price,
    prices: { ...newSalon().prices, foil: 3 },
    weighings: [
      { ...weighing, productG: 99 },
      { ...weighing, id: "w2" },
    ],
    contact,
  })
  it("keep what is here and take only what is not", () => {
    expect(joinedSalon(here, other)).toEqual({
      ...here,
      sheets: [powder, clay],
      bottles: [20, 30],
      developerPrice: price,
      prices: { ...newSalon().prices, foil: 3 },
      weighings: [weighing, { ...weighing, id: "w2" }],
      contact,
    })
  })
  it("keep their own prices, all of them, once one is said", () => {
    const priced = shelf({
      prices: { ...newSalon().prices, toner: 9 },
      developerPrice: { amount: 8, forG: 1000 },
    })
    expect(joinedSalon(priced, other)).toMatchObject({ prices: priced.prices, developerPrice: { amount: 8 } })
  })
  it("never come to more than a shelf holds", () => {
    const volumes = (from: number) => Array.from({ length: 20 }, (_, i) => from + i)
    const both = joinedSalon(shelf({ bottles: volumes(1) }), shelf({ bottles: volumes(15) }))
    expect(both.bottles).toEqual(volumes(1))
  })
})

describe("whether two salons rule a plan alike", () => {
  const learnt = learntOf(bowls(4))
  it("goes by what they say, not by the order it was written in, and not past a file's rounding", () => {
    const one = { ...newSalon(), contact, bottles: [20] }
    const { sheets, ...rest } = one
    expect(isSameSalon(one, { ...rest, sheets })).toBe(true)
    expect(isSameSalon(one, { ...one, contact: { emergency: "112", phone: "1", name: "Corner" } })).toBe(true)
    expect(isSameSalon(one, { ...one, bottles: [20, 30] })).toBe(false)
    expect(isSameSalon({ ...one, bottles: [20, 30] }, { ...one, bottles: [30, 20] })).toBe(false)
  })
  it("goes by what they learnt and what they started from", () => {
    expect(sameLearnt(learnt, structuredClone(learnt))).toBe(true)
    expect(sameLearnt(learnt, [])).toBe(false)
    expect(sameStart(undefined, undefined)).toBe(true)
    expect(sameStart(undefined, start)).toBe(false)
  })
})

describe("how far a middle figure is trusted", () => {
  it("asks for eight weighings in all, however well the first agree", () => {
    expect(weighingsAsked({ withinShare: 0.05, more: 0 }, 3)).toBe(5)
    expect(weighingsAsked({ withinShare: 0.05, more: 0 }, 9)).toBe(0)
    expect(weighingsAsked({ withinShare: 0.3, more: 12 }, 3)).toBe(12)
    expect(weighingsAsked({ withinShare: 0.3, more: null }, 3)).toBeNull()
  })
  it("says so", () => {
    expect(trustCode({ withinShare: 1, more: null }, 3)).toEqual({ code: "no-agreement" })
    expect(trustCode({ withinShare: Number.NaN, more: 0 }, 9)).toEqual({ code: "no-agreement" })
    expect(trustCode({ withinShare: 0.9, more: null }, 9)).toEqual({
      code: "too-many-needed",
      withinShare: 0.9,
    })
    expect(trustCode({ withinShare: 0.1, more: 0 }, 9)).toEqual({ code: "trusted", withinShare: 0.1 })
    expect(trustCode({ withinShare: 0.1, more: 0 }, 7)).toEqual({
      code: "more-needed",
      withinShare: 0.1,
      more: 1,
    })
  })
})

describe("how many more weighings it takes", () => {
  const prior = startBelief(undefined)
  it("is told before anything was weighed, by what is usually weighed, and comes to fewer with each that agrees", () => {
    const asked = [0, 2, 4, 8].map((count) => weighingsNeeded(prior, bowls(count)).more ?? Number.NaN)
    expect(asked[0]).toBeGreaterThan(0)
    expect(asked).toEqual(asked.toSorted((a, b) => b - a))
    expect(weighingsNeeded(prior, bowls(40)).more).toBe(0)
  })
  it("is told as none that would do where one bowl of many shows a hundred times the grams, with how far the figure may be out", () => {
    const wild = bowls(12).map((row, i) => ({ ...row, productG: i === 3 ? 1700 : 17 }))
    const { more, withinShare } = weighingsNeeded(prior, wild)
    expect(more).toBeNull()
    expect(withinShare).toBeGreaterThan(0.15)
  })
})

it("writes weighings for a spreadsheet as the list of weighings is read, without those left out", () => {
  const rows = [
    { ...weighing, hairG: 5.123456 },
    { ...weighing, id: "w2", leftOut: true },
  ]
  const text = weighingsFile(rows)
  expect(text).toBe("hairG,strandAreaCm2,productG,foils\n5.1235,1600,17,4\n")
  expect(readWeighings(text)).toMatchObject({ ok: true, rows: [{ hairG: 5.1235, panels: 4 }] })
})

it("shows every weighing beside what is expected of it, and learns from those that count", () => {
  const odd = { ...weighing, id: "odd", productG: 170 }
  const rows = [...bowls(12), odd, { ...odd, id: "out", leftOut: true }]
  const seen = weighingsSeen(rows)
  expect(seen.rows.map(({ row }) => row.id)).toEqual(rows.map(({ id }) => id))
  expect(seen.counted).toBe(13)
  expect(seen.rows.filter(({ isDoubted }) => isDoubted).map(({ row }) => row.id)).toEqual(["odd"])
  expect(seen.rows[0].expectedG.low).toBeLessThan(seen.rows[0].expectedG.high)
  expect(weighingsSeen([]).figures).toEqual(weighingsSeen([]).start)
})

describe("what brings a plan to what the scale has taught", () => {
  const weighed = shelf({ weighings: bowls(9) })
  it("is an edit, once; nothing where nothing was weighed or the plan goes by it already", () => {
    expect(followScale(samplePlan, shelf())).toBeNull()
    const edit = followScale(samplePlan, weighed)
    if (!edit) throw new Error("no edit")
    const taught = done(edit)
    expect(taught.salon?.learnt.length).toBeGreaterThan(0)
    expect(followScale(taught, weighed)).toBeNull()
    expect(followScale(taught, shelf({ weighings: bowls(12) }))).not.toBeNull()
  })
  it("is never of a service that was done: its figures are history", () => {
    const service = { startedAt: "2026-03-09T10:00:00Z", foils: [], log: [], clockNotes: [] }
    expect(followScale({ ...samplePlan, service }, weighed)).toBeNull()
  })
})

it("names the weighing that teaches what no plan could hold: most grams for its strand", () => {
  const inMg = bowls(30).map((row, i) => ({
    ...row,
    panels: 1,
    hairG: 0.1,
    strandAreaCm2: 2 + i,
    productG: 4900,
  }))
  expect(salonProblem(shelf({ weighings: inMg.toReversed() }))?.path).toBe("weighings[29].productG")
})

describe("two readings of a scale", () => {
  test.each([
    [0, 0, "not-read"],
    [-1, -2, "not-read"],
    [20, -1, "not-read"],
    [Number.POSITIVE_INFINITY, 1, "not-read"],
    [20, 20, "nothing-placed"],
    [20, 21, "gained"],
  ])("%d g and %d g: %s", (beforeG, afterG, code) => {
    expect(placedFrom({ beforeG, afterG })).toEqual({ ok: false, problem: { code, beforeG, afterG } })
  })
  it("may end with an empty bowl", () => {
    expect(placedFrom({ beforeG: 20.5, afterG: 0 })).toEqual({ ok: true, productG: 20.5 })
  })
})

describe("a list of weighings, cell by cell", () => {
  const header = "hairG,strandAreaCm2,productG"
  const problemsOf = (text: string) => {
    const read = readWeighings(text)
    return read.ok ? [] : read.problems
  }
  it("is refused by its size before it is read", () => {
    expect(tooLargeList()).toEqual({ ok: false, problems: [{ code: "file-too-large", mostMb: 5 }] })
  })
  it("tells which sign parts its columns, where only one of them has it", () => {
    expect(problemsOf("hairG,strandAreaCm2;productG")).toEqual([
      { code: "header-separator", separator: "semicolons" },
    ])
    expect(problemsOf("hairG,strandAreaCm2\tproductG")).toEqual([
      { code: "header-separator", separator: "tabs" },
    ])
  })
  it("says no more of a cell or column again than shows which it is", () => {
    expect(problemsOf(`${header},${"n".repeat(60)}\n`)).toEqual([
      { code: "column-unknown", column: "n".repeat(40) },
    ])
    expect(problemsOf(`${header}\n${"x".repeat(30)},420,4`)).toEqual([
      { code: "no-number", line: 2, column: "hairG", found: "x".repeat(20) },
    ])
  })
  test.each([
    ["12,25", "decimal-comma"],
    ["-12,25", "decimal-comma"],
    ["a12,25", "no-number"],
    ["12,25b", "no-number"],
  ])("%s is %s", (cell, code) => {
    expect(problemsOf(`${header}\n"${cell}",420,4`)).toMatchObject([{ code }])
  })
  it("takes a foil of no hair, one foil, and the most there may be", () => {
    expect(problemsOf(`${header},foils\n0,0,5000,1`)).toEqual([])
    expect(problemsOf(`${header},foils\n1,1,5000.1,0`)).toMatchObject([
      { code: "too-large", column: "productG" },
      { code: "not-whole", column: "foils" },
    ])
  })
  it("lists twenty slips whole", () => {
    expect(problemsOf(`${header}\n${"-1,2,3\n".repeat(20)}`)).toHaveLength(20)
  })
})
