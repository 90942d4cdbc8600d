import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { openPlan, roundPlan, savePlan } from "../../../../web/core/file/planFile"
import { samplePlan } from "../../../support/samples"
import { en } from "../../../support/words"

const sample = savePlan(samplePlan)
const anywhere = () => []

type Json = Record<string, unknown>
/** The sentences with which a text is refused. */
function refusals(text: string): string[] {
  const opened = openPlan(text, anywhere)
  return opened.ok ? [] : opened.problems.map(en.problems.clause)
}

/** The sample's file with one field changed; undefined takes it out. */
const set = (path: readonly (string | number)[], value: unknown) =>
  JSON.stringify(setIn(JSON.parse(sample), path, value))

function setIn(raw: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (key === undefined) return value
  if (Array.isArray(raw)) return raw.with(Number(key), setIn(raw[Number(key)], rest, value))
  const group = raw as Json
  return { ...group, [key]: setIn(group[key], rest, value) }
}

describe("a plan that was saved", () => {
  it("opens as the same plan", () => {
    expect(openPlan(sample)).toEqual({ ok: true, plan: roundPlan(samplePlan) })
  })
  it("is the same text whatever the order of its fields", () => {
    const shuffled = Object.fromEntries(Object.entries(samplePlan).reverse())
    const opened = openPlan(JSON.stringify(shuffled), anywhere)
    expect(opened.ok && savePlan(opened.plan)).toBe(sample)
  })
  it("has a point a line, five decimals and a newline at the end", () => {
    expect(sample).toContain("[0.15, 0.9],\n")
    expect(sample.endsWith("}\n")).toBe(true)
    const precise = set(["sections", 0, "depthMm", "start"], 3.000004999)
    const opened = openPlan(precise, anywhere)
    expect(opened.ok && JSON.parse(savePlan(opened.plan)).sections[0].depthMm.start).toBe(3)
  })
  it("opens with the mark some editors put first", () => {
    expect(openPlan(`\uFEFF${sample}`, anywhere).ok).toBe(true)
  })
})

describe("what is not a plan", () => {
  it("is refused in one sentence", () => {
    expect(refusals("")[0]).toMatch(/^the file is empty/)
    expect(refusals("brown hair")[0]).toMatch(/^the file is cut short or is not a plan/)
    expect(refusals(sample.slice(0, 400))[0]).toMatch(/^the file is cut short/)
    expect(refusals(`{"hair":{"densityPerCm2": NaN}}`)).toEqual(["density: expected a number, found NaN"])
    expect(refusals(`{"stitchMm":-Infinity}`)).toEqual(["stitch: expected a number, found -Infinity"])
    expect(refusals("[]")).toEqual(['this is not a Partline plan: expected "kind": "partline-plan"'])
    expect(refusals('{"kind":"recipe"}')).toEqual([
      'this is not a Partline plan: expected "kind": "partline-plan"',
    ])
  })
  it("is refused by its size before it is read", () => {
    expect(refusals(" ".repeat(50 * 1024 * 1024))).toEqual([
      "expected a plan of at most 5 MB, found 50 MB: is it another file?",
    ])
  })
  it("is refused when it comes from a newer Partline, under the path of its version", () => {
    expect(openPlan(set(["version"], 7))).toEqual({
      ok: false,
      problems: [
        {
          path: "version",
          code: "newer-version",
          version: 7,
          known: 2,
        },
      ],
    })
  })
  for (const version of [0, -1, 1.5, "1", null])
    it(`is refused with version ${JSON.stringify(version)}`, () => {
      expect(refusals(set(["version"], version))).toEqual(["version: expected a whole number, 2 at present"])
    })
})

