import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../../presets/formula/houseProducts"
import { checkVisit } from "../../../../../web/core/cautions/cautions"
import { alertTestWanting, whyNotCounting } from "../../../../../web/core/cautions/rules/alertTest"
import { morePermeable } from "../../../../../web/core/cautions/rules/permeability"
import { type PlannedMix, tonerIds, type Visit } from "../../../../../web/core/cautions/rules/rule"
import { testMomentOf } from "../../../../../web/core/cautions/rules/testRules"
import type { AlertTest, Consultation } from "../../../../../web/core/document/consultation"
import { answersOn, askedAll } from "../../../../support/answers"

const [powder] = houseProducts
const today = "2026-06-10"
const now = { moment: `${today}T10:00:00Z`, zone: "Europe/London" }
const mix = (change: Partial<PlannedMix> = {}): PlannedMix => ({
  id: "A",
  product: powder.name,
  sheet: { ...powder, alertTest: false },
  developerVolume: 20,
  ratio: { lightener: 1, developer: 2 },
  heatMin: 0,
  near: { hairline: false, scalp: false, cushion: false },
  ...change,
})
const visit = (mixes: readonly PlannedMix[], change: Partial<Consultation> = {}): Visit => ({
  consultation: askedAll(today, change),
  standing: [],
  mixes,
  twice: [],
  now,
  days: { today, visit: today },
})
const found = (of: Visit) => {
  const { stops, cautions } = checkVisit(of)
  return [...stops, ...cautions].map(({ why, mixes }) => ({ ...why, mixes }))
}

describe("what is said of a mix", () => {
  it("in the open air: it dries", () => {
    expect(found(visit([mix({ isOpen: true }), mix({ id: "B" })]))).toEqual([
      { code: "open-air-dries", mix: "A", mixes: ["A"] },
    ])
  })

  it("on the roots of a strand that has a weaker one on its ends: both with their strength", () => {
    expect(found(visit([mix({ developerVolume: 30, over: { mix: "B", volume: 10 } })]))).toEqual([
      { code: "stronger-roots", mix: "A", volume: 30, endsMix: "B", endsVolume: 10, mixes: ["A"] },
    ])
  })

  it("without a sheet: a lightener as far as asthma goes, unless it is there to tone", () => {
    const asthma = { answers: answersOn(today, { asthma: "yes" }) }
    const codes = (id: string, developerVolume: number) =>
      found(visit([mix({ id, sheet: null, developerVolume })], asthma)).map(({ code }) => code)
    expect(codes("A", 20)).toEqual(["asthma", "no-sheet"])
    expect(codes(tonerIds.toner, 10)).toEqual(["alert-test-wanting", "no-sheet"])
    expect(codes(tonerIds.rootShade, 10)).toEqual(["alert-test-wanting", "no-sheet"])
    // Without developer there is no oxidative dye in it.
    expect(codes(tonerIds.toner, 0)).toEqual(["no-sheet"])
  })

  it("names each thing that its sheet leaves unsaid", () => {
    const silent = { ...powder, longestMin: null, onScalp: null, alertTest: null, potLifeMin: null }
    expect(found(visit([mix({ sheet: silent })]))).toEqual([
      {
        code: "sheet-silent",
        mix: "A",
        product: powder.name,
        gaps: ["longest-time", "on-scalp", "alert-test", "pot-life"],
        mixes: ["A"],
      },
    ])
  })
})

describe("lightened hair that would be coated again", () => {
  const twice = [
    { foil: 12, mix: "A", fromMm: 34, toMm: 80 },
    { foil: 3, mix: "A", fromMm: 41, toMm: 118 },
    { foil: 3, mix: "A", fromMm: 20, toMm: 30 },
    { foil: 5, mix: "B", fromMm: 0, toMm: 10 },
  ]

  it("is told by mix, foils by number, over the whole stretch, and overridden to the centimetre", () => {
    const { stops } = checkVisit({ ...visit([mix(), mix({ id: "B" })]), twice })
    expect(stops.map(({ why, mixes, about }) => [why, mixes, about])).toEqual([
      [{ code: "coated-twice", foils: [3, 12], fromMm: 20, toMm: 118 }, ["A"], "3, 12: 2–12 cm"],
      [{ code: "coated-twice", foils: [5], fromMm: 0, toMm: 10 }, ["B"], "5: 0–1 cm"],
    ])
  })
})

