import { describe, expect, test } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { checkVisit, holding, notKnown, rules } from "../../../../web/core/cautions/cautions"
import type { PlannedMix, Visit } from "../../../../web/core/cautions/rules/rule"
import {
  type AlertTest,
  type Consultation,
  type HairState,
  newConsultation,
} from "../../../../web/core/document/consultation"

const [powder, , cream, toner, rootShade] = houseProducts
const now = { moment: "2026-06-10T10:00:00Z", zone: "Europe/London" }

const mix = (change: Partial<PlannedMix> = {}): PlannedMix => {
  const sheet = change.sheet === undefined ? { ...powder, alertTest: false } : change.sheet
  return {
    id: "A",
    name: `Mix ${change.id ?? "A"}`,
    product: sheet?.name ?? "Something on the shelf",
    sheet,
    developerVolume: 20,
    ratio: { lightener: 1, developer: 2 },
    heatMin: 0,
    near: { hairline: false, scalp: false, cushion: false },
    ...change,
  }
}
const visit = (consultation: Partial<Consultation> = {}, ...mixes: PlannedMix[]): Visit => ({
  consultation: {
    ...newConsultation(),
    ageYears: 34,
    scalp: "calm",
    answers: { breathingReaction: "no" },
    ...consultation,
  },
  mixes: mixes.length > 0 ? mixes : [mix()],
  now,
})
const hair = (change: Partial<HairState>): Consultation["hair"] => ({
  top: { ends: { level: 7, history: [], porosity: "usual", stretch: "springs-back", ...change } },
})
const stopsOf = (found: Visit) => checkVisit(found).stops.map(({ rule }) => rule)
const cautionsOf = (found: Visit) => checkVisit(found).cautions.map(({ rule }) => rule)
const clearTest: AlertTest = {
  product: toner.name,
  place: "behind the ear",
  appliedAt: "2026-06-01T10:00:00Z",
  result: { outcome: "clear", readBy: "J", readAt: "2026-06-03T10:00:00Z" },
  validUntil: null,
  changedSince: "no",
}
const tonerMix = mix({ id: "T", sheet: toner, developerVolume: 10, ratio: { lightener: 1, developer: 2 } })

test("calm scalp, untreated hair, plain foils: nothing holds and nothing is said", () => {
  expect(checkVisit(visit())).toMatchObject({ stops: [], cautions: [] })
})

const atHairline = { hairline: true, scalp: false, cushion: false }

/** The cases that no reason may pass. */
const final: [string, Visit][] = [
  ["under-16", visit({ ageYears: 15 })],
  ["past-reaction", visit({ answers: { breathingReaction: "no", pastReaction: "yes" } })],
  ["past-reaction", visit({ answers: { breathingReaction: "no", blackHennaReaction: "yes" } })],
  [
    "past-reaction",
    visit({
      alertTests: [
        { ...clearTest, result: { outcome: "reacted", readBy: "J", readAt: "2026-06-02T10:00:00Z" } },
      ],
    }),
  ],
  ["breathing-reaction", visit({ answers: { breathingReaction: "yes" } })],
  ["breathing-reaction", visit({ answers: { breathingReaction: "no", colouristBreathing: "yes" } })],
  ["scalp", visit({ scalp: "broken" })],
  ["scalp", visit({ scalp: "irritated" })],
  ["metallic-salts", visit({ hair: hair({ history: ["metallic-salts"] }) })],
  ["strand-test-failed", visit({ strandTests: [{ product: powder.name, outcome: "failed" }] })],
  ["over-stretched", visit({ hair: hair({ stretch: "stays-stretched" }) })],
  ["over-stretched", visit({ hair: hair({ stretch: "breaks" }) })],
  [
    "over-legal-limit",
    visit({}, mix({ sheet: null, developerVolume: 60, ratio: { lightener: 1, developer: 3 } })),
  ],
  ["hairline-strength", visit({}, mix({ developerVolume: 21, near: atHairline }))],
  ["hairline-strength", visit({}, mix({ developerVolume: 40, near: atHairline }))],
]

describe("stops that nothing passes", () => {
  test.each(final)("%s", (rule, found) => {
    const passed = { ...found.consultation, passes: [{ rule, reason: "The client insists.", by: "J" }] }
    expect(stopsOf(found)).toContain(rule)
    expect(stopsOf({ ...found, consultation: passed })).toContain(rule)
  })

  test("they are these and no others", () => {
    const unpassable = rules.filter(({ passable }) => !passable).map(({ rule }) => rule)
    expect(new Set(unpassable)).toEqual(new Set(final.map(([rule]) => rule)))
  })

  test("16 is old enough; 12 % on the head is lawful", () => {
    expect(stopsOf(visit({ ageYears: 16 }))).toEqual([])
    expect(stopsOf(visit({}, mix({ sheet: null, developerVolume: 40 })))).toEqual(["strong-developer"])
  })
})

