import { describe, expect, it } from "vitest"
import { emergencies } from "../../../presets/chair/emergencies"
import type { CallCode } from "../../../web/core/chair/callCode"
import type { ClockNote, TapNote } from "../../../web/core/document/serviceRecord"
import { chairSaid, type Said } from "../../../web/session/chair/chairSaid"
import { alarmWords } from "../../../web/words/en/chair/alarmWords"
import { type Coded, type Sentences, say } from "../../../web/words/say"
import { toolsOf } from "../../../web/words/tools"
import { everyLanguage } from "../../support/words"

type Samples<T extends Coded> = { [C in T["code"]]: Extract<T, { code: C }> }

const foils = [1, 2, 3, 5]
const calls: Samples<CallCode> = {
  "bowl-ahead": { code: "bowl-ahead", bowl: 1, mix: "B", inMs: 240_000 },
  "bowl-past": { code: "bowl-past", bowl: 1, mix: "B", byMs: 120_000 },
  "heat-ahead": { code: "heat-ahead", inMs: 30_000 },
  "heat-past": { code: "heat-past", byMs: 30_000 },
  "take-off": { code: "take-off", foils },
  "at-goal": { code: "at-goal", foils },
  "planned-ahead": { code: "planned-ahead", foils, inMs: 30_000 },
  "planned-off": { code: "planned-off", foils, byMs: 90_000 },
  "toner-ahead": { code: "toner-ahead", zone: "mids", inMs: 30_000 },
  "toner-off": { code: "toner-off", zone: "hairline", byMs: 5_000 },
  "toner-limit-ahead": { code: "toner-limit-ahead", zone: "mids", inMs: 30_000 },
  "toner-limit": { code: "toner-limit", zone: "root-melt", byMs: 5_000 },
  "limit-ahead": { code: "limit-ahead", foils: [3], inMs: 180_000 },
  "limit-past": { code: "limit-past", foils, byMs: 60_000 },
  "check-ahead": { code: "check-ahead", foils, inMs: 15_000 },
  "roots-ahead": { code: "roots-ahead", foils: [3], mix: "B", inMs: 15_000 },
  "roots-now": { code: "roots-now", foils: [3], mix: "B", byMs: 75_000 },
  "check-now": { code: "check-now", foils },
  "check-late": { code: "check-late", foils, byMs: 120_000 },
}
type Refusal = Exclude<Said, TapNote | ClockNote>
const refusals: Samples<Refusal> = {
  "changed-in-another-window": { code: "changed-in-another-window" },
  "held-in-another-window": { code: "held-in-another-window" },
  "nothing-to-undo": { code: "nothing-to-undo" },
  "no-such-foil": { code: "no-such-foil" },
  "off-since": { code: "off-since", foil: 2, atMin: 20 },
  "on-since": { code: "on-since", foil: 2, atMin: 2.25 },
  "never-on": { code: "never-on", foil: 2 },
  "no-later-roots": { code: "no-later-roots", foil: 2 },
  "roots-on-since": { code: "roots-on-since", foil: 2, atMin: 19.5 },
  "heat-never-on": { code: "heat-never-on" },
  "no-heat-planned": { code: "no-heat-planned" },
  "toner-over": { code: "toner-over", zone: "mids" },
  "toner-on-since": { code: "toner-on-since", zone: "mids", atMin: 70 },
  "toner-never-on": { code: "toner-never-on", zone: "mids" },
  "second-tap": { code: "second-tap" },
  "heat-once": { code: "heat-once", state: "on", atMin: 3 },
}
const notes: Samples<TapNote> = {
  "counts-from-earliest": { code: "counts-from-earliest", foil: 1, fromMin: 0 },
  "counts-from-now": { code: "counts-from-now", foil: 2, fromMin: 2 },
  "in-words": { code: "in-words", words: "As it was written." },
}
const clockNotes: Samples<ClockNote> = {
  "clock-set-back": { code: "clock-set-back", byMs: 7_200_000 },
  "slept-or-set-forward": { code: "slept-or-set-forward", byMs: 40_000 },
  "set-back-while-closed": { code: "set-back-while-closed", byMs: 90_000 },
  "in-words": { code: "in-words", words: "As it was written." },
}

