import { describe, expect, test } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { notAsked, notKnown } from "../../../../web/core/cautions/asking/notAsked"
import {
  checkVisit,
  heatOverridden,
  holding,
  type RuleName,
  rules,
} from "../../../../web/core/cautions/cautions"
import type { PlannedMix, Visit } from "../../../../web/core/cautions/rules/rule"
import {
  type AlertTest,
  type Consultation,
  type HairState,
  newConsultation,
  type Question,
} from "../../../../web/core/document/consultation"
import { say } from "../../../../web/words/say"
import { answersOn, askedAll } from "../../../support/answers"
import { en } from "../../../support/words"

const [powder, , cream, toner, rootShade] = houseProducts
const today = "2026-06-10"
const now = { moment: "2026-06-10T10:00:00Z", zone: "Europe/London" }

const mix = (change: Partial<PlannedMix> = {}): PlannedMix => {
  const sheet = change.sheet === undefined ? { ...powder, alertTest: false } : change.sheet
  return {
    id: "A",
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
  standing: [],
  consultation: {
    ...newConsultation(),
    ageYears: 34,
    scalp: { seen: "calm", on: today },
    ...consultation,
  },
  mixes: mixes.length > 0 ? mixes : [mix()],
  twice: [],
  now,
  days: { today, visit: today },
})
const hair = (change: Partial<HairState>): Consultation["hair"] => ({
  top: { ends: { level: 7, history: [], porosity: "usual", stretch: "springs-back", ...change } },
})
const yes = (...names: Question[]) => answersOn(today, Object.fromEntries(names.map((name) => [name, "yes"])))
const stopsOf = (found: Visit) => checkVisit(found).stops.map(({ rule }) => rule)
const cautionsOf = (found: Visit) => checkVisit(found).cautions.map(({ rule }) => rule)
const clearTest: AlertTest = {
  product: toner.name,
  place: "behind the ear",
  appliedAt: "2026-06-01T10:00:00Z",
  result: { outcome: "clear", readBy: "J", readAt: "2026-06-03T10:00:00Z" },
  validUntil: null,
  visit: today,
  changedSince: { said: "no", on: today },
}
const tonerMix = mix({ id: "T", sheet: toner, developerVolume: 10, ratio: { lightener: 1, developer: 2 } })

test("calm scalp, untreated hair, plain foils: nothing holds and nothing is said", () => {
  expect(checkVisit(visit())).toMatchObject({ stops: [], cautions: [] })
})

const atHairline = { hairline: true, scalp: false, cushion: false }

/** The cases that no reason may pass. */
const final: [RuleName, Visit][] = [
  ["under-16", visit({ ageYears: 15 })],
  ["past-reaction", visit({ answers: yes("pastReaction") })],
  ["past-reaction", visit({ answers: yes("blackHennaReaction") })],
  [
    "past-reaction",
    visit({
      alertTests: [
        { ...clearTest, result: { outcome: "reacted", readBy: "J", readAt: "2026-06-02T10:00:00Z" } },
      ],
    }),
  ],
  ["breathing-reaction", visit({ answers: yes("breathingReaction") })],
  ["mixer-breathing", visit({ answers: yes("colouristBreathing") })],
  ["dye-allergy", visit({ answers: yes("dyeAllergy") })],
  ["scalp-today", visit({ answers: yes("scalpToday") })],
  ["sensitive-scalp", visit({ scalp: { seen: "sensitive", on: today } })],
  ["face-rash", visit({ answers: yes("faceRash") })],
  ["alert-test", visit({}, tonerMix)],
  ["developer-not-on-sheet", visit({}, mix({ sheet: { ...cream, alertTest: false }, developerVolume: 30 }))],
  ["ratio-not-on-sheet", visit({}, mix({ ratio: { lightener: 1, developer: 3 } }))],
  ["off-scalp-product", visit({}, mix({ near: { hairline: false, scalp: true, cushion: false } }))],
  ["heat", visit({}, mix({ heatMin: 15 }))],
  ["scalp", visit({ scalp: { seen: "broken", on: today } })],
  ["scalp", visit({ scalp: { seen: "irritated", on: today } })],
  ["metallic-salts", visit({ hair: hair({ history: ["metallic-salts"] }) })],
  ["strand-test-failed", visit({ strandTests: [{ product: powder.name, outcome: "failed" }] })],
  ["card-dye-allergy", { ...visit(), standing: [{ kind: "dye", to: "PPD", since: "" }] }],
  ["card-dye-allergy", { ...visit(), standing: [{ kind: "not-known", to: "", since: "" }] }],
  ["over-stretched", visit({ hair: hair({ stretch: "stays-stretched" }) })],
  ["over-stretched", visit({ hair: hair({ stretch: "breaks" }) })],
  [
    "over-legal-limit",
    visit({}, mix({ sheet: null, developerVolume: 60, ratio: { lightener: 1, developer: 3 } })),
  ],
]

