import { describe, expect, it } from "vitest"
import { runCommand } from "../../../../web/command/command"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import { publicStops } from "../../../../web/core/cautions/publicStops"
import { checkPlan, visitOf } from "../../../../web/core/cautions/visitOfPlan"
import type { Consultation, Question } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { answersOn, askedAll } from "../../../support/answers"
import { done } from "../../../support/samples"
import { en } from "../../../support/words"

const now = { moment: "2026-03-09T10:00:00+00:00", zone: "Europe/London" }
const on = (name: Question, said: "yes" | "no") => answersOn("2026-03-09", { [name]: said })
const asked = (change: Partial<Consultation>) => done(setConsultation(change), examplePlan())
const stopsWords = (plan: Plan, at: typeof now) => en.cautions.onSheet.stops(publicStops(plan, at))
const stopsOf = (change: Partial<Consultation>) => checkPlan(asked(change), now).stops.map(({ rule }) => rule)

describe("a plan as the rules see it", () => {
  it("tells each mix what its foils come near", () => {
    const [a, b] = visitOf(examplePlan(), now).mixes
    expect(a.sheet?.id).toBe("house-powder")
    expect(a.near.cushion).toBe(true) // the backcombed sections are mixed from A
    expect(b.near).toMatchObject({ hairline: true, cushion: false }) // the slices at the hairline from B
  })

  it("is not cleared when nothing was asked, and says how much was not", () => {
    const { stops, notAsked } = checkPlan(examplePlan(), now)
    expect(stops).toEqual([])
    expect(notAsked).toHaveLength(23)
    expect(stopsWords(examplePlan(), now)).toBe(
      "NOT CLEARED: health not asked. 23 things have not been asked.",
    )
  })

  it("holds the mix on a past reaction, whatever reason is written", () => {
    const passes = [{ rule: "past-reaction", reason: "she insists", by: "M.", visit: "2026-03-09" }]
    expect(stopsOf({ answers: on("pastReaction", "yes") })).toContain("past-reaction")
    expect(stopsOf({ answers: on("pastReaction", "yes"), passes })).toContain("past-reaction")
    expect(stopsWords(asked({ answers: on("pastReaction", "yes") }), now)).toBe(
      "NOT CLEARED: DO NOT MIX. 1 stop is open.",
    )
  })

  it("prints who passed a stop and why, and holds nothing then", () => {
    const relaxed = { answers: on("recentRelaxer", "yes") }
    const [rule] = stopsOf(relaxed)
    const passed = asked({
      ...relaxed,
      passes: [{ rule, reason: "letter seen", by: "M.", visit: "2026-03-09" }],
    })
    expect(checkPlan(passed, now).stops).toEqual([])
    expect(stopsWords(passed, now)).toMatch(
      /^NOT CLEARED: health not asked\. \d+ things have not been asked\. “Recent relaxer or perm” overridden by M\.: letter seen$/,
    )
  })

  it("prints what is wrong with a mix: more than 20 vol at the hairline", () => {
    const [, b] = examplePlan().mixes
    const strong = done(setMix({ ...b, developerVolume: 30 }), asked({}))
    expect(stopsWords(strong, now)).toBe(
      "NOT CLEARED: DO NOT MIX. 1 stop is open. Mix B is 30 vol at the hairline; 20 vol is the most used there (common practice). Use 20 vol or a separate mix.",
    )
  })

  it("tells no answer on the sheet", () => {
    for (const answers of [on("asthma", "yes"), on("breathingReaction", "yes"), on("otherAllergy", "yes")])
      expect(stopsWords(asked({ answers }), now)).not.toMatch(/asthma|wheez|breath|allerg/i)
  })
})