/** Stops that a written reason passes. */
const passable: [string, Visit][] = [
  ["sensitive-scalp", visit({ scalp: "sensitive" })],
  ["face-rash", visit({ answers: { breathingReaction: "no", faceRash: "yes" } })],
  ["alert-test", visit({}, tonerMix)],
  ["asthma", visit({ answers: { breathingReaction: "no", asthma: "yes" } })],
  ["allergy", visit({ answers: { breathingReaction: "no", allergy: "yes" } })],
  ["strong-developer", visit({}, mix({ developerVolume: 40 }))],
  ["expecting", visit({ answers: { breathingReaction: "no", expecting: "yes" } })],
  ["scalp-condition", visit({ answers: { breathingReaction: "no", scalpCondition: "yes" } })],
  ["chemotherapy", visit({ answers: { breathingReaction: "no", chemotherapy: "yes" } })],
  ["henna", visit({ hair: hair({ history: ["henna"] }) })],
  ["recent-relaxer", visit({ answers: { breathingReaction: "no", recentRelaxer: "yes" } })],
  ["developer-not-on-sheet", visit({}, mix({ sheet: { ...cream, alertTest: false }, developerVolume: 30 }))],
  ["ratio-not-on-sheet", visit({}, mix({ ratio: { lightener: 1, developer: 3 } }))],
  ["off-scalp-product", visit({}, mix({ near: { hairline: false, scalp: true, cushion: false } }))],
  ["heat", visit({}, mix({ heatMin: 15 }))],
]

describe("a pass", () => {
  const passed = (found: Visit, passes: Visit["consultation"]["passes"]): Visit => ({
    ...found,
    consultation: { ...found.consultation, passes },
  })
  const reason = { reason: "Asked on Monday.", by: "J" }

  test("of one answer passes no other", () => {
    const both = visit({ answers: { breathingReaction: "no", expecting: "yes", chemotherapy: "yes" } })
    expect(stopsOf(passed(both, [{ rule: "expecting", ...reason }]))).toEqual(["chemotherapy"])
  })

  test("of a product or a strength ends with it", () => {
    const of = (found: Visit) => checkVisit(found).stops[0].about ?? ""
    const toned = visit({}, tonerMix)
    const tonerPass = { rule: "alert-test", mix: tonerMix.id, about: of(toned), ...reason }
    expect(stopsOf(passed(toned, [tonerPass]))).toEqual([])
    expect(stopsOf(passed(visit({}, { ...tonerMix, product: "Other toner" }), [tonerPass]))).toEqual([
      "alert-test",
    ])

    const strong = visit({}, mix({ sheet: null, developerVolume: 35 }))
    const strengthPass = { rule: "strong-developer", mix: strong.mixes[0].id, about: of(strong), ...reason }
    expect(stopsOf(passed(strong, [strengthPass]))).toEqual([])
    const stronger = visit({}, mix({ sheet: null, developerVolume: 40 }))
    expect(stopsOf(passed(stronger, [strengthPass]))).toEqual(["strong-developer"])
  })

  test("is asked for once where two mixes lack the same test", () => {
    const found = visit({}, tonerMix, { ...tonerMix, id: "root-shade", name: "The root shade" })
    expect(checkVisit(found).stops).toEqual([
      expect.objectContaining({ rule: "alert-test", mixes: [tonerMix.id, "root-shade"] }),
    ])
  })
})

describe("stops that a written reason passes", () => {
  test.each(passable)("%s", (rule, found) => {
    const withPass = (reason: string, by: string) => ({
      ...found,
      consultation: { ...found.consultation, passes: [{ rule, reason, by }] },
    })
    expect(stopsOf(found)).toEqual([rule])
    expect(stopsOf(withPass(" ", "J"))).toEqual([rule])
    expect(stopsOf(withPass("Asked her doctor on Monday.", ""))).toEqual([rule])
    const passed = checkVisit(withPass("Asked her doctor on Monday.", "J"))
    expect(passed.stops).toEqual([])
    expect(passed.cautions).toContainEqual(
      expect.objectContaining({ rule, severity: "stop", pass: expect.objectContaining({ by: "J" }) }),
    )
  })
})

test("a stop passed for one mix still holds another", () => {
  const strong = (id: string) => mix({ id, developerVolume: 40 })
  const passes = [{ rule: "strong-developer", reason: "Coarse hair, strand test seen.", by: "J", mix: "A" }]
  const { stops, cautions } = checkVisit(visit({ passes }, strong("A"), strong("B")))
  expect(stops.map(({ mixes }) => mixes)).toEqual([["B"]])
  expect(cautions.map(({ mixes }) => mixes)).toEqual([["A"]])
  expect([holding(stops, "A"), holding(stops, "B")].map(({ length }) => length)).toEqual([0, 1])
})