/** What a doctor decides: no reason overrides it, a letter with its date answers it. */
const lettered: [RuleName, Visit][] = [
  ["asthma", visit({ answers: yes("asthma") })],
  ["expecting", visit({ answers: yes("expecting") })],
  ["scalp-condition", visit({ answers: yes("scalpCondition") })],
  ["medicines", visit({ answers: yes("medicines") })],
  ["chemotherapy", visit({ answers: yes("chemotherapy") })],
]

describe("stops that nothing overrides: the law, the maker’s directions, a doctor’s ground", () => {
  test.each([...final, ...lettered])("%s", (rule, found) => {
    const passed = {
      ...found.consultation,
      passes: [{ rule, reason: "The client insists.", by: "J", visit: today }],
    }
    expect(stopsOf(found)).toContain(rule)
    expect(stopsOf({ ...found, consultation: passed })).toContain(rule)
  })

  test("they are these and no others", () => {
    const stops = rules.filter(({ severity }) => severity === "stop")
    const unpassable = stops.filter(({ passable }) => !passable).map(({ rule }) => rule)
    expect(new Set(unpassable)).toEqual(new Set([...final, ...lettered].map(([rule]) => rule)))
    expect(stops.filter(({ passable, decides }) => passable !== (decides === "colourist"))).toEqual([])
    expect(new Set(stops.filter(({ letter }) => letter).map(({ rule }) => rule))).toEqual(
      new Set(lettered.map(([rule]) => rule)),
    )
  })

  test("16 is old enough; 12 % on the head is lawful", () => {
    expect(stopsOf(visit({ ageYears: 16 }))).toEqual([])
    expect(stopsOf(visit({}, mix({ sheet: null, developerVolume: 40 })))).toEqual(["strong-developer"])
  })
})

describe("a doctor’s letter", () => {
  const letter = { from: "Dr A.", dated: "2026-06-01", visit: today }
  const withLetter = (found: Visit, rule: RuleName, change: Partial<typeof letter> = {}): Visit => ({
    ...found,
    consultation: { ...found.consultation, letters: [{ rule, ...letter, ...change }] },
  })

  test.each(lettered)("answers %s for the visit it was entered for", (rule, found) => {
    expect(stopsOf(withLetter(found, rule))).toEqual([])
    expect(stopsOf(withLetter(found, rule, { visit: "2026-03-09" }))).toEqual([rule])
    expect(stopsOf(withLetter(found, rule, { dated: "2026-06-11" }))).toEqual([rule])
    expect(stopsOf(withLetter(found, rule, { from: " " }))).toEqual([rule])
  })

  test.each(final)("does not answer %s", (rule, found) => {
    expect(stopsOf(withLetter(found, rule))).toContain(rule)
  })
})

