import { readFileSync } from "node:fs"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { openTechnique, saveTechnique } from "../../../../web/core/file/techniqueFile"
import { techniqueJsonSchema } from "../../../../web/core/file/techniqueSchema"
import { usualTechnique, usualTechniques } from "../../../support/techniques"
import { en } from "../../../support/words"

const frame = usualTechnique("bright-frame")
const sample = saveTechnique(frame)

type Json = Record<string | number, unknown>

/** The sample with one field of it set to something else, or taken out. */
function set(path: readonly (string | number)[], value: unknown): string {
  const raw = JSON.parse(sample)
  const group = path.slice(0, -1).reduce<Json>((part, key) => part[key] as Json, raw)
  group[path[path.length - 1]] = value
  return JSON.stringify(raw)
}

function refusals(text: string): string[] {
  const opened = openTechnique(text)
  return opened.ok ? [] : opened.problems.map(en.problems.clause)
}

describe("a technique's file", () => {
  it.each(usualTechniques)("gives back $name as it was", (technique) => {
    expect(openTechnique(saveTechnique(technique))).toEqual({ ok: true, technique })
  })

  it("holds nothing of a plan or a client", () => {
    expect(sample).not.toMatch(/"(client|initials|date|mix|mapNumber|note)"/)
  })

  it.each([
    ["empty", "", "the file is empty: expected a technique saved by Partline"],
    ["cut short", sample.slice(0, 300), /^the file is cut short or is not a technique/],
    [
      "a plan",
      '{"kind":"partline-plan","version":1}',
      'this is not a Partline technique: expected "kind": "partline-technique"',
    ],
    [
      "newer",
      set(["version"], 2),
      "this file is version 2 and this Partline reads up to 1: open it with a newer Partline",
    ],
    [
      "too large",
      " ".repeat(2 * 1024 * 1024),
      "expected a technique of at most 1 MB, found 2 MB: is it another file?",
    ],
    [
      "deep",
      set(["sections", 1, "depthMm", "start"], 500),
      "section 2, depth at the start: expected 0.5 to 60 mm, found 500",
    ],
    [
      "off the hairline",
      set(["sections", 0, "parting", "from", "landmark"], 9),
      "section 1, parting, from, landmark: expected -7 to 7, found 9",
    ],
    [
      "no such run",
      set(["sections", 0, "parting", "run"], "zigzag"),
      'section 1, parting, run: expected a parting that runs "parallel", "drifting", "straight" or "through", found "zigzag"',
    ],
    [
      "one spot",
      set(["sections", 0, "parting"], { run: "through", spots: [{ landmark: 1, behindMm: 5 }] }),
      "section 1, parting, spots: expected 2 to 200 places, found a list of 1",
    ],
    ["extra", set(["client"], "AB"), '"client" is not a field of a technique: take it out'],
    ["no steps", set(["steps"], "part"), 'steps: expected at most 40 steps, found "part"'],
    [
      "half a pair",
      set(["sections", 0, "pair"], 4),
      'section 1, pair: expected two sections that bear 4, found 1; take "pair" out to lay the section by itself',
    ],
    ["no sections", set(["sections"], []), "sections: expected 1 to 200 sections, found a list of 0"],
    ["long step", set(["steps", 1], "x".repeat(501)), /^step 2: expected one line of at most 500 letters/],
  ] as const)("is refused in words that name the field and the cure: %s", (_, text, sentence) => {
    const [first] = refusals(text)
    if (typeof sentence === "string") expect(first).toBe(sentence)
    else expect(first).toMatch(sentence)
  })

  it("opens or gives problems in words, whatever was done to it, and never throws", () => {
    const damaged = fc
      .tuple(fc.nat(sample.length), fc.nat(40), fc.string())
      .map(([at, cut, put]) => sample.slice(0, at) + put + sample.slice(at + cut))
    fc.assert(
      fc.property(fc.oneof(damaged, fc.json(), fc.string()), (text) => {
        for (const sentence of refusals(text)) expect(sentence).not.toMatch(/undefined|invalid|\[object/i)
      }),
      { numRuns: 300 },
    )
  })
})

describe("the published JSON Schema of a technique", () => {
  it("is the schema of its door: when it changes, write techniqueJsonSchema() to the file again", () => {
    const published = readFileSync(
      new URL("../../../../web/core/file/technique.schema.json", import.meta.url),
      "utf8",
    )
    expect(JSON.parse(published)).toEqual(techniqueJsonSchema())
  })
})
