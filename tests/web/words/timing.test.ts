import { expect, it } from "vitest"
import type { FixCode } from "../../../web/core/fixes/fix"
import type { ConflictCode } from "../../../web/core/schedule/conflicts"
import type { HeatRefusal } from "../../../web/core/schedule/heatRefusal"
import type { TimingAssumption, TimingProblem } from "../../../web/core/schedule/timedPlan"
import { type Coded, type Sentences, say } from "../../../web/words/say"
import { everyLanguage, foilWord } from "../../support/words"

type Samples<T extends Coded> = { [C in T["code"]]: Extract<T, { code: C }> }

const scale = { darkest: 1, lightest: 10 }
const problems: Samples<TimingProblem> = {
  "no-foils": { code: "no-foils" },
  hands: { code: "hands", count: 3 },
  "pace-share": { code: "pace-share" },
  "break-backwards": { code: "break-backwards" },
  "foil-twice": { code: "foil-twice", foil: 1 },
  "foil-pace": { code: "foil-pace", foil: 1, minutes: Number.NaN },
  "foil-bare": { code: "foil-bare", foil: 1 },
  "foil-limit": { code: "foil-limit", foil: 1 },
  "foil-mix": { code: "foil-mix", foil: 1, mix: "Z" },
  "roots-after-limit": { code: "roots-after-limit", foil: 1, afterMin: 40, limitMin: 35 },
  "foil-ready": { code: "foil-ready", foil: 1, mix: "Z" },
  "no-bowl": { code: "no-bowl", foil: 1, mix: "A" },
  "bowl-empty": { code: "bowl-empty", mix: "A" },
  "bowl-pot-life": { code: "bowl-pot-life", mix: "A" },
  "checks-apart": { code: "checks-apart" },
  "from-off-scale": { code: "from-off-scale", level: 0, ...scale },
  "to-off-scale": { code: "to-off-scale", level: 11, ...scale },
  "not-lighter": { code: "not-lighter", fromLevel: 8, toLevel: 6 },
}
const heat: Samples<HeatRefusal> = {
  "too-warm": { code: "too-warm", ceilingC: 40, warmthC: 41 },
  "not-on-sheet": { code: "not-on-sheet" },
  "strong-mix": { code: "strong-mix", mix: "A", volume: 30 },
  "at-hairline": { code: "at-hairline" },
  cushion: { code: "cushion" },
  "too-long": { code: "too-long", mostMin: 10, askedMin: 12 },
  "longer-than-usual": { code: "longer-than-usual", usualMostMin: 10, askedMin: 15 },
  "no-minutes": { code: "no-minutes" },
}
const assumed: Samples<TimingAssumption> = {
  "lift-by-sheet": { code: "lift-by-sheet", fromLevel: 6, toLevel: 9 },
  "lift-by-strand": { code: "lift-by-strand", fromLevel: 6, toLevel: 9 },
  "no-levels": { code: "no-levels", low: 18, high: 34 },
  "lifts-first": { code: "lifts-first", hair: "hairline", low: 0.7, high: 1, lookMin: 5 },
  "learnt-pace": { code: "learnt-pace" },
  "roots-wait": { code: "roots-wait", foil: 3, byMin: 4, others: 2 },
  "heat-left-out": { code: "heat-left-out", why: heat.cushion },
  "heat-counted": { code: "heat-counted", minutes: 8, low: 1.2, high: 2 },
  "no-sheet": { code: "no-sheet", mix: "A", product: "Tub", limitMin: 35 },
}
const clashes: Samples<ConflictCode> = {
  "over-run": { code: "over-run", foil: 1, limitMin: 45, overMin: 15, others: 9 },
  "under-processed": { code: "under-processed", foil: 25, onMin: 9, needsMin: null, others: 0 },
  "hairline-ahead": { code: "hairline-ahead", waitMin: null },
  "pot-life": { code: "pot-life", mix: "A", agedMin: 50, potLifeMin: 45 },
  booking: { code: "booking", chairMin: { low: 90, mid: 100, high: 120 }, bookingMin: 90 },
}
const fixes: Samples<FixCode> = {
  "each-off": { code: "each-off" },
  reorder: { code: "reorder" },
  "weaker-early": { code: "weaker-early", count: 1 },
  "order-and-strength": { code: "order-and-strength", count: 4 },
  "closest-together": { code: "closest-together" },
  "fresh-bowl": { code: "fresh-bowl", mixes: ["A", "B"], foils: [3, 9] },
  "second-colourist": { code: "second-colourist" },
  "no-drying": { code: "no-drying", savesMin: 30 },
  "later-end": { code: "later-end", bookingMin: 135, byMin: 15 },
  "fewer-foils": { code: "fewer-foils", foils: [2, 5, 6, 9] },
  "another-day": { code: "another-day", foils: [2] },
}

const said = <T extends Coded>(sentences: Sentences<T>, samples: Samples<T>) =>
  (Object.values(samples) as T[]).map((sample) => say(sentences, sample))

it.each(everyLanguage)(
  "says every problem, clash, fix and assumption of the clock in %s",
  (_, { timing }) => {
    const all = [
      ...said(timing.problems, problems),
      ...said(timing.heat, heat),
      ...said(timing.assumed, assumed),
      ...said(timing.clashes, clashes),
      ...said(timing.fixes, fixes),
    ]
    expect(all.filter((sentence) => !sentence.trim() || /undefined|NaN|\[object/.test(sentence))).toEqual([])
  },
)

it.each(everyLanguage)("calls painted panels foils in no clash and no fix, in %s", (language, { timing }) => {
  const foil = foilWord[language.slice(0, 2)]
  const panel = { piece: "panel" as const }
  const all = [
    ...Object.values(clashes).map((clash) => say(timing.clashes, { ...clash, ...panel })),
    ...Object.values(fixes).map((fix) => say(timing.fixes, { ...fix, ...panel })),
    timing.closest({ nowMin: 9, thenMin: 4 }, "panel"),
  ]
  expect(all.filter((sentence) => foil.test(sentence))).toEqual([])
  expect(say(timing.clashes, clashes["over-run"])).toMatch(foil)
  expect(say(timing.fixes, fixes["each-off"])).toMatch(foil)
})