describe("a toner that is not chosen", () => {
  const wanting = (mixes: readonly PlannedMix[], change: Partial<Consultation>) =>
    found(visit(mixes, change)).flatMap((each) => (each.code === "toner-not-chosen" ? each.wanting : []))

  it("is wanted for a finish, a root shade for a melt, and neither once it is there", () => {
    expect(wanting([mix()], {})).toEqual([])
    expect(wanting([mix()], { finish: "cool" })).toEqual(["toner"])
    expect(wanting([mix()], { finish: "cool", rootMeltMm: 25 })).toEqual(["toner", "root-shade"])
    const toner = mix({ id: tonerIds.toner, developerVolume: 0 })
    const shade = mix({ id: tonerIds.rootShade, developerVolume: 0 })
    expect(wanting([toner], { finish: "cool", rootMeltMm: 25 })).toEqual(["root-shade"])
    expect(wanting([shade], { finish: "cool", rootMeltMm: 25 })).toEqual(["toner"])
    expect(wanting([toner, shade], { finish: "cool", rootMeltMm: 25 })).toEqual([])
  })
})

describe("the moment a patch test is held against", () => {
  const hennaOn = (said: "yes" | "no", blackHennaOn: string | null) => {
    const known = askedAll(today, { answers: answersOn(today, { blackHennaTattoo: said }), blackHennaOn })
    return testMomentOf(known, { now, days: { today, visit: today } }).hennaOn
  }

  it("knows the day of a black henna tattoo, that there was one, or that there was none", () => {
    expect(hennaOn("yes", "2020-05-01")).toBe("2020-05-01")
    expect(hennaOn("yes", null)).toBe("unknown")
    expect(hennaOn("no", "2020-05-01")).toBeNull()
  })

  it("is of the evening on which a service began that goes on, and of no later visit", () => {
    const dayOf = (visitDay: string, begun?: string) =>
      testMomentOf(askedAll(today), { now, days: { today, visit: visitDay, begun } }).visitDay
    expect(dayOf(today)).toBe(today)
    expect(dayOf(today, "2026-06-09")).toBe("2026-06-09")
    expect(dayOf("2026-06-20", "2026-06-09")).toBe("2026-06-20")
  })

  const test: AlertTest = {
    product: "Toner",
    place: "behind the ear",
    appliedAt: now.moment,
    result: null,
    validUntil: null,
    visit: today,
    changedSince: null,
  }
  const at = { now, visitDay: today, hennaOn: null }

  it("lets a test that was put on just now have no hour behind it", () => {
    expect(whyNotCounting(test, at)).toEqual({
      code: "too-young",
      product: "Toner",
      hoursOn: 0,
      hours: 48,
      readFrom: "2026-06-12T11:00", // 48 hours on, by the clock of London in summer
    })
  })

  it("takes no reading without its time", () => {
    const read = { outcome: "clear" as const, readBy: "J", readAt: "" }
    const old = { ...test, appliedAt: "2026-06-01T10:00:00Z", result: read }
    expect(whyNotCounting(old, at)).toEqual({ code: "reader-missing", product: "Toner" })
  })

  it("counts a test read clear of which nobody has asked yet whether anything changed: that is asked apart", () => {
    const result = { outcome: "clear" as const, readBy: "J", readAt: "2026-06-03T10:00:00Z" }
    expect(whyNotCounting({ ...test, appliedAt: "2026-06-01T10:00:00Z", result }, at)).toBeNull()
  })

  it("cannot be told without a moment, and names the hours where there is no test", () => {
    const noon = { ...at, now: { ...now, moment: "noon" } }
    expect(() => whyNotCounting(test, noon)).toThrow("now is no moment: noon")
    expect(alertTestWanting([], "Toner", at)).toEqual({ code: "no-test", product: "Toner", hours: 48 })
  })
})

it("dye moves into hair after an hour of 6 % 2.7 times as fast, after half an hour of cream 12.6 times", () => {
  // 9.78 and 45.2 against 3.59 · 1e-15 m2/s: J Soc Cosmet Chem 1993;44:358-9, Table III.
  expect(morePermeable.peroxideHour).toBeCloseTo(2.724, 3)
  expect(morePermeable.creamHalfHour).toBeCloseTo(12.591, 3)
})