/** What the colourist decides, and a written reason overrides. */
const passable: [RuleName, Visit][] = [
  ["hairline-strength", visit({}, mix({ developerVolume: 21, near: atHairline }))],
  ["hairline-strength", visit({}, mix({ sheet: null, developerVolume: 40, near: atHairline }))],
  ["heat-place", visit({}, mix({ heatMin: 10, developerVolume: 30 }))],
  ["heat-place", visit({}, mix({ heatMin: 5, near: atHairline }))],
  ["heat-place", visit({}, mix({ heatMin: 5, near: { hairline: false, scalp: false, cushion: true } }))],
  ["heat-time", visit({}, mix({ heatMin: 15, sheet: { ...powder, alertTest: false, heatMin: 20 } }))],
  ["allergy", visit({ answers: yes("otherAllergy") })],
  ["card-allergy", { ...visit(), standing: [{ kind: "other", to: "nickel", since: "" }] }],
  ["strong-developer", visit({}, mix({ sheet: null, developerVolume: 40 }))],
  ["henna", visit({ hair: hair({ history: ["henna"] }) })],
  ["recent-relaxer", visit({ answers: yes("recentRelaxer") })],
  ["unknown-content", visit({ answers: yes("homeColour") })],
]

describe("a pass", () => {
  const passed = (found: Visit, passes: Visit["consultation"]["passes"]): Visit => ({
    ...found,
    consultation: { ...found.consultation, passes },
  })
  const reason = { reason: "Asked on Monday.", by: "J", visit: today }

  test("of one answer passes no other", () => {
    const both = visit({ answers: yes("recentRelaxer"), hair: hair({ history: ["henna"] }) })
    expect(stopsOf(passed(both, [{ rule: "henna", ...reason }]))).toEqual(["recent-relaxer"])
  })

  test("of an allergy or a strength ends with it", () => {
    const of = (found: Visit) => checkVisit(found).stops[0].about ?? ""
    const allergic = (which: string) =>
      visit({ answers: yes("otherAllergy"), otherAllergy: { which, when: "", how: "" } })
    const latexPass = { rule: "allergy", about: of(allergic("latex")), ...reason }
    expect(stopsOf(passed(allergic("latex"), [latexPass]))).toEqual([])
    expect(stopsOf(passed(allergic("nickel"), [latexPass]))).toEqual(["allergy"])

    const strong = visit({}, mix({ sheet: null, developerVolume: 35 }))
    const strengthPass = { rule: "strong-developer", mix: strong.mixes[0].id, about: of(strong), ...reason }
    expect(stopsOf(passed(strong, [strengthPass]))).toEqual([])
    const stronger = visit({}, mix({ sheet: null, developerVolume: 40 }))
    expect(stopsOf(passed(stronger, [strengthPass]))).toEqual(["strong-developer"])
  })

  test("counts for the visit it was written for alone, and stays what it was", () => {
    const found = visit({ answers: yes("recentRelaxer") })
    const on = (day: string) => ({ rule: "recent-relaxer", reason: "Seen.", by: "J", on: day, visit: day })
    const unknown = { rule: "recent-relaxer", reason: "Seen.", by: "J" }
    for (const day of ["2025-06-10", "2026-06-09", "2026-06-11", "2027-06-10"]) {
      const { stops } = checkVisit(passed(found, [on(day)]))
      expect(stops, day).toEqual([expect.objectContaining({ rule: "recent-relaxer", lapsed: on(day) })])
    }
    expect(checkVisit(passed(found, [unknown])).stops).toEqual([expect.objectContaining({ lapsed: unknown })])
    expect(stopsOf(passed(found, [on("2026-06-09"), on(today)]))).toEqual([])
  })

  test("written today for a later visit counts on its day, and not for one that is brought forward or put off", () => {
    const later = { today, visit: "2026-06-20" }
    const pass = { rule: "henna", reason: "Cut hair tested.", by: "J", on: today, visit: "2026-06-20" }
    const found = passed(visit({ hair: hair({ history: ["henna"] }) }), [pass])
    const rulesOf = (days: Visit["days"]) => stopsOf({ ...found, days })
    expect(rulesOf(later)).toEqual([])
    expect(rulesOf({ today: "2026-06-20", visit: "2026-06-20" })).toEqual([])
    for (const moved of ["2026-06-19", "2026-06-21"])
      expect(rulesOf({ today, visit: moved }), moved).toEqual(["henna"])
  })

  test("of heat holds for the clock too for its visit, and for no later one", () => {
    const hot = mix({ heatMin: 10, near: { hairline: true, scalp: false, cushion: false } })
    const found = visit({}, hot)
    const [{ about = "" }] = checkVisit(found).stops.filter(({ rule }) => rule === "heat-place")
    const { consultation } = passed(found, [{ rule: "heat-place", about, ...reason }])
    const on = (date: string) => heatOverridden("heat-place", { consultation, mixes: [hot], date })
    expect([on(today), on("2026-06-11")]).toEqual([[hot.id], []])
  })

  test("is asked for once where two mixes lack the same test", () => {
    const found = visit({}, tonerMix, { ...tonerMix, id: "root-shade" })
    expect(checkVisit(found).stops).toEqual([
      expect.objectContaining({ rule: "alert-test", mixes: [tonerMix.id, "root-shade"] }),
    ])
  })
})

