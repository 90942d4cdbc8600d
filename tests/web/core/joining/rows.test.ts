import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../../web/core/document/schema"
import type { RecordedBowl } from "../../../../web/core/document/serviceRecord"
import { columns, type LearnRow, unitOf, writeRows } from "../../../../web/core/joining/learnRow"
import { readRows } from "../../../../web/core/joining/readRows"
import { rowsOfPlans } from "../../../../web/core/joining/rowsOfPlans"
import { needOf } from "../../../../web/core/weighing/salonOfPlan"
import { say } from "../../../../web/words/say"
import { servedPlan } from "../../../support/servedPlan"
import { en } from "../../../support/words"

const rows: LearnRow[] = [
  { row: "weighing", kind: "slice", foils: 8, hairG: 9.5, strandAreaCm2: 2400, productG: 31.5 },
  { row: "weighing", kind: null, foils: 3, hairG: 2, strandAreaCm2: 900.25, productG: 9 },
  ...[10, 20].map(
    (minutes): LearnRow => ({
      row: "strand",
      strand: 1,
      onHeadPercent: 6,
      printedLowLevels: 3,
      printedHighLevels: 4,
      longestMin: 45,
      startLevel: 6,
      minutes,
      level: 6 + minutes / 10,
    }),
  ),
  { row: "pace", kind: "backcomb", foils: 12, minutes: 2.75, spreadMin: 0.5 },
]
const text = writeRows(rows)
const problemsOf = (changed: string) => {
  const read = readRows(changed)
  return read.ok ? [] : read.problems.map((problem) => say(en.command.learn, problem))
}

describe("a salon's list", () => {
  it("comes back as it was written, columns and their units first", () => {
    expect(readRows(text)).toEqual({ ok: true, rows })
    const [names, units] = text.split("\n")
    expect(names).toBe(
      "row,kind,foils,hairG,strandAreaCm2,productG,strand,onHeadPercent,printedLowLevels,printedHighLevels,longestMin,startLevel,minutes,level,spreadMin",
    )
    expect(units).toBe("-,-,foils,g,cm2,g,-,%,levels,levels,min,level,min,level,min")
    expect(columns.every((column) => unitOf(column) !== "")).toBe(true)
  })

  it.each([
    ["31.5", "heavy", 'Line 3, productG: found "heavy"; expected a number from 0.01 to 5,000. Correct it'],
    ["31.5", "-4", 'Line 3, productG: found "-4"'],
    [",8,", ",2.5,", 'Line 3, foils: found "2.5"; expected a whole number from 1 to 500'],
    [
      "weighing,slice",
      "weighing,braid",
      'Line 3, kind: found "braid"; expected slice, weave, backcomb or painted.',
    ],
    ["weighing,slice", "client,slice", 'Line 3, row: found "client"; expected weighing, strand or pace.'],
    ["pace,backcomb,12,", "pace,backcomb,12,7", 'Line 7, hairG: found "7"; a pace row has none. Empty it.'],
    ["31.5", "31,5", "Line 3 has 16 values for 15 columns. If numbers hold commas, write points"],
    ["-,-,foils,g", "-,-,foils,oz", 'Line 2, hairG: found "oz"; expected the unit g.'],
    ["spreadMin\n", "spreadMin,name\n", 'Line 1: "name" is not a column of such a list. Take it out.'],
    ["row,kind", "kind", "Line 1: row missing. Write the list again with learn export."],
    ["45,6,20,8", "45,6,8,8", "Strand 1: its looks are not in order of time"],
    ["6,3,4,45,6,20", "6,3,4,40,6,20", "Strand 1: its rows differ in strength"],
  ])("with %s for %s is refused by row, field and cure", (was, now, sentence) => {
    const changed = text.replace(was, now)
    expect(changed).not.toBe(text)
    expect(problemsOf(changed)[0]).toContain(sentence)
  })

  it("of another kind, of no row, and of thousands of slips, is refused shortly", () => {
    expect(problemsOf("a,b\n1,2")[0]).toMatch(/^Line 1: row, kind, /)
    expect(problemsOf("")[0]).toMatch(/^Line 1: /)
    expect(problemsOf(text.split("\n").slice(0, 2).join("\n"))).toEqual(["The list has no rows."])
    const slips = problemsOf(`${text}${"x,y\n".repeat(5000)}`)
    expect(slips).toHaveLength(21)
    expect(slips.at(-1)).toBe("And 4,980 more like these.")
  })
})

