import { readdirSync } from "node:fs"
import { join, relative } from "node:path"
import { describe, expect, it } from "vitest"
import { usualValues } from "../../../presets/techniques/technique"
import { techniques as houseOfTechniques } from "../../../presets/techniques/techniques"
import type { RefusalCode } from "../../../web/core/document/refusal"
import { spelled } from "../../../web/words/en-us/spelling"
import { houseTechnique } from "../../../web/words/every/houseTechnique"
import { loadWords } from "../../../web/words/every/languages"
import { say } from "../../../web/words/say"
import { writtenTexts } from "../../support/literals"
import { en } from "../../support/words"

const british =
  /colour|\bgrey|centre|metre|\bneighbour|neutralis|authoris|\bpractise|licence|judgement|learnt|cancelled|yoghurt|per cent|towards|afterwards|\bround (the|several)\b|anticlockwise|backcomb|fringe|\bbasin|backwash|adrenaline|plasters|fire service|\bbin\b|\bgown\b|(usual|centre|side) parting|assessor|ear hole|water spray/i

const root = join(import.meta.dirname, "../../../web/words")
const filesOf = (catalogue: string) =>
  readdirSync(join(root, catalogue), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(root, catalogue, name))

/** Every message by its path: a text, or the function that makes it. */
const messages = (group: object, path = ""): [path: string, message: unknown][] =>
  Object.entries(group).flatMap(([name, value]) =>
    typeof value === "object" && value !== null
      ? messages(value, `${path}${name}.`)
      : [[`${path}${name}`, value] as [string, unknown]],
  )

const us = await loadWords("en-US")
const american = new Map(messages(us))

describe("American English", () => {
  it("has no British word in a message", () => {
    const texts = [...american].filter(([, message]) => typeof message === "string")
    expect(texts.filter(([, text]) => british.test(String(text)))).toEqual([])
  })

  it("has none in what it says by its own functions", () => {
    const own = filesOf("en-us").flatMap((file) => writtenTexts(file).texts)
    expect(own.filter(({ text }) => british.test(text)).map(({ text }) => text)).toEqual([])
  })

  it("spells, or says anew, all that British English says with one, also where no message shows it", () => {
    const files = filesOf("en").map((file) => ({ file, ...writtenTexts(file) }))
    const groups = new Set(files.flatMap(({ spelledGroups }) => spelledGroups))
    const saidAnew = messages(en)
      .filter(([path, message]) => String(american.get(path)) !== String(message))
      .map(([, message]) => String(message))
    const left = files.flatMap(({ file, texts }) =>
      texts
        .filter(({ text }) => british.test(text))
        .filter(({ isSpelled, within }) => !isSpelled && !within.some((name) => groups.has(name)))
        .filter(({ text }) => !saidAnew.some((said) => said.includes(text)))
        .map(({ text }) => `${relative(root, file)}: ${text}`),
    )
    expect(left).toEqual([])
  })
})

const alone = {
  pace: "usual",
  people: 1,
  rinse: "each",
  bookingMin: null,
  heatMin: null,
  isDried: true,
  breaks: 0,
  piece: "foil",
} as const

const overridden = {
  state: "cleared",
  day: "2026-03-09",
  stops: 0,
  notAsked: 0,
  mixes: [],
  tests: [],
  passes: [{ rule: "unknown-content", reason: "tested", by: "M.", visit: "2026-03-09" }],
} as const

const coloured = {
  parts: ["roots", "midLengths", "ends"],
  state: { level: null, history: ["coloured"], porosity: null, stretch: null },
} as const