describe("stops that a written reason passes", () => {
  test.each(passable)("%s", (rule, found) => {
    const withPass = (reason: string, by: string) => ({
      ...found,
      consultation: { ...found.consultation, passes: [{ rule, reason, by, visit: today }] },
    })
    expect(stopsOf(found)).toEqual([rule])
    expect(stopsOf(withPass(" ", "J"))).toEqual([rule])
    expect(stopsOf(withPass("Strand test seen on Monday.", ""))).toEqual([rule])
    const passed = checkVisit(withPass("Strand test seen on Monday.", "J"))
    expect(passed.stops).toEqual([])
    expect(passed.cautions).toContainEqual(
      expect.objectContaining({ rule, severity: "stop", pass: expect.objectContaining({ by: "J" }) }),
    )
  })
})

test("a stop passed for one mix still holds another", () => {
  const strong = (id: string) => mix({ id, sheet: null, developerVolume: 40 })
  const written = { reason: "Coarse hair, strand test seen.", by: "J", visit: today }
  const passes = [{ rule: "strong-developer", ...written, mix: "A" }]
  const { stops, cautions } = checkVisit(visit({ passes }, strong("A"), strong("B")))
  expect(stops.map(({ mixes }) => mixes)).toEqual([["B"]])
  expect(cautions.filter(({ pass }) => pass !== null).map(({ mixes }) => mixes)).toEqual([["A"]])
  expect([holding(stops, "A"), holding(stops, "B")].map(({ length }) => length)).toEqual([0, 1])
})

test("asthma holds a lightener, and a toner alone not", () => {
  expect(stopsOf(visit({ answers: yes("asthma"), alertTests: [clearTest] }, tonerMix))).toEqual([])
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
    ["black-henna", visit({ answers: yes("blackHennaTattoo") })],
    ["extensions", visit({ answers: yes("extensions") })],
    ["hairline-loss", visit({ answers: yes("hairlineLoss") })],
    ["eyes", visit({ answers: yes("lenses") })],
    ["strand-test-first", visit({ hair: hair({ history: ["coloured"] }) })],
    ["porous", visit({ hair: hair({ porosity: "high" }) })],
    [
      "overlap",
      visit({
        hair: hair({ history: ["lightened"] }),
        strandTests: [{ product: powder.name, outcome: "held" }],
      }),
    ],
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
    expect(rules.every(({ source }) => en.cautions.sources[source].length > 3)).toBe(true)
    const said = [...final, ...passable].flatMap(([, found]) => {
      const { stops, cautions } = checkVisit(found)
      return [...stops, ...cautions].map(({ why }) => say(en.cautions.why, why))
    })
    for (const why of said) {
      expect(why).not.toMatch(/\bsafe|guarantee|no damage/i)
      expect(why).not.toMatch(/NaN|undefined|null/)
    }
  })
})

