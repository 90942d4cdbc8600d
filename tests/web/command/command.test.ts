import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { runCommand } from "../../../web/command/command"
import type { Desk } from "../../../web/command/input/verb"
import { figuresOf } from "../../../web/core/figures/measured"
import { savePlan } from "../../../web/core/file/planFile"
import { languageNames } from "../../../web/words/every/languages"
import { framePlan } from "../../support/framePlan"

const files: Record<string, string> = {
  "plan.json": savePlan(framePlan),
  "broken.json": savePlan(framePlan).replace(`"developerVolume": 20`, `"developerVolume": "strong"`),
  "old.json": savePlan(framePlan).replace(`"version": 2`, `"version": 99`),
}
function deskWith(written: Map<string, Uint8Array> = new Map()): Desk {
  return {
    readText: (path) => files[path] ?? readFileSync(path, "utf8"),
    writeBytes: (path, bytes) => {
      if (path.startsWith("nowhere/")) throw new Error("no such folder")
      written.set(path, bytes)
    },
    readFont: async (file) => new Uint8Array(readFileSync(`web/sheets/pens/fonts/${file}`)),
  }
}
const run = (line: string, written?: Map<string, Uint8Array>) =>
  runCommand(line.split(" ").filter(Boolean), deskWith(written))

describe("the command", () => {
  it("measures a plan as the screen does", async () => {
    const { exit, out, err } = await run("measure plan.json")
    const { sections, totals } = JSON.parse(out)
    expect([exit, err]).toEqual([0, ""])
    expect(sections.map(({ order }: { order: number | null }) => order)).toEqual([1, 2, null, 3])
    const { hairG, productG } = figuresOf(framePlan.sections[1], framePlan)
    expect(sections[1]).toMatchObject({ number: 2, side: "right", kind: "weave" })
    expect(sections[1].hairG).toBeCloseTo(hairG, 4)
    expect(sections[1].productG.high).toBeCloseTo(productG.high, 4)
    expect(Object.keys(totals)).toEqual(["foils", "areaCm2", "hairs", "hairG", "strandAreaCm2", "productG"])
    expect(totals.foils).toBe(3)
  })

  it("describes a head from a caliper or from tapes", async () => {
    const caliper = JSON.parse((await run("head --length 187.2 --breadth 144.4 --height 123.5")).out)
    expect(caliper.lengthMm).toBeCloseTo(187.2, 2)
    // Bitragion coronal arc of the women of 1988, 336.4 over hair; on the skin up to 3 % less.
    expect(caliper.overMm).toBeGreaterThan(336.4 * 0.97)
    expect(caliper.overMm).toBeLessThan(336.4)
    const { top, left, right, back } = caliper.shares
    expect(top + left + right + back).toBeCloseTo(1, 4)
    expect(caliper.landmarks.crinion).toHaveLength(3)
    const tape = JSON.parse(
      (await run("head --around 550 --over 340 --front-to-nape 360 --hairline peaked")).out,
    )
    expect(tape.aroundMm).toBeGreaterThan(550 * 0.97)
    expect(tape.aroundMm).toBeLessThan(550)
  })

  it("says in one sentence why a head cannot be", async () => {
    for (const [line, sentence] of [
      ["head --length 187", "--breadth is missing: expected millimetres."],
      ["head --length 187 --around 550", "The size of the head: expected either --length"],
      ["head --length x --breadth 144 --height 123", `--length: expected millimetres above 0, found "x".`],
      ["head --length 187 --breadth 144 --height 123 --hairline wavy", "--hairline: expected round"],
      ["head --around 90 --over 340 --front-to-nape 360", "Around the head, 90 mm"],
    ]) {
      const { exit, out, err } = await run(line)
      expect([exit, out]).toEqual([2, ""])
      expect(err).toContain(sentence)
    }
  })

  it("writes the sheet and says how many pages it has", async () => {
    const written = new Map<string, Uint8Array>()
    const { exit, out } = await run("sheet plan.json --kind placement --paper letter --out map.pdf", written)
    const clearance = expect.objectContaining({ state: "not-asked" })
    expect([exit, JSON.parse(out)]).toEqual([0, { clearance, out: "map.pdf", pages: 2 }])
    expect(new TextDecoder().decode(written.get("map.pdf")?.slice(0, 5))).toBe("%PDF-")
  })

  it("writes the sheet to take home as a page for a browser where the file is to be one", async () => {
    const written = new Map<string, Uint8Array>()
    const { exit, out, err } = await run("sheet plan.json --kind take-home --out home.html", written)
    const { clearance, ...made } = JSON.parse(out)
    expect([exit, err, made]).toEqual([0, `${clearance.words}\n`, { out: "home.html", pages: 1 }])
    const page = new TextDecoder().decode(written.get("home.html"))
    expect(page).toMatch(/^<!doctype html>\n<html lang="en-GB">[\s\S]*<h1 dir="auto">Face frame<\/h1>/)
    const language = "sheet plan.json --kind take-home --out heim.HTML --language en-US"
    expect((await run(language, written)).exit).toBe(0)
    expect(new TextDecoder().decode(written.get("heim.HTML"))).toContain('<html lang="en-US">')
    const map = await run("sheet plan.json --kind placement --out map.html", written)
    expect([map.exit, map.err]).toEqual([2, `--kind: expected take-home, found "placement".\n`])
    expect(written.has("map.html")).toBe(false)
  })

  it("writes no sheet it cannot", async () => {
    expect((await run("sheet plan.json --kind poster --paper a5")).err.split("\n")).toEqual([
      `--kind: expected placement, technique, take-home or record, found "poster".`,
      `--paper: expected a4 or letter, found "a5".`,
      "--out is missing: expected the path of the PDF to write.",
      "",
    ])
    const { exit, err } = await run("sheet plan.json --kind placement --out nowhere/map.pdf")
    expect([exit, err]).toEqual([
      2,
      `--out: "nowhere/map.pdf" cannot be written: expected a path in a folder that exists.\n`,
    ])
  })

  it("tells a good plan from a bad one, naming the field", async () => {
    expect(JSON.parse((await run("validate plan.json")).out)).toEqual({ ok: true, version: 2, problems: [] })
    const broken = await run("validate broken.json")
    expect(broken.exit).toBe(2)
    expect(JSON.parse(broken.out).problems[0].path).toBe("mixes[0].developerVolume")
    expect(broken.err).toContain("developer")
    expect(JSON.parse((await run("validate old.json")).out)).toMatchObject({ ok: false, version: 99 })
    expect((await run("measure broken.json")).exit).toBe(2)
    expect(await run("measure lost.json")).toEqual({
      exit: 2,
      out: "",
      err: `"lost.json" cannot be read: expected the path of a plan saved by Partline.\n`,
    })
  })

  it("blends bottles by mass, and refuses what they cannot reach", async () => {
    // 12 % and 3 % to 6 %: the lever rule gives 3 parts to 6, so 30 g and 60 g of 90 g.
    expect(JSON.parse((await run("blend --have 12,3 --want 6 --grams 90")).out)).toEqual({
      parts: [
        { percent: 12, grams: 30 },
        { percent: 3, grams: 60 },
      ],
    })
    expect((await run("blend --have 3,6 --want 9 --grams 90")).exit).toBe(2)
  })

  it("learns from weighed foils", async () => {
    files["weighed.csv"] = "hairG,strandAreaCm2,productG\n1.2,280,3.7\n0.6,150,1.9\n2.1,510,6.4\n"
    const { exit, out } = await run("calibrate weighed.csv")
    expect([exit, JSON.parse(out).n]).toEqual([0, 3])
  })

  it("says its sentences in a language, and refuses one that it does not have in one sentence", async () => {
    expect((await run("measure lost.json --language en-us")).err).toContain("cannot be read")
    for (const line of ["measure plan.json", "check plan.json", "sheet plan.json --kind record --out a.pdf"])
      expect(await run(`${line} --language tlh`)).toEqual({
        exit: 2,
        out: "",
        err: `--language: expected ${languageNames.join(", ").replace(/, ([^,]+)$/, " or $1")}, found "tlh".\n`,
      })
    expect((await run("measure plan.json --language")).err).toBe("--language: expected a value after it.\n")
  })

  it("prints a sheet in a language of its own, on the paper of its region", async () => {
    const written = new Map<string, Uint8Array>()
    await run("sheet plan.json --kind record --out us.pdf --language en-US", written)
    await run("sheet plan.json --kind record --out gb.pdf", written)
    // ISO 216: A4 is 210 by 297 mm; ANSI Y14.1: Letter is 8.5 by 11 inches; in points of 1/72 inch.
    const boxOf = (name: string) =>
      /MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(new TextDecoder("latin1").decode(written.get(name)))
    expect(boxOf("us.pdf")?.slice(1).map(Number).map(Math.round)).toEqual([612, 792])
    expect(boxOf("gb.pdf")?.slice(1).map(Number).map(Math.round)).toEqual([595, 842])
  })

  it("refuses what it does not know and explains itself", async () => {
    expect((await run("bake plan.json")).exit).toBe(2)
    expect((await run("toString")).exit).toBe(2)
    expect((await run("")).exit).toBe(2)
    expect((await run("measure plan.json --paper a4")).err).toBe(
      "--paper is not an option of this verb: expected --language.\n",
    )
    for (const verb of ["head", "measure", "sheet", "validate", "blend", "calibrate"]) {
      const { exit, out, err } = await run(`${verb} --help`)
      expect([exit, out]).toEqual([0, ""])
      expect(err).toContain(`plan -- ${verb}`)
    }
  })
})