describe("a consultation in a plan's file", () => {
  const full: Consultation = {
    hair: { hairline: { roots: { level: 7, history: [], porosity: "high", stretch: "springs-back" } } },
    greyShare: 0.2,
    liftToLevel: 9,
    finish: "cool",
    brightest: ["hairline"],
    rootDistanceMm: 5,
    rootMeltMm: 25,
    upkeepWeeks: 10,
    ageYears: 34,
    askedBy: "M.",
    scalp: { seen: "calm", on: "2026-03-09" },
    answers: on("asthma", "no"),
    alertTests: [
      {
        product: "House toner (invented)",
        place: "behind the ear",
        appliedAt: "2026-03-06T10:00:00+00:00",
        result: { outcome: "clear", readBy: "M.", readAt: "2026-03-08T10:30:00+00:00" },
        validUntil: null,
        visit: "2026-03-09",
        changedSince: { said: "no", on: "2026-03-09" },
      },
    ],
    strandTests: [{ product: "House powder (invented)", outcome: "held" }],
    passes: [{ rule: "henna", reason: "cut hair tested", by: "M.", visit: "2026-03-09" }],
    otherAllergy: { which: "nickel", when: "since 2010", how: "itch" },
    blackHennaOn: "2019-07-01",
    letters: [{ rule: "asthma", from: "Dr A.", dated: "2026-03-01", visit: "2026-03-09" }],
    signatures: [{ by: "M.", at: "2026-03-09T10:00:00+00:00", questions: ["asthma"] }],
    withdrawn: [
      { rule: "past-reaction", about: "House toner (invented)", at: "2026-03-09T10:00:00+00:00", by: "M." },
    ],
  }

  it("comes back as it was saved", () => {
    const opened = openPlan(savePlan(asked(full)))
    expect(opened.ok && opened.plan.consultation).toEqual(full)
  })

  it("names what cannot be in it", () => {
    const text = savePlan(asked(full)).replace('"ageYears": 34', '"ageYears": 340')
    const opened = openPlan(text)
    expect(opened.ok ? [] : opened.problems.map(en.problems.clause)).toEqual([
      "consultation, age: expected 1 to 120 years, found 340",
    ])
  })
})

describe("what a plan is cleared by", () => {
  const test = {
    product: "House toner (invented)",
    place: "behind the ear",
    appliedAt: "2026-03-06T09:00:00Z",
    result: { outcome: "clear" as const, readBy: "M.", readAt: "2026-03-08T10:00:00Z" },
    validUntil: null,
    visit: "2026-03-09",
    changedSince: { said: "no" as const, on: "2026-03-09" },
  }
  const tests = (...alertTests: Consultation["alertTests"]) =>
    clearanceOf({ ...asked({ alertTests }), date: "2026-03-09" }, now).by.tests

  it("counts the tests that count today, and no old one", () => {
    expect(tests(test)).toBe(1)
    const readAt = "2019-03-08T10:00:00Z"
    const old = { ...test, appliedAt: "2019-03-06T09:00:00Z", result: { ...test.result, readAt } }
    expect(tests(old)).toBe(0)
    expect(tests(test, old)).toBe(1)
  })
})

describe("check", () => {
  const run = (text: string) =>
    runCommand(["check", "plan.json"], {
      readText: () => text,
      writeBytes: () => {},
      readFont: async () => new Uint8Array(),
    })

  it("exits 3 for what was not asked, 1 for a stop, 0 when cleared, each told in a sentence", async () => {
    const open = await run(savePlan({ ...examplePlan(), consultation: undefined }))
    expect([open.exit, JSON.parse(open.out).clearance.state]).toEqual([3, "not-asked"])
    expect(open.err).toMatch(/^NOT CLEARED: 23 things have not been asked yet\.$/m)

    const held = await run(savePlan(asked({ scalp: { seen: "broken", on: "2026-03-09" } })))
    expect([held.exit, JSON.parse(held.out).clearance.state]).toEqual([1, "stop"])
    const [stop] = JSON.parse(held.out).stops
    expect(stop.why).toBeTruthy()
    expect(held.err).toContain(stop.why)

    const today = new Date().toLocaleDateString("sv-SE")
    const cleared = await run(savePlan({ ...examplePlan(), date: today, consultation: askedAll(today) }))
    expect([cleared.exit, JSON.parse(cleared.out).clearance.state]).toEqual([0, "cleared"])
    expect(cleared.err).toMatch(/^Cleared on .* \(asked by M\.\) by 22 answers\.$/m)
  })
})
