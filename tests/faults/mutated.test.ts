import fc from "fast-check"
import { expect, it } from "vitest"
import { liveServiceOf } from "../../web/core/chair/liveService"
import { openPlan, savePlan, writePlan } from "../../web/core/file/planFile"
import { openTechnique, saveTechnique } from "../../web/core/file/techniqueFile"
import { fragmentOf, readFragment } from "../../web/core/file/techniqueLink"
import { readSalonShelf } from "../../web/core/weighing/salonRecord"
import { readWeighings } from "../../web/core/weighing/weighingCsv"
import { servedPlan } from "../support/servedPlan"
import { usualTechnique } from "../support/techniques"
import { en } from "../support/words"
import { howMany } from "./howMany"

/** Files and records of every kind, damaged: each gives a thing that can be used or sentences, and none throws. */

const numRuns = howMany({ slice: 150, whole: 20_000 })

/** A text with pieces cut out, put in, doubled or turned. */
const damaged = (text: string) =>
  fc
    .array(
      fc.tuple(
        fc.nat(text.length),
        fc.nat(60),
        fc.oneof(fc.string(), fc.constantFrom("null", "-1", "[]", "1e999")),
      ),
      {
        minLength: 1,
        maxLength: 4,
      },
    )
    .map((cuts) => cuts.reduce((now, [at, cut, put]) => now.slice(0, at) + put + now.slice(at + cut), text))

/** A record in which one value, wherever it lies, is another. */
const altered = (record: unknown) => {
  const paths = pathsOf(record)
  return fc
    .tuple(fc.nat(paths.length - 1), fc.jsonValue())
    .map(([i, value]) => withValue(record, paths[i], value))
}

type Path = readonly (string | number)[]

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== "object" || value === null) return [path]
  return [path, ...Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]))]
}

function withValue(record: unknown, [key, ...rest]: Path, value: unknown): unknown {
  if (key === undefined) return value
  const copy: Record<string, unknown> | unknown[] = Array.isArray(record)
    ? [...record]
    : { ...(record as object) }
  const at = copy as Record<string | number, unknown>
  at[key] = withValue(at[key], rest, value)
  return copy
}

const planText = savePlan(servedPlan())
const technique = usualTechnique("bright-frame")

const isSaid = (sentence: string) => expect(sentence).not.toMatch(/undefined|\[object|^$/)

it("plans", () => {
  const texts = fc.oneof(
    damaged(planText),
    altered(JSON.parse(planText)).map((raw) => JSON.stringify(raw)),
  )
  fc.assert(
    fc.property(texts, (text) => {
      const opened = openPlan(text)
      if (!opened.ok) for (const problem of opened.problems) isSaid(en.problems.sentence(problem))
      else expect(writePlan(opened.plan).ok).toBe(true)
    }),
    { numRuns },
  )
})

it("techniques", () => {
  fc.assert(
    fc.property(damaged(saveTechnique(technique)), (text) => {
      const opened = openTechnique(text)
      if (!opened.ok) for (const problem of opened.problems) isSaid(en.problems.sentence(problem))
    }),
    { numRuns },
  )
})

it("links", async () => {
  const whole = (await fragmentOf(technique)) ?? ""
  await fc.assert(
    fc.asyncProperty(damaged(whole), async (link) => {
      const opened = await readFragment(link)
      if (!opened.ok) isSaid(en.problems.sentence(opened.problems[0]))
    }),
    { numRuns },
  )
})

it("lists of weighings", () => {
  const text = "hairG,strandAreaCm2,productG\n5,1600,17\n4,1500,16.5\n"
  fc.assert(
    fc.property(damaged(text), (list) => {
      const read = readWeighings(list)
      expect(
        read.ok ? read.rows.every(({ productG }) => Number.isFinite(productG)) : read.problems.length > 0,
      ).toBe(true)
    }),
    { numRuns },
  )
})

it("what the salon keeps", () => {
  const kept = { sheets: [], bottles: [20, 40], developerPrice: { amount: 10, forG: 1000 }, weighings: [] }
  fc.assert(
    fc.property(fc.oneof(altered(kept), fc.jsonValue()), (record) => {
      const { salon } = readSalonShelf(record)
      expect(readSalonShelf(salon).unread).toEqual([])
    }),
    { numRuns },
  )
})

it("services at the chair", () => {
  const live = {
    planId: "p",
    startedAt: "2026-03-09T10:00:00.000Z",
    planned: [],
    chair: {
      foils: [],
      elapsedMs: 5000,
      last: { load: "a", monotonicMs: 5000, wallMs: 1_773_050_400_000 },
      log: [
        {
          tap: { kind: "rinsed" },
          atMs: 10,
          wallMs: 1_773_050_400_000,
          onAtMs: null,
          undone: false,
          note: null,
        },
      ],
      clockNotes: [],
      revision: 1,
    },
    endedAt: null,
  }
  expect(liveServiceOf(live)).not.toBeNull()
  fc.assert(
    fc.property(altered(live), (record) => {
      const found = liveServiceOf(record)
      if (found) expect(Number.isFinite(found.chair.elapsedMs) && Array.isArray(found.chair.log)).toBe(true)
    }),
    { numRuns },
  )
})
