import { describe, expect, test } from "vitest"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { runCommand } from "../../../../web/command/command"
import { savePlan } from "../../../../web/core/file/planFile"
import { writeRows } from "../../../../web/core/joining/learnRow"
import { salonDice } from "../../../support/drawnSalon"
import { bowlRows, paceRows, strandRows } from "../../../support/knownSalons"
import { samplePlan } from "../../../support/samples"

const [mix] = samplePlan.mixes
const tested = {
  ...samplePlan,
  name: "Secretname",
  note: "Secretname, allergic",
  timing: {
    skill: "usual" as const,
    pace: null,
    hands: 1 as const,
    breaks: [],
    rinse: "each" as const,
    heatMin: null,
    bookingMin: null,
    lift: null,
    strandTest: {
      product: mix.product,
      developerVolume: mix.developerVolume,
      startLevel: 6,
      rows: [{ minutes: 10, level: 7 }],
    },
  },
}
const dice = salonDice(41)
const salonLists = Object.fromEntries(
  ["a", "b", "c", "d"].map((name) => [
    `${name}.csv`,
    writeRows([...bowlRows(dice, 8), ...strandRows(dice, 2), ...paceRows(dice, 1, 12)]),
  ]),
)
const given: Readonly<Record<string, string>> = {
  ...salonLists,
  "plan.json": savePlan(tested),
  "plain.json": savePlan(samplePlan),
  "weighed.csv": "hairG,strandAreaCm2,productG,foils\n9.5,2400,31.5,8\n6,3900,31,10\n",
  "again.csv": salonLists["b.csv"],
  "named.csv": salonLists["c.csv"].replace("row,kind", "row,name"),
  "wrong.csv": salonLists["c.csv"].replace("weighing,,", "weighing,,x"),
}

function desk(written: Map<string, string> = new Map()) {
  return {
    readText: (path: string) => {
      const text = written.get(path) ?? given[path]
      if (text === undefined) throw new Error("no such file")
      return text
    },
    writeBytes: (path: string, bytes: Uint8Array) => {
      if (path.startsWith("nowhere/")) throw new Error("no such folder")
      written.set(path, new TextDecoder().decode(bytes))
    },
    readFont: async () => new Uint8Array(),
  }
}
const run = (line: string, written?: Map<string, string>) => runCommand(line.split(" "), desk(written))

describe("learn export", () => {
  test("writes what plans and lists of weighings tell, in columns with units, and no client's data", async () => {
    const written = new Map<string, string>()
    const { exit, out, err } = await run(
      "learn export plan.json weighed.csv --consent yes --out salon.csv",
      written,
    )
    expect([exit, JSON.parse(out)]).toEqual([
      0,
      { out: "salon.csv", rows: { weighing: 2, strand: 1, pace: 0 } },
    ])
    expect(err).toMatch(/^Numbers alone: no name, note, product or day is in the list\./)
    const text = written.get("salon.csv") ?? ""
    expect(text.split("\n").slice(2, 6)).toEqual([
      // 20 vol of 6 % at 1 : 2 is 4 % on the head; its sheet prints 3 to 4 levels within 45 minutes.
      "strand,,,,,,1,4,3,4,45,6,10,7,",
      "weighing,,8,9.5,2400,31.5,,,,,,,,,",
      "weighing,,10,6,3900,31,,,,,,,,,",
      "",
    ])
    expect(text).not.toContain("Secretname")
    expect(text).not.toContain(mix.product)
  })

  test("is refused without the salon's consent, without a place, and where there is nothing to learn", async () => {
    const written = new Map<string, string>()
    for (const [line, sentence] of [
      ["learn export plan.json --out salon.csv", "--consent yes is missing"],
      ["learn export plan.json --consent no --out salon.csv", "--consent yes is missing"],
      ["learn export plan.json --consent yes", "--out is missing: expected the path of the CSV"],
      ["learn export plain.json --consent yes --out salon.csv", "Nothing to pass on"],
      ["learn export gone.json --consent yes --out salon.csv", '"gone.json" cannot be read'],
      ["learn export a.csv --consent yes --out salon.csv", "a.csv: Line 1: "],
      ["learn export plan.json --consent yes --out nowhere/salon.csv", '--out: "nowhere/salon.csv"'],
      ["learn export --consent yes --out salon.csv", "FILE is missing"],
    ]) {
      const { exit, out, err } = await run(line, written)
      expect([line, exit, out]).toEqual([line, 2, ""])
      expect(err).toContain(sentence)
    }
    expect(written.size).toBe(0)
  })
})