const isWhole = (sentence: string) => sentence.trim() !== "" && !/undefined|NaN|\[object/.test(sentence)

function said<T extends Coded>(sentences: Sentences<T>, samples: Samples<T>): string[] {
  return (Object.values(samples) as T[]).map((sample) => say(sentences, sample))
}

const ofPanels = (samples: Samples<CallCode>) =>
  Object.fromEntries(
    Object.entries(samples).map(([code, call]) => [
      code,
      { ...call, ...("foils" in call && { piece: "panel" }) },
    ]),
  ) as Samples<CallCode>

describe.each(everyLanguage)("the words of the chair in %s", (_, { chair }) => {
  it("say every call, refusal and note", () => {
    const all = [
      ...said(chair.calls.shown, calls),
      ...said(chair.calls.spoken, calls),
      ...said(chair.refusals, refusals),
      ...said(chair.notes, notes),
      ...said(chair.clockNotes, clockNotes),
    ]
    expect(all.filter((sentence) => !isWhole(sentence))).toEqual([])
  })
  it("name in a refusal or note only buttons that the chair has", () => {
    const { bar, floor, elsewhere, calls } = chair
    const toners = Object.values(calls.toners).map((toner) => floor.tonerOn(toner))
    const buttons = [
      bar.undo,
      elsewhere.takeOver,
      floor.wentOnEarlier,
      floor.heatOn,
      floor.off,
      floor.rinseNow,
    ]
    const sentences = [
      ...said(chair.refusals, refusals),
      ...said(chair.notes, notes),
      ...[[1], [1, 2]].map((foils) => chair.stillOn(foils)),
    ].join(" ")
    const named = [...sentences.matchAll(/[“„«]\u00a0?(.+?)\u00a0?[”“»]/g)].map(([, inner]) => inner)
    expect(new Set(named)).toEqual(new Set([...buttons, toners[1]]))
  })
  it("speak of no foil where all that was placed are painted panels", () => {
    const panels = [{ id: "p", mapNumber: 2, limitMin: 45, firstLookMin: 10, kind: "painted" as const }]
    const tapped: Said[] = [
      ...Object.values(refusals),
      ...Object.values(notes),
      ...Object.values(clockNotes),
    ].map((each) => ("foil" in each ? { ...each, foil: 2 } : each))
    const all = [
      ...tapped.map((each) => chairSaid([each], chair, panels)),
      ...said(chair.calls.shown, ofPanels(calls)),
      ...said(chair.calls.spoken, ofPanels(calls)),
      chair.stillOn([2], "panel"),
      alarmWords({ what: "faint", step: "end" }, [2], chair.emergencies, "panel"),
    ]
    expect(all.filter((sentence) => /foil|folie|papel|papillote|фольг/i.test(sentence))).toEqual([])
  })
  it("say every step of every emergency, and name no source", () => {
    for (const { name, steps } of emergencies)
      for (const step of [undefined, ...steps]) {
        const line = alarmWords({ what: name, step }, [3], chair.emergencies)
        expect(isWhole(line)).toBe(true)
        expect(line).not.toMatch(/et al|\d{4};|source/i)
      }
  })
})

it("writes a clock and joins numbers that follow each other", () => {
  const { clock, runs } = toolsOf("en-GB")
  expect([0, 5_900, 725_000].map(clock)).toEqual(["0:00", "0:05", "12:05"])
  expect(runs([9, 1, 2, 3, 5, 6, 8], (from, to) => `${from} to ${to}`)).toBe("9, 1 to 3, 5, 6, 8")
})
