import { describe, expect, it } from "vitest"
import type { MixReason } from "../../../web/core/bowls/proposeMixes"
import type { TonerBowlCode } from "../../../web/core/bowls/tonerBowl"
import type { AdditiveCode } from "../../../web/core/mixing/additives"
import type { BlendProblem } from "../../../web/core/mixing/blend"
import type { DeveloperReason } from "../../../web/core/mixing/developer"
import type { MixNote, MixProblem } from "../../../web/core/mixing/mix"
import type { PouringCode } from "../../../web/core/mixing/pouring"
import type { SheetProblem } from "../../../web/core/mixing/productSheet"
import type { ToneCode } from "../../../web/core/tone/tone"
import { say } from "../../../web/words/say"
import { everySampleIn, type Samples } from "../../support/codes"
import { en, everyLanguage } from "../../support/words"

const product = "Salon powder"
const wantedG = { low: 11, mid: 17, high: 25 }

const developer: Samples<DeveloperReason> = {
  "lift-printed": { code: "lift-printed", liftLevels: 1, volume: 10, printed: { low: 1, high: 2 } },
  "lift-expected": { code: "lift-expected", liftLevels: 2, volume: 20, weakerVolume: 10 },
  "not-in-one-visit": { code: "not-in-one-visit", liftLevels: 4, volume: 20, visits: 2 },
  "more-than-one-visit": { code: "more-than-one-visit", liftLevels: 7, mostLevels: 6, volume: 30, visits: 2 },
  "level-now-unknown": { code: "level-now-unknown" },
  "target-unknown": { code: "target-unknown" },
  "no-lift-printed": { code: "no-lift-printed", product },
  "target-beyond-scale": { code: "target-beyond-scale", level: 11, lightestLevel: 10 },
  "target-darker": { code: "target-darker", fromLevel: 8, toLevel: 6 },
  "at-target": { code: "at-target", level: 8 },
  "no-lift-allowed": { code: "no-lift-allowed", product },
}
const reasons: Samples<MixReason> = {
  ...developer,
  "no-sheet": { code: "no-sheet", product },
  consistency: { code: "consistency", consistency: "creamy" },
  joined: { code: "joined" },
}
const blending: Samples<BlendProblem> = {
  "no-bottles": { code: "no-bottles" },
  "bottle-percent": { code: "bottle-percent", percent: -3 },
  "want-percent": { code: "want-percent", percent: Number.NaN },
  "no-amount": { code: "no-amount", grams: -0 },
  "want-too-weak": { code: "want-too-weak", wantPercent: 3, weakestPercent: 6 },
  "want-too-strong": { code: "want-too-strong", wantPercent: 7.5, strongestPercent: 6 },
}
const pouring: Samples<PouringCode> = {
  poured: { code: "poured", bottles: [{ volume: 40, percent: 12, grams: 30 }] },
  "not-poured": { code: "not-poured", volume: 30, problem: blending["want-too-strong"] },
}
const additives: Samples<AdditiveCode> = {
  "instead-of-developer": { code: "instead-of-developer", name: "Drops", grams: 2 },
  "beside-developer": { code: "beside-developer", name: "Drops", grams: 2, restParts: 2.1 },
}
const problems: Samples<MixProblem> = {
  "ratio-parts": { code: "ratio-parts", product, lightener: 0, developer: Number.NaN },
  "ratio-upside-down": { code: "ratio-upside-down", product, lightener: 2, developer: 1 },
  "no-strength": { code: "no-strength", product, percent: -6 },
  "scale-step": { code: "scale-step", grams: 0 },
  "foil-grams": { code: "foil-grams", foil: 4, lowG: -2, highG: Number.NaN },
  "foil-minutes": { code: "foil-minutes", foil: "f3", minutes: -1 },
}
const notes: Samples<MixNote> = {
  "pot-life-assumed": { code: "pot-life-assumed", product, minutes: 45 },
  "foil-outlasts-bowl": { code: "foil-outlasts-bowl", foil: 4, minutes: 45 },
  "off-ratio": { code: "off-ratio", scaleStepG: 5, parts: 1.33, wantedParts: 1.25 },
}
const sheets: Samples<SheetProblem> = {
  "no-name": { code: "no-name" },
  "no-ratio": { code: "no-ratio" },
  "ratio-impossible": { code: "ratio-impossible", low: -1, high: 2 },
  "ratio-backwards": { code: "ratio-backwards", low: 2.5, high: 1.5 },
  "ratio-upside-down": { code: "ratio-upside-down", low: 0.5, high: 0.5 },
  "no-developers": { code: "no-developers" },
  "developer-twice": { code: "developer-twice", volume: 20 },
  "developer-impossible": { code: "developer-impossible", volume: 60, mostVolume: 40, mostPercent: 12 },
  "lift-impossible": { code: "lift-impossible", volume: 20, low: 4, high: 3, mostLevels: 9 },
  "lift-falls": { code: "lift-falls", volume: 30, weakerVolume: 20 },
  "minutes-impossible": { code: "minutes-impossible", field: "potLifeMin", minutes: 0, least: 1, most: 120 },
  "heat-past-longest": { code: "heat-past-longest" },
  "additive-no-name": { code: "additive-no-name" },
  "additive-grams": { code: "additive-grams", name: "", gPerG: -0.1 },
  "price-impossible": { code: "price-impossible" },
}
const tones: Samples<ToneCode> = {
  "level-unknown": { code: "level-unknown" },
  keep: { code: "keep", level: 8, pigment: "yellow" },
  neutralise: { code: "neutralise", level: 9.5, pigment: "pale-yellow", neutraliser: "violet" },
  melt: { code: "melt", rootLevel: null, downMm: 25 },
}
const bowls: Samples<TonerBowlCode> = {
  "toner-alone": { code: "toner-alone", product, tonerG: 7.5, clearG: 0, wantedG },
  "toner-mixed": {
    code: "toner-mixed",
    product,
    tonerG: 10,
    clearG: 5,
    developerG: 20,
    developerMl: 20,
    volume: 10,
    percent: 3,
    wantedG,
  },
}

