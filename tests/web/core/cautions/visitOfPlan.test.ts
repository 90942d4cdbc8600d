import { describe, expect, it } from "vitest"
import { runCommand } from "../../../../web/command/command"
import { stopsWords } from "../../../../web/core/cautions/stopsWords"
import { checkPlan, visitOf } from "../../../../web/core/cautions/visitOfPlan"
import type { Consultation } from "../../../../web/core/document/consultation"
import { setConsultation } from "../../../../web/core/edits/plan/setConsultation"
import { setMix } from "../../../../web/core/edits/plan/setMix"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { done } from "../../../support/samples"

const now = { moment: "2026-03-09T10:00:00+00:00", zone: "Europe/London" }
const asked = (change: Partial<Consultation>) => done(setConsultation(change), examplePlan())
const stopsOf = (change: Partial<Consultation>) => checkPlan(asked(change), now).stops.map(({ rule }) => rule)

describe("a plan as the rules see it", () => {
  it("tells each mix what its foils come near", () => {
    const [a, b] = visitOf(examplePlan(), now).mixes
    expect(a.sheet?.id).toBe("house-powder")
    expect(a.near.cushion).toBe(true) // the backcombed sections are mixed from A
    expect(b.near).toMatchObject({ hairline: true, cushion: false }) // the slices at the hairline from B
  })

  it("has no stop when nothing was asked, and says how much is not known", () => {
    const { stops, notKnown } = checkPlan(examplePlan(), now)
    expect(stops).toEqual([])
    expect(notKnown.length).toBeGreaterThan(10)
    expect(stopsWords(examplePlan(), now)).toBe("Stops: nothing has been asked yet.")
  })

  it("holds the mix on a past reaction, whatever reason is written", () => {
    const passes = [{ rule: "past-reaction", reason: "she insists", by: "M." }]
    expect(stopsOf({ answers: { pastReaction: "yes" } })).toContain("past-reaction")
    expect(stopsOf({ answers: { pastReaction: "yes" }, passes })).toContain("past-reaction")
    expect(stopsWords(asked({ answers: { pastReaction: "yes" } }), now)).toBe(
      "NOT CLEARED: a stop holds the mix.",
    )
  })

  it("prints who passed a stop and why, and holds nothing then", () => {
    const relaxed = { answers: { recentRelaxer: "yes" } } as const
    const [rule] = stopsOf(relaxed)
    const passed = asked({ ...relaxed, passes: [{ rule, reason: "letter seen", by: "M." }] })
    expect(checkPlan(passed, now).stops).toEqual([])
    expect(stopsWords(passed, now)).toMatch(/^Stops: none open; .* Passed by M\.: letter seen$/)
  })

  it("prints what is wrong with a mix: more than 20 vol at the hairline, which no reason passes", () => {
    const [, b] = examplePlan().mixes
    const passes = [{ rule: "hairline-strength", reason: "she wants it lighter", by: "M." }]
    const strong = done(setMix({ ...b, developerVolume: 30 }), asked({ passes }))
    expect(stopsWords(strong, now)).toBe(
      "NOT CLEARED: a stop holds the mix. Mix B is 30 vol at the hairline, where 20 vol is the most. Take 20 vol, or give the hairline a mix of its own.",
    )
  })

  it("tells no answer on the sheet", () => {
    for (const answers of [{ asthma: "yes" }, { breathingReaction: "yes" }, { allergy: "yes" }] as const)
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
    scalp: "calm",
    answers: { asthma: "no" },
    alertTests: [
      {
        product: "House toner (invented)",
        place: "behind the ear",
        appliedAt: "2026-03-06T10:00:00+00:00",
        result: { outcome: "clear", readBy: "M.", readAt: "2026-03-08T10:30:00+00:00" },
        validUntil: null,
        changedSince: "no",
      },
    ],
    strandTests: [{ product: "House powder (invented)", outcome: "held" }],
    passes: [{ rule: "contact-lenses", reason: "taken out", by: "M." }],
  }

  it("comes back as it was saved", () => {
    const opened = openPlan(savePlan(asked(full)))
    expect(opened.ok && opened.plan.consultation).toEqual(full)
  })

  it("names what cannot be in it", () => {
    const text = savePlan(asked(full)).replace('"ageYears": 34', '"ageYears": 340')
    const opened = openPlan(text)
    expect(opened.ok ? [] : opened.problems.map(({ expected }) => expected)).toEqual([
      "consultation, age: expected 1 to 120 years, found 340",
    ])
  })
})

describe("check", () => {
  const run = (text: string) =>
    runCommand(["check", "plan.json"], {
      readText: () => text,
      writeBytes: () => {},
      readFont: async () => new Uint8Array(),
    })

  it("exits 0 without a stop and 1 with one, its reason in words", async () => {
    const free = await run(savePlan(examplePlan()))
    expect([free.exit, JSON.parse(free.out).stops]).toEqual([0, []])
    const held = await run(savePlan(asked({ scalp: "broken" })))
    expect(held.exit).toBe(1)
    const [stop] = JSON.parse(held.out).stops
    expect(stop.why).toBeTruthy()
    expect(held.err).toContain(stop.why)
  })
})
