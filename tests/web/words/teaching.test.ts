import { describe, expect, it } from "vitest"
import type { StepLineCode, StepTitleCode } from "../../../web/core/teaching/stepLines"
import type {
  AimCode,
  SelfCheckCode,
  TeachingTimeCode,
  ToolCode,
} from "../../../web/core/teaching/teachingPlan"
import { say } from "../../../web/words/say"
import { isSentence, type SamplesOf, samplesOf } from "../../support/sentences"
import { en, everyLanguage } from "../../support/words"

const stitching = { stitchMm: 2, gapMm: 3, dipMm: 4 }

const aims: SamplesOf<AimCode> = {
  "nothing-drawn": { code: "nothing-drawn" },
  brighten: {
    code: "brighten",
    places: ["hairline", "back"],
    foils: 3,
    pieces: [
      { kind: "slice", direction: "parallel to hairline", isOne: false },
      { kind: "backcomb", direction: "diagonal back", isOne: true },
    ],
  },
  leave: { code: "leave", names: ["", "baby hairs"] },
}
const tools: SamplesOf<ToolCode> = {
  comb: { code: "comb" },
  "section-clips": { code: "section-clips", count: 4 },
  clips: { code: "clips", low: 4, high: 6 },
  carriers: { code: "carriers", carrier: "board", count: 1, widthMm: 100, lengthMm: 250 },
  mix: { code: "mix", mix: "A", form: null, developerVolume: 20, ratio: { lightener: 1, developer: 2 } },
  bowls: { code: "bowls", count: 2 },
  keeping: { code: "keeping" },
  minding: { code: "minding", piece: "foil" },
}
const times: SamplesOf<TeachingTimeCode> = {
  "first-check": { code: "first-check", firstMin: 10, delicateMin: 5, everyMin: 5, piece: "foil" },
  "max-time": { code: "max-time", mix: "A", maxMin: 50, isFromSheet: false, firstCheckMin: 10 },
  "each-foil": { code: "each-foil", piece: "panel" },
  "learner-pace": { code: "learner-pace", lowMin: 3, highMin: 4, foils: 9 },
}
const checks: SamplesOf<SelfCheckCode> = {
  "see-through": { code: "see-through", slices: [1, 2] },
  "even-stitches": { code: "even-stitches", stitchMm: 2, gapMm: 3, weave: 4 },
  "cushion-dry": { code: "cushion-dry" },
  "product-start": { code: "product-start", rootMm: 3 },
  "both-faces": { code: "both-faces" },
  "left-out-dry": { code: "left-out-dry", names: [""] },
  "sides-match": { code: "sides-match" },
  "minutes-noted": { code: "minutes-noted", piece: "both" },
  "foils-sound": { code: "foils-sound" },
}
const titles: SamplesOf<StepTitleCode> = {
  "leave-out": { code: "leave-out", name: "", isPair: true, side: "left" },
  foils: { code: "foils", kind: "weave", numbers: [1, 2], isPair: false, side: "centre" },
}
const lines: SamplesOf<StepLineCode> = {
  part: {
    code: "part",
    run: {
      from: { landmark: "centre front", behindMm: 5 },
      to: { landmark: "temple", behindMm: 15 },
      isEven: false,
      isAcross: false,
    },
    direction: { name: "diagonal back", degrees: 38 },
    partingMm: 60,
    taken: "front",
    depthMm: { start: 2, end: 4 },
    rows: 3,
    gapMm: 4,
  },
  leave: { code: "leave" },
  hold: { code: "hold", elevationDeg: 90, overDirectionDeg: 10 },
  take: {
    code: "take",
    stitching,
    isSeenThrough: false,
    pushed: { share: 0.5, leastStrokes: 2, mostStrokes: 4, cushionMm: 20 },
  },
  place: {
    code: "place",
    carrier: "foil",
    count: 2,
    widthMm: 100,
    lengthMm: 250,
    isTight: true,
    lie: "toward-face",
  },
  product: {
    code: "product",
    coats: [{ part: "whole", mix: "B", rootsToMm: null }],
    startMm: 20,
    isPastCushion: true,
    fromShare: 0,
    toShare: 0.8,
    faces: 1,
  },
  paint: {
    code: "paint",
    mix: "A",
    edge: "v",
    highShare: 0.35,
    lowShare: 0.55,
    toShare: 1,
    featherMm: 40,
    faces: 1,
  },
  "keep-moist": { code: "keep-moist", isUnderFilm: false },
  "other-side": { code: "other-side", isEachRow: true },
}

describe.each(everyLanguage)("teaching in %s", (_, words) => {
  it("has a sentence for every code", () => {
    const { aim, tools: tool, times: time, checks: check, stepTitles, stepLines, faults } = words.teaching
    const said = [
      ...samplesOf(aims).map((each) => say(aim, each)),
      ...samplesOf(tools).map((each) => say(tool, each)),
      ...samplesOf(times).map((each) => say(time, each)),
      ...samplesOf(checks).map((each) => say(check, each)),
      ...samplesOf(titles).map((each) => say(stepTitles, each)),
      ...samplesOf(lines).map((each) => say(stepLines, each)),
      ...samplesOf(lines).map((each) => words.teaching.stepLabels(each)),
      ...Object.values(faults).flatMap(({ fault, cause, cure }) => [fault, cause, cure]),
    ]
    expect(said.filter((each) => !isSentence(each))).toEqual([])
  })
})

describe("teaching in English", () => {
  it("tells where product starts past a cushion, in mm as well", () => {
    expect(say(en.teaching.stepLines, lines.product)).toBe(
      "Mix B, from past the cushion (20 mm off the scalp) to 80% of the length, one side of the strand.",
    )
  })
  it("tells how a panel is painted, from its edge down, and that it must stay moist", () => {
    expect(say(en.teaching.stepLines, lines.paint)).toBe(
      "Lay the panel flat on your hand or a board. Mix A, the upper side only: an edge in a V from 35% of the length down to 55%, painted to the ends. Feather the first 40 mm: thin at the edge, then fuller; below that a full coat.",
    )
    expect(say(en.teaching.stepLines, lines["keep-moist"])).toContain("only while moist")
  })
  it("tells both depths of a wedge", () => {
    expect(say(en.teaching.stepLines, lines.part)).toBe(
      "From 5 mm behind the centre front to 15 mm behind the temple; diagonal back 38°, 60 mm long. Take 2 mm at the start, 4 mm at the end, in front of it. 3 rows, one behind the other, leaving 4 mm between.",
    )
  })
})
