import { describe, expect, it } from "vitest"
import type { RefusalCode } from "../../../web/core/document/refusal"
import type { NotKept } from "../../../web/core/fields/notKept"
import type { Found, Problem, ProblemCode } from "../../../web/core/fields/problem"
import { say } from "../../../web/words/say"
import { en, everyLanguage } from "../../support/words"

type Samples<T extends { code: string }> = { [C in T["code"]]: Extract<T, { code: C }> }

const found: Found = { is: "number", value: 70.25 }
const foil = { code: "foil", number: 3 } as const
const band = { code: "left-out", name: "" } as const

const problems: Samples<ProblemCode> = {
  number: { code: "number", low: 0.5, high: 60, unit: "mm", found },
  "whole-number": { code: "whole-number", low: 1, high: 999, found },
  choice: { code: "choice", choices: ["front", "behind"], found: { is: "text", text: "above" } },
  "one-or-two": { code: "one-or-two", found: { is: "truth", value: true } },
  line: { code: "line", most: 80, found: { is: "missing" } },
  "plain-line": { code: "plain-line", most: 80, found: { is: "nothing" } },
  lines: { code: "lines", most: 2000, found: { is: "group" } },
  "plain-lines": { code: "plain-lines", most: 2000, found: { is: "endless-number" } },
  id: { code: "id", found },
  "mix-letter": { code: "mix-letter", found },
  day: { code: "day", found },
  moment: { code: "moment", found },
  point: { code: "point", found: { is: "list", length: 3 } },
  coordinate: { code: "coordinate", reach: 2.4, found },
  list: { code: "list", low: 2, high: 200, of: "points", found },
  group: { code: "group", fields: ["start", "end"], found },
  kind: { code: "kind", of: "section", kinds: ["slice", "weave"], found },
  "chair-note": { code: "chair-note", found },
  "true-or-left-out": { code: "true-or-left-out", found },
  "less-than-to": { code: "less-than-to", found },
  "no-more-than-high": { code: "no-more-than-high", found },
  "something-else": { code: "something-else", found },
  "extra-field": { code: "extra-field", field: "depth", within: "sections[0]", document: "plan" },
  taken: { code: "taken", value: "s1", firstPlace: 1 },
  "unknown-mix": { code: "unknown-mix", known: ["A", "B"], mix: "Q" },
  "twin-of-itself": { code: "twin-of-itself" },
  "twin-unknown": { code: "twin-unknown", twin: "s9" },
  "twin-of-another": { code: "twin-of-another", id: "s1", twin: "s2", named: null },
  "pair-of-one": { code: "pair-of-one", pair: 4, found: 1 },
  "pair-not-single": { code: "pair-not-single" },
  "nothing-to-coat": { code: "nothing-to-coat", startMm: 90, lengthCm: 6 },
  "no-roots": { code: "no-roots", startMm: 40, toMm: 30 },
  "roots-first-later": { code: "roots-first-later", afterMin: 15 },
  "no-ends": { code: "no-ends", toMm: 250, lengthCm: 20 },
  "one-mix-twice": { code: "one-mix-twice", mix: "A" },
  "landmark-off-middle": { code: "landmark-off-middle", landmark: "centre front" },
  "landmark-twice": { code: "landmark-twice", landmark: "temple", firstPlace: 1 },
  hairline: { code: "hairline", fault: "over-ear", side: "left" },
  "head-size": { code: "head-size", measure: "overMm", mm: 190, least: 315, greatest: 375 },
  "too-large": { code: "too-large", document: "plan", mostMb: 5, foundMb: 21 },
  empty: { code: "empty", document: "technique" },
  "not-json": { code: "not-json", document: "plan" },
  "no-number": { code: "no-number", field: "stitchMm", word: "NaN" },
  "another-kind": { code: "another-kind", document: "plan", kind: "partline-plan" },
  version: { code: "version", known: 1 },
  "newer-version": { code: "newer-version", version: 7, known: 1 },
  "more-like-these": { code: "more-like-these", count: 1 },
  "damaged-link": { code: "damaged-link" },
  "newer-link": { code: "newer-link" },
  "too-large-link": { code: "too-large-link" },
  "not-on-shelf": { code: "not-on-shelf" },
  "place-outside": { code: "place-outside" },
  "line-outside": { code: "line-outside" },
  "line-too-short": { code: "line-too-short", leastMm: 2, foundMm: 0.4 },
  "line-crosses-itself": { code: "line-crosses-itself" },
  "divider-too-short": { code: "divider-too-short", leastMm: 4, foundMm: 1 },
  "divider-crosses-itself": { code: "divider-crosses-itself" },
  "divider-on-another": { code: "divider-on-another", number: 1 },
  "divider-divides-nothing": { code: "divider-divides-nothing" },
  "divider-past-edge": { code: "divider-past-edge", pastMm: 12.4 },
  "divider-touches-another": { code: "divider-touches-another" },
  "working-section-too-small": { code: "working-section-too-small", leastCm2: 1, foundCm2: 0.4 },
}