const plan = servedPlan()
const ids = plan.sections.filter(isFoil).map(({ id }) => id)
const bowl: RecordedBowl = {
  mix: "A",
  product: plan.mixes[0].product,
  developerVolume: plan.mixes[0].developerVolume,
  ratio: plan.mixes[0].ratio,
  lightenerG: 11,
  developerG: 22,
  additives: [{ name: "House bond drops (invented)", grams: 1 }],
  foils: ids.slice(0, 4),
  potLifeMin: 60,
  mixedAtMs: 180_000,
  leftG: 6.5,
}
const withBowls = (...bowls: RecordedBowl[]): Plan => ({
  ...plan,
  service: plan.service && { ...plan.service, bowls },
})

describe("what a salon's plans tell", () => {
  it("is a bowl that was mixed and weighed, by the foils it went on: 11 + 22 + 1 less 6.5", () => {
    const { need, kind } = needOf(bowl.foils, bowl.mix, plan)
    expect(rowsOfPlans([withBowls(bowl)]).filter(({ row }) => row === "weighing")).toEqual([
      {
        row: "weighing",
        kind,
        foils: need.panels,
        hairG: need.hairG,
        strandAreaCm2: need.strandAreaCm2,
        productG: 27.5,
      },
    ])
  })

  it("is nothing of a bowl not mixed, not weighed, with more left than was made, or with a foil that is gone", () => {
    const none = [
      { ...bowl, mixedAtMs: null },
      { ...bowl, leftG: null },
      { ...bowl, leftG: 40 },
      { ...bowl, foils: [...bowl.foils, "gone"] },
      { ...bowl, foils: [] },
    ]
    expect(rowsOfPlans([withBowls(...none)]).filter(({ row }) => row === "weighing")).toEqual([])
  })

  it("is a strand in a mix that the plan has, and a copy of a plan tells nothing twice", () => {
    const test = {
      product: plan.mixes[0].product,
      developerVolume: plan.mixes[0].developerVolume,
      startLevel: 6,
      rows: [{ minutes: 10, level: 7 }],
    }
    const tested = (product: string): Plan => ({
      ...withBowls(bowl),
      timing: { ...timing, strandTest: { ...test, product } },
    })
    const told = rowsOfPlans([tested(test.product), { ...tested(test.product), id: "copy" }])
    expect(told.map(({ row }) => row)).toEqual(["weighing", "strand"])
    expect(rowsOfPlans([tested("Another tub")]).map(({ row }) => row)).toEqual(["weighing"])
  })

  it("is no name, note, product, day or answer, whatever the plan holds", () => {
    const secret = "Secretname"
    const marked = JSON.parse(
      JSON.stringify({ ...withBowls(bowl), name: secret, note: secret }).replaceAll(/\(invented\)/g, secret),
    )
    const written = writeRows(rowsOfPlans([{ ...marked, mixes: plan.mixes }]))
    expect(written).not.toContain(secret)
    expect(written).not.toContain("2026")
    // Whitelisted words and numbers, and nothing else.
    for (const line of written.trim().split("\n").slice(2))
      for (const cell of line.split(","))
        expect(cell).toMatch(/^(|-?\d+(\.\d+)?|weighing|strand|pace|slice|weave|backcomb)$/)
  })
})

const timing = {
  skill: "usual" as const,
  pace: null,
  hands: 1 as const,
  breaks: [],
  rinse: "each" as const,
  heatMin: null,
  bookingMin: null,
  lift: null,
}