describe("American English says", () => {
  const {
    cautions,
    client,
    command,
    common,
    formula,
    placement,
    problems,
    record,
    sheets,
    techniques,
    teaching,
    timing,
  } = us

  it("places and kinds by its own names, within every chapter", () => {
    expect(common.landmarkOf("centre nape", "both")).toBe("center nape")
    expect(common.hairlinePoint.along({ landmark: "temple", side: "left", behindMm: 3, alongMm: 90 })).toBe(
      "90 mm along from center front",
    )
    expect(placement.done["draw-section"]({ kind: "backcomb" })).toBe("Draw teased section")
    expect(placement.done["set-base"]({ base: "slice" })).toBe("Tease from a slice")
    expect(placement.done.nudge({ mm: 5, way: "towards" })).toBe("Move 5 mm toward the hairline")
    expect(placement.done.divide({ start: "profile" })).toBe("Divide: Center line")
    expect(placement.hairline.moved({ behindMm: 0, towardNapeMm: 4 })).toBe("4 mm toward the nape")
    expect(
      placement.list.whatAndWhere({
        kind: "backcomb",
        at: { code: "at-landmark", landmark: "temple", side: "left" },
        rank: 2,
      }),
    ).toBe("Teased, left temple, 2nd")
    expect(placement.toolRail.tools.backcomb).toBe("Tease")
  })

  it.each([
    [
      say(command.classes, { code: "no-number" as const, line: 2, column: "height", found: "x" }),
      'Line 2, height: expected millimeters above 0, found "x".',
    ],
    [cautions.authority("colourist", "eyes"), "Whose decision: the colorist."],
    [
      cautions.why["heat-place"]({ code: "heat-place", mix: "A", forbiddenVolume: 30 }),
      "near a teased cushion",
    ],
    [
      cautions.why["alert-test-wanting"]({
        code: "alert-test-wanting",
        fault: { code: "reacted", product: "Violet" },
      }),
      "the skin reacted. Do not color.",
    ],
    [
      cautions.notAsked.question({ code: "question", question: "homeColour", before: null, isOld: false }),
      "Home color on this hair",
    ],
    [cautions.onSheet.stops(overridden), "“Home color or copper” overridden by M."],
    [
      record.lines.override({
        code: "override",
        rule: "unknown-content",
        mix: null,
        about: null,
        on: null,
        by: "M.",
        reason: "tested",
      }),
      "Home color or copper: overridden",
    ],
    [
      record.lines.wanted({
        code: "wanted",
        liftToLevel: null,
        finish: null,
        upkeepWeeks: null,
        greyShare: 0.25,
      }),
      "25% gray",
    ],
    [client.hair.line({ zones: ["top"], runs: [coloured] }), "Top: root to ends colored."],
    [formula.mixing.wants({ foils: 2, consistency: "creamy", parts: 1.5 }), "yogurt-thick"],
    [formula.tone.mix({ family: "gold", strength: "sheer" }), "no neutralizer"],
    [say<RefusalCode>(problems.refusals, { code: "start-is-there", start: "profile" }), "“Center line”"],
    [
      problems.sentence({
        code: "no-number",
        path: "sections[2].pushedShare",
        field: "pushedShare",
        word: "x",
      }),
      "Section 3, share teased: share teased:",
    ],
    [
      say<RefusalCode>(problems.refusals, { code: "hairline", fault: "crosses-itself" }),
      "keep each point between its neighbors",
    ],
    [sheets.map.clock.rest({ who: "colourist", fromMin: 5, toMin: 9 }), "Colorist on break from"],
    [timing.settings.line(alone), "Usual pace, one colorist,"],
    [record.placedBy({ who: 1, initials: "" }), "placed by the colorist"],
    [
      record.lines.people({ code: "people", people: [{ who: 1, name: "Ana", initials: "A" }] }),
      "Colorist Ana (A)",
    ],
    [
      teaching.stepTitles.foils({
        code: "foils",
        kind: "backcomb",
        numbers: [4, 5],
        isPair: false,
        side: "left",
      }),
      "Teased sections 4 and 5, on the client’s left",
    ],
    [
      techniques.draft({
        at: { code: "at-landmark", landmark: "centre front", side: "centre" },
        kind: "backcomb",
        taken: "behind",
        lengthMm: 62,
        behindMm: 10,
        depthMm: { start: 4, end: 4 },
      }),
      "tease part of it toward the root",
    ],
  ])("%s", (said, words) => {
    expect(said).toContain(words)
    expect(said).not.toMatch(british)
  })

  it("every technique of the house, with the figures of its steps", () => {
    const told = houseOfTechniques.flatMap((preset) => {
      const { name, aim, notes, steps, sections } = houseTechnique(preset, techniques, usualValues(preset))
      return [name, aim, notes, ...steps, ...sections.map((section) => section.name ?? "")]
    })
    expect(told.filter((text) => british.test(text))).toEqual([])
    expect(told.join(" ")).toContain("bangs")
  })

  it("what a person typed as it was typed", () => {
    const product = "Grey Colour No. 3"
    expect(cautions.why["past-reaction"]({ code: "past-reaction", product })).toBe(
      `The patch test with ${product} reacted. Do not color. A doctor can test for the cause.`,
    )
    expect(cautions.testFaults.reacted({ code: "reacted", product })).toContain(product)
    expect(common.sectionName["left-out"]({ code: "left-out", name: "Grey fringe" })).toBe("Grey fringe")
  })
})

describe("spelling", () => {
  it("keeps a capital, and leaves functions and words that only look alike", () => {
    const dry = () => "colour"
    expect(spelled({ a: ["Grey centre", "Backcombed"], dry, b: null })).toEqual({
      a: ["Gray center", "Teased"],
      dry,
      b: null,
    })
    expect(spelled("Round hairline, egret, metric")).toBe("Round hairline, egret, metric")
  })
})