describe("what was not asked", () => {
  const days = { today, visit: today }
  const told = (known: Consultation) => notAsked(known, days).map((thing) => say(en.cautions.notAsked, thing))

  test("is listed in the words of the screen: all that can hurt, where nothing was asked", () => {
    const nothing = told(newConsultation())
    expect(nothing).toEqual(expect.arrayContaining(["Age", "Scalp: look at it today", "Asthma?"]))
    expect(nothing).not.toContain("Did the black henna burn, itch or blister?")
    expect(nothing.length).toBe(2 + 19 + 2) // age and scalp, 19 questions, history and stretch of the hair
  })

  test("is nothing where all was asked today", () => {
    expect(told(askedAll(today))).toEqual([])
  })

  test("asks on where an answer makes it", () => {
    const more = told(askedAll(today, { answers: yes("blackHennaTattoo", "otherAllergy") }))
    expect(more).toContain("Which allergy, since when, and how it showed?")
    expect(more).toContain("When was the black henna tattoo?")
  })

  test("asks of an allergy to what, since when and how it showed: any of them blank is not asked", () => {
    const asks = (otherAllergy: Partial<Consultation["otherAllergy"]>) =>
      notAsked(
        askedAll(today, {
          answers: yes("otherAllergy"),
          otherAllergy: { which: "latex", when: "2019", how: "rash", ...otherAllergy },
        }),
        days,
      ).map(({ code }) => code)
    expect(asks({})).toEqual([])
    for (const blank of [{ which: " " }, { when: "" }, { how: "" }])
      expect(asks(blank)).toEqual(["which-allergy"])
  })

  test("names the parts of the hair it is not known of", () => {
    const ends = { ...askedAll(today), hair: hair({}) }
    expect(told(ends)).toEqual([
      "Hair history: roots and mid-lengths",
      "Elasticity, stretched wet: roots and mid-lengths",
    ])
    expect(notKnown(ends).map((thing) => say(en.cautions.notKnown, thing))).toContain(
      "Porosity: roots and mid-lengths",
    )
  })
})

describe("answers age", () => {
  const old = "2026-06-01"
  const open = (known: Consultation, visit = today) =>
    notAsked(known, { today, visit }).flatMap((thing) =>
      "question" in thing ? [thing.question] : [thing.code],
    )

  test("what is of the day counts on its day alone", () => {
    const known = askedAll(old)
    const forToday = Object.fromEntries(
      Object.entries(known.answers).map(([name, answer]) => [name, { ...answer, visit: today }]),
    )
    expect(open({ ...known, answers: forToday })).toEqual([
      "scalp",
      "faceRash",
      "expecting",
      "scalpToday",
      "lenses",
    ])
  })

  test("health history counts for the visit it was confirmed for, and no other", () => {
    const known = askedAll(today)
    expect(open(known)).toEqual([])
    expect(open(known, "2026-06-20")).toContain("asthma")
    expect(open(known, "2026-06-20")).not.toContain("faceRash")
  })

  test("a yes of another day stops still, and is asked anew", () => {
    const found = visit({ answers: answersOn(old, { breathingReaction: "yes" }) })
    expect(stopsOf(found)).toEqual(["breathing-reaction"])
    expect(open(found.consultation)).toContain("breathingReaction")
  })

  test("whether anything changed since a test is asked on the day", () => {
    const asked = { ...clearTest, changedSince: { said: "no" as const, on: old } }
    expect(open(askedAll(today, { alertTests: [asked] }))).toEqual(["changed-since"])
    expect(open(askedAll(today, { alertTests: [clearTest] }))).toEqual([])
  })
})