describe("a field out of order", () => {
  const cases: [string, string, string][] = [
    [
      "too deep",
      set(["sections", 2, "depthMm", "start"], 500),
      "section 3, depth at the start: expected 0.5 to 60 mm, found 500",
    ],
    [
      "below nothing",
      set(["sections", 0, "rootDistanceMm"], -3),
      "section 1, distance from the root: expected 0 to 300 mm, found -3",
    ],
    [
      "not a number",
      set(["hair", "fibreUm"], null),
      "hair, hair texture: expected 30 to 120 µm, found nothing (null)",
    ],
    [
      "without end",
      sample.replace('"fibreUm": 70', '"fibreUm": 1e999'),
      "hair, hair texture: expected 30 to 120 µm, found a number without end",
    ],
    [
      "words for a number",
      set(["hair", "fibreUm"], "fine"),
      'hair, hair texture: expected 30 to 120 µm, found "fine"',
    ],
    [
      "no such kind",
      set(["sections", 1, "kind"], "balayage"),
      'section 2, kind: expected a section of kind "slice", "weave", "backcomb", "painted" or "left-out", found "balayage"',
    ],
    [
      "too many initials",
      set(["client", "initials"], "Jessica"),
      'client, initials: expected one line of at most 6 letters, found "Jessica"',
    ],
    [
      "no such day",
      set(["date"], "2026-02-30"),
      'date: expected a day written as "2026-03-09", found "2026-02-30"',
    ],
    [
      "one point",
      set(["sections", 0, "parting"], [[0, 0]]),
      "section 1, parting: expected 2 to 200 points, found a list of 1",
    ],
    [
      "a point off the map",
      set(["sections", 0, "parting", 1, 0], 3),
      "section 1, parting, point 2: expected a number of radians from -2.4 to 2.4, found 3",
    ],
    [
      "from past to",
      set(["sections", 0, "strand"], { from: 0.6, to: 0.4 }),
      'section 1, part of the strand coated, from: expected less than "to" (the root is 0, the ends are 1), found 0.6',
    ],
    [
      "an extra field",
      set(["sections", 0, "depth"], 3),
      'section 1: "depth" is not a field of a plan: take it out',
    ],
    [
      "a control character",
      set(["name"], "Ana\u0007"),
      'name: expected one line of at most 80 letters, without control characters, found "Ana\uFFFD"',
    ],
    [
      "an id twice",
      set(["sections", 1, "id"], "s1"),
      "section 2, id: expected one of its own, but s1 is taken in number 1 of the list",
    ],
    [
      "a map number twice",
      set(["sections", 2, "mapNumber"], 1),
      "section 3, map number: expected one of its own, but 1 is taken in number 1 of the list",
    ],
    [
      "an unknown mix",
      set(["sections", 0, "mix"], "C"),
      "section 1, mix: expected one of the mixes listed (A), found C",
    ],
  ]
  for (const [name, text, sentence] of cases)
    it(`names the field and the cure: ${name}`, () => expect(refusals(text)).toEqual([sentence]))

  it("is named by its path, counted from 0", () => {
    const opened = openPlan(set(["sections", 2, "depthMm", "start"], 500), anywhere)
    expect(opened.ok || opened.problems[0].path).toBe("sections[2].depthMm.start")
  })
  it("is named by its own path when it should not be there", () => {
    const opened = openPlan(set(["sections", 0, "depth"], 3), anywhere)
    expect(opened.ok || opened.problems[0].path).toBe("sections[0].depth")
  })
  it("says what is missing", () => {
    expect(refusals(set(["hair"], undefined))).toEqual([
      "hair: expected a group of densityPerCm2, fibreUm, lengthCm, but it is missing",
    ])
  })
})

describe("too much of it", () => {
  it("gives one problem for a parting of 100,000 points, even of nonsense", () => {
    const long = Array.from({ length: 100_000 }, () => "x")
    expect(refusals(set(["sections", 0, "parting"], long))).toEqual([
      "section 1, parting: expected 2 to 200 points, found a list of 100,000",
    ])
  })
  it("gives one problem for 10,000 sections", () => {
    expect(refusals(set(["sections"], Array(10_000).fill({})))).toEqual([
      "sections: expected at most 1,000 sections, found a list of 10,000",
    ])
  })
  it("lists 20 problems and counts the rest", () => {
    const sentences = refusals(set(["sections"], Array(27).fill(3)))
    expect(sentences.length).toBe(21)
    expect(sentences[20]).toBe("and 7 more problems like these")
  })
})

describe("names", () => {
  const names = [
    "张伟",
    "नमस्ते",
    "محمد",
    "👩🏽‍🦱✂️",
    "<b>Ana</b> & {{x}}",
    "Zoë ".repeat(20),
    "'; DROP TABLE--",
  ]
  for (const name of names)
    it(`come back as they were: ${name}`, () => {
      const opened = openPlan(set(["name"], name), anywhere)
      expect(opened.ok && opened.plan.name).toBe(name)
      expect(opened.ok && JSON.parse(savePlan(opened.plan)).name).toBe(name)
    })
  it("count a joined letter once", () => {
    expect(refusals(set(["client", "initials"], "👩🏽‍🦱".repeat(6)))).toEqual([])
    expect(refusals(set(["client", "initials"], "👩🏽‍🦱".repeat(7))).length).toBe(1)
  })
})

describe("any damage to a file", () => {
  const paths = pathsOf(JSON.parse(sample))
  const damaged = fc.oneof(
    fc.tuple(fc.constantFrom(...paths), fc.jsonValue()).map(([path, value]) => set(path, value)),
    fc
      .tuple(fc.nat(sample.length), fc.nat(40), fc.string())
      .map(([at, cut, put]) => sample.slice(0, at) + put + sample.slice(at + cut)),
    fc.json(),
    fc.string(),
  )
  it("opens or gives problems in words, and never throws", () => {
    fc.assert(
      fc.property(damaged, (text) => {
        const opened = openPlan(text, anywhere)
        if (opened.ok) {
          expect(openPlan(savePlan(opened.plan), anywhere)).toEqual({
            ok: true,
            plan: roundPlan(opened.plan),
          })
          return
        }
        expect(opened.problems.length).toBeGreaterThan(0)
        expect(opened.problems.length).toBeLessThanOrEqual(21)
        for (const problem of opened.problems) {
          expect(problem.path).not.toBe("")
          expect(en.problems.clause(problem)).not.toMatch(/undefined|invalid|\[object/i)
        }
      }),
      { numRuns: 600 },
    )
  })
})

function pathsOf(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [path]
  const keys = Array.isArray(value) ? value.map((_, i) => i) : Object.keys(value)
  return [path, ...keys.flatMap((key) => pathsOf((value as Json)[key], [...path, key]))]
}