describe("learn join", () => {
  test("joins salons' lists into figures to start from, with how far salons differ, and calibrate takes them", async () => {
    const written = new Map<string, string>()
    const { exit, out, err } = await run("learn join a.csv b.csv c.csv d.csv --out start.json", written)
    const { salons, weighings, strands, perFoilG, soak, coatMgCm2, halfTimeMin, paceMin } = JSON.parse(out)
    expect([exit, salons, weighings, strands]).toEqual([0, 4, 32, 8])
    for (const figure of [perFoilG, soak, coatMgCm2, paceMin.slice]) {
      expect(figure.low < figure.mean && figure.mean < figure.high).toBe(true)
      expect(figure.betweenSalonsShare).toBeGreaterThanOrEqual(0)
    }
    expect(halfTimeMin.twoThirds.low).toBeLessThan(halfTimeMin.mean)
    expect(paceMin.weave).toBeNull()
    expect(err).toMatch(/“Weigh your bowls”; calibrate takes it with --start/)

    const narrower = await run("calibrate weighed.csv --start start.json", written)
    const alone = await run("calibrate weighed.csv", written)
    const widthOf = (text: string) => JSON.parse(text).soak.high - JSON.parse(text).soak.low
    expect(narrower.exit).toBe(0)
    expect(widthOf(narrower.out)).toBeLessThan(0.85 * widthOf(alone.out))
    expect(JSON.parse(alone.out).soak.mean).not.toBe(tradeFigures.soakGPerG.mid)
  })

  test("is refused for fewer than three, for one salon twice, for a bad row and for a column of its own", async () => {
    for (const [line, sentence] of [
      ["learn join a.csv b.csv --out start.json", "2 files, one a salon: expected at least 3."],
      ["learn join a.csv b.csv again.csv --out start.json", '"again.csv" holds the same rows as "b.csv"'],
      ["learn join a.csv b.csv wrong.csv --out start.json", 'wrong.csv: Line 3, foils: found "x'],
      ["learn join a.csv b.csv named.csv --out start.json", "named.csv: Line 1: kind missing."],
      ["learn join a.csv b.csv c.csv", "--out is missing: expected the path of the JSON"],
      ["learn join a.csv b.csv gone.csv --out start.json", '"gone.csv" cannot be read'],
    ]) {
      const written = new Map<string, string>()
      const { exit, out, err } = await run(line, written)
      expect([line, exit, out, written.size]).toEqual([line, 2, "", 0])
      expect(err).toContain(sentence)
    }
  })

  test("a file that is no start, or that holds what cannot be, is refused by calibrate", async () => {
    const written = new Map<string, string>()
    await run("learn join a.csv b.csv c.csv --out start.json", written)
    const start = written.get("start.json") ?? ""
    const broken = start.replace(/"scatterShape": [\d.]+/, '"scatterShape": 1')
    const leaning = start.replace(/"(lossWithSoak|lossWithCoat|soakWithCoat)": -?[\d.]+/g, '"$1": -0.9')
    for (const [text, sentence] of [
      [broken, /scatterShape/],
      [leaning, /soakWithCoat/],
      ["{}", /"kind": "partline-start"/],
    ] as const) {
      const { exit, err } = await run("calibrate weighed.csv --start x.json", new Map([["x.json", text]]))
      expect(exit).toBe(2)
      expect(err).toMatch(sentence)
    }
  })
})

test("both explain themselves, and half of their name is no verb", async () => {
  for (const verb of ["learn export", "learn join"]) {
    const { exit, err } = await run(`${verb} --help`)
    expect([exit, err.startsWith(`npm run --silent plan -- ${verb} FILE`)]).toEqual([0, true])
  }
  expect(await run("learn")).toMatchObject({ exit: 2, err: expect.stringContaining("learn export") })
  expect(await run("learn by heart")).toMatchObject({ exit: 2 })
})