describe.each(everyLanguage)("formula in %s", (_, { formula: { mixing, productSheets, tone } }) => {
  it.each([
    ...everySampleIn(mixing.why, developer),
    ...everySampleIn(mixing.suggestions.why, reasons),
    ...everySampleIn(mixing.blend, blending),
    ...everySampleIn(mixing.poured, pouring),
    ...everySampleIn(mixing.additives, additives),
    ...everySampleIn(mixing.problem, problems),
    ...everySampleIn(mixing.note, notes),
    ...everySampleIn(productSheets.problem, sheets),
    ...everySampleIn(tone.shows, tones),
    ...everySampleIn(tone.bowl, bowls),
  ])("says %s", (_, sentence) => {
    expect(sentence).not.toMatch(/^$|undefined|NaN|\[object|-0(?![.,]\d)/)
  })
})

describe("in English", () => {
  it("counts one level, and several", () => {
    const said = (liftLevels: number) =>
      say(en.formula.mixing.why, { ...developer["lift-printed"], liftLevels })
    expect(said(1)).toBe("1 level to lift; the product sheet states 1–2 for 10 vol.")
    expect(said(2.5)).toMatch(/^2\.5 levels to lift/)
  })

  it("says of a weaker developer why, and how far it falls short", () => {
    const weaker = { volume: 10, levels: { low: 1, high: 2 }, reasons: ["fine", "porous"] as const }
    expect(en.formula.mixing.weaker({ ...weaker, shortByLevels: 1 })).toBe(
      "Or 10 vol: fine hair lifts sooner and stretches sooner and porous hair processes faster, but it stops 1 level short of the target.",
    )
    expect(en.formula.mixing.weaker({ ...weaker, shortByLevels: 0 })).toMatch(/processes faster\.$/)
  })
})
