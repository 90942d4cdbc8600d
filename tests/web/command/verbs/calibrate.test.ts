import { describe, expect, test } from "vitest"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { runCommand } from "../../../../web/command/command"

const run = (text: string) =>
  runCommand(["calibrate", "weighed.csv"], {
    readText: (path) => {
      if (path !== "weighed.csv" || !text) throw new Error("no such file")
      return text
    },
    writeBytes: () => {},
    readFont: async () => new Uint8Array(),
  })

const header = "hairG,strandAreaCm2,productG,foils\n"
/** A salon of 0.65 g a foil + 2.9 g/g + 3.5 mg/cm2, weighed to the gram. */
const bowls = [
  [9.5, 2400, 8],
  [6, 3900, 10],
  [7, 900, 5],
  [8, 2000, 12],
  [2, 1700, 4],
  [12, 3100, 9],
].map(([hairG, areaCm2, foils]) => ({
  hairG,
  areaCm2,
  foils,
  productG: Math.round(0.65 * foils + 2.9 * hairG + 0.0035 * areaCm2),
}))
const list = (change: (productG: number, i: number) => number = (productG) => productG) =>
  header +
  bowls.map((bowl, i) => `${bowl.hairG},${bowl.areaCm2},${change(bowl.productG, i)},${bowl.foils}`).join("\n")

describe("calibrate", () => {
  test("learns the three figures, each inside its range, and says how they stand", async () => {
    const { exit, out, err } = await run(list())
    const { n, perFoilG, soak, coatMgCm2, residualG, df, doubtedLines, moreNeeded } = JSON.parse(out)
    // Shape 3 and six rows: df = 2 (3 + 6 / 2).
    expect([exit, n, df, doubtedLines]).toEqual([0, 6, 12, []])
    // Six agree within a few per cent, but fewer than about eight are too few to call a middle figure trusted.
    expect(moreNeeded).toBe(2)
    for (const [figure, truth] of [
      [perFoilG, 0.65],
      [soak, 2.9],
      [coatMgCm2, 3.5],
    ]) {
      expect(figure.low).toBeLessThan(truth)
      expect(figure.high).toBeGreaterThan(truth)
      expect(figure.low < figure.mean && figure.mean < figure.high).toBe(true)
    }
    expect(soak.mean).toBeGreaterThan(tradeFigures.soakGPerG.mid)
    expect(residualG).toBeGreaterThan(0)
    expect(err).toMatch(/^The middle figure is within \d+% of the truth, 9 times in 10\. 2 more weighings/)
  })

  test("calls the middle figure trusted at the eighth weighing, not before", async () => {
    const [header, ...rows] = list().split("\n")
    const said = async (count: number) => {
      const { out, err } = await run([header, ...[...rows, ...rows].slice(0, count)].join("\n"))
      return [JSON.parse(out).moreNeeded, /It can be trusted\.\n$/.test(err)]
    }
    expect(await said(7)).toEqual([1, false])
    expect(await said(8)).toEqual([0, true])
  })

  test("names the line it doubts", async () => {
    const { out, err } = await run(list((productG, i) => (i === 2 ? productG + 60 : productG)))
    expect(JSON.parse(out).doubtedLines).toEqual([4])
    expect(err).toMatch(/^Line 4 looks wrong: \d+ g weighed; the others lead to about \d+(\.\d)? g\./)
  })

  test("nothing weighed is the starting figures, with what is still wanting", async () => {
    const { exit, out, err } = await run(header)
    const { n, soak, moreNeeded } = JSON.parse(out)
    expect([exit, n, soak.mean]).toEqual([0, 0, tradeFigures.soakGPerG.mid])
    expect(moreNeeded).toBeGreaterThan(0)
    expect(err).toMatch(/more weighings like these/)
  })

  test("numbers are short, and none is NaN or -0", async () => {
    for (const text of [list(), header, list(() => 0.1), list(() => 4999)]) {
      const { out, err } = await run(text)
      expect(out + err).not.toMatch(/NaN|undefined|no number|-0\b/)
      for (const number of out.match(/[\d.]+/g) ?? [])
        expect(number.replace(".", "").replace(/^0+/, "").length).toBeLessThanOrEqual(6)
    }
  })

  test("a wrong list and a missing one are refused", async () => {
    expect(await run("a,b\n1,2")).toMatchObject({
      exit: 2,
      out: "",
      err: expect.stringMatching(/^Line 1: hairG/),
    })
    expect(await run("")).toEqual({
      exit: 2,
      out: "",
      err: '"weighed.csv" cannot be read: expected the path of a list of weighings, CSV.\n',
    })
  })
})