const problem: Problem = { path: "sections[2].depthMm.start", ...problems.number }

const refusals: Samples<RefusalCode> = {
  "too-short": { code: "too-short" },
  "outside-hairline": { code: "outside-hairline" },
  "crosses-itself": { code: "crosses-itself" },
  problem: { code: "problem", problem },
  "section-problem": { code: "section-problem", section: foil, problem },
  "divider-problem": { code: "divider-problem", divider: 2, problem },
  "too-many-sections": { code: "too-many-sections", most: 1000 },
  hairline: { code: "hairline", fault: "on-face" },
  "break-the-pair": { code: "break-the-pair", section: foil, because: { code: "no-room-behind" } },
  "no-place-behind": { code: "no-place-behind", behindMm: 190 },
  "never-so-long": { code: "never-so-long", wantedMm: 600 },
  "only-so-long": { code: "only-so-long", madeMm: 80, wantedMm: 600 },
  "off-hairline": { code: "off-hairline" },
  "no-direction": { code: "no-direction", direction: "diagonal forward" },
  "no-angle": { code: "no-angle", degrees: 40 },
  "angle-leaves-hair": { code: "angle-leaves-hair", degrees: 40 },
  "no-start-along": { code: "no-start-along", side: "left", wantedMm: 120 },
  "divider-runs-along": { code: "divider-runs-along", section: band },
  "thinning-does-not-part": { code: "thinning-does-not-part" },
  "one-foil-does": { code: "one-foil-does" },
  "nowhere-to-paste": { code: "nowhere-to-paste" },
  "paired-already": { code: "paired-already", section: band },
  "no-room-behind": { code: "no-room-behind" },
  "no-room-on-other-side": { code: "no-room-on-other-side" },
  "no-room-for-stack": { code: "no-room-for-stack", section: foil },
  "stack-ends": { code: "stack-ends", section: foil, fits: 12, asked: 40 },
  "no-hair-for-veil": { code: "no-hair-for-veil", section: foil },
  "up-to-hairline": { code: "up-to-hairline", sections: [foil, band] },
  "choose-two": { code: "choose-two" },
  "nothing-between": { code: "nothing-between", sections: [foil, band] },
  "wide-between": { code: "wide-between", mostMm: 60, sections: [foil, band] },
  "no-room-for": { code: "no-room-for", name: "Veil" },
  "no-room-for-technique": { code: "no-room-for-technique", name: "Halo" },
  "no-room-for-start": { code: "no-room-for-start", start: "four-section" },
  "start-is-there": { code: "start-is-there", start: "four-section" },
  "no-new-growth": { code: "no-new-growth", foil: 3 },
  "mix-in-use": { code: "mix-in-use", mix: "A", foils: [1, 3] },
  "foil-without-mix": { code: "foil-without-mix", foil: 4 },
}

const notKept: Samples<NotKept> = {
  "changed-elsewhere": { code: "changed-elsewhere" },
  "removed-elsewhere": { code: "removed-elsewhere" },
  "card-changed-elsewhere": { code: "card-changed-elsewhere" },
  "merged-too-long": { code: "merged-too-long" },
  "service-running": { code: "service-running" },
  "keeper-missing": { code: "keeper-missing" },
  blocked: { code: "blocked", what: "plan" },
  full: { code: "full", what: "technique" },
  "newer-shelf": { code: "newer-shelf", what: "plan" },
  "private-window": { code: "private-window", what: "salon" },
  "refused-by-browser": { code: "refused-by-browser", what: "service", error: "" },
  "not-in-order": { code: "not-in-order", what: "plan", problem },
  unreadable: { code: "unreadable", problem },
  "salon-unreadable": { code: "salon-unreadable" },
}

const isSentence = (text: string) => {
  expect(text).toMatch(/[.?]$/)
  expect(text).not.toMatch(/undefined|NaN,|\[object/)
}

describe.each(everyLanguage)("what is wrong, in %s", (_, words) => {
  it.each(Object.values(problems))("$code", (code) =>
    isSentence(words.problems.sentence({ path: "sections[2].depthMm.start", ...code })),
  )
  it.each(Object.values(refusals))("$code", (code) => isSentence(say(words.problems.refusals, code)))
  it.each(Object.values(notKept))("$code", (code) => isSentence(say(words.plans.notKept, code)))
})

describe("the place of a problem", () => {
  it("is told as a colourist reads it, lists counted from 1", () => {
    expect(en.problems.sentence(problem)).toBe(
      "Section 3, depth at the start: expected 0.5 to 60 mm, found 70.25.",
    )
    expect(en.problems.sentence({ path: "file", ...problems.empty })).toBe(
      "The file is empty: expected a technique saved by Partline.",
    )
    expect(en.problems.sentence({ path: "sections[0].depth", ...problems["extra-field"] })).toBe(
      'Section 1: "depth" is not a field of a plan: take it out.',
    )
  })
})