test("asthma holds a lightener, and a toner alone not", () => {
  const answers = { breathingReaction: "no", asthma: "yes" } as const
  expect(stopsOf(visit({ answers, alertTests: [clearTest] }, tonerMix))).toEqual([])
})

describe("the alert test", () => {
  test("is asked of toner and root shade, whatever else is mixed", () => {
    const rootMix = mix({ id: "R", sheet: rootShade, ratio: { lightener: 1, developer: 1.5 } })
    const { stops } = checkVisit(visit({}, mix(), tonerMix, rootMix))
    expect(stops.map(({ rule, mixes }) => [rule, mixes])).toEqual([
      ["alert-test", ["T"]],
      ["alert-test", ["R"]],
    ])
  })

  test("is asked of a lightener whose sheet asks, and of no other", () => {
    expect(stopsOf(visit({}, mix({ sheet: cream })))).toEqual(["alert-test"])
    expect(stopsOf(visit({}, mix({ sheet: powder })))).toEqual([])
    expect(cautionsOf(visit({}, mix({ sheet: powder })))).toEqual(["sheet-silent"])
  })

  test("read clear, it lets the toner pass", () => {
    expect(stopsOf(visit({ alertTests: [clearTest] }, mix(), tonerMix))).toEqual([])
  })

  test("a test of one product says nothing of another", () => {
    const other = { ...clearTest, product: rootShade.name }
    expect(stopsOf(visit({ alertTests: [other] }, tonerMix))).toEqual(["alert-test"])
  })
})

describe("cautions", () => {
  test.each<[string, Visit]>([
    ["ask-about-breathing", visit({ answers: {} })],
    ["black-henna", visit({ answers: { breathingReaction: "no", blackHennaTattoo: "yes" } })],
    ["changed-since-test", visit({ alertTests: [{ ...clearTest, changedSince: null }] })],
    ["hairline-loss", visit({ answers: { breathingReaction: "no", hairlineLoss: "yes" } })],
    ["eyes", visit({ answers: { breathingReaction: "no", lenses: "yes" } })],
    ["strand-test-first", visit({ hair: hair({ history: ["coloured"] }) })],
    ["porous", visit({ hair: hair({ porosity: "high" }) })],
    [
      "overlap",
      visit({
        hair: hair({ history: ["lightened"] }),
        strandTests: [{ product: powder.name, outcome: "held" }],
      }),
    ],
    ["heat-place", visit({}, mix({ heatMin: 10, developerVolume: 30 }))],
    ["heat-place", visit({}, mix({ heatMin: 5, near: { hairline: false, scalp: false, cushion: true } }))],
    ["no-sheet", visit({}, mix({ sheet: null }))],
    ["sheet-silent", visit({}, mix({ sheet: { ...powder, alertTest: false, longestMin: null } }))],
  ])("%s", (rule, found) => {
    expect(stopsOf(found)).toEqual([])
    expect(cautionsOf(found)).toEqual([rule])
  })

  test("20 vol at the hairline and 30 elsewhere are not remarked on; 25 vol is a blend of two that are listed", () => {
    expect(cautionsOf(visit({}, mix({ near: atHairline }), mix({ id: "B", developerVolume: 30 })))).toEqual(
      [],
    )
    expect(stopsOf(visit({}, mix({ developerVolume: 25 })))).toEqual([])
  })
})

describe("every row", () => {
  test("has a name of its own and a source; words of the product keep off promises", () => {
    expect(new Set(rules.map(({ rule }) => rule)).size).toBe(rules.length)
    expect(rules.every(({ source }) => source.length > 3)).toBe(true)
    const said = [...final, ...passable].flatMap(([, found]) => {
      const { stops, cautions } = checkVisit(found)
      return [...stops, ...cautions].map(({ why }) => why)
    })
    for (const why of said) expect(why).not.toMatch(/\bsafe|guarantee|no damage|NaN|undefined|null/i)
  })
})

test("what is not known is listed in the words of the screen", () => {
  const nothing = notKnown(newConsultation())
  expect(nothing).toContain("The scalp")
  expect(nothing).toContain("Asthma?")
  expect(nothing).toContain("Porosity")
  const ends = { ...newConsultation(), hair: hair({}) }
  expect(notKnown(ends)).toContain("Porosity: roots, mid-lengths")
  expect(nothing).not.toContain("Did the black henna burn, itch or blister?")
  const tattooed = { ...newConsultation(), answers: { blackHennaTattoo: "yes" } as const }
  expect(notKnown(tattooed)).toContain("Did the black henna burn, itch or blister?")
})
