import { describe, expect, test } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { holding, type RuleName, rules } from "../../../../web/core/cautions/cautions"
import { type Clearance, clearanceOf } from "../../../../web/core/cautions/clearance"
import { plannedService } from "../../../../web/core/chair/plannedService"
import type {
  AlertTest,
  AllergyKind,
  Consultation,
  HairHistory,
  Question,
} from "../../../../web/core/document/consultation"
import { newSalon } from "../../../../web/core/document/salon"
import type { Mix, Plan } from "../../../../web/core/document/schema"
import { newToning } from "../../../../web/core/document/toning"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { heatRefusal } from "../../../../web/core/schedule/heatRefusal"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { answersOn, askedAll } from "../../../support/answers"
import { busyPlan } from "../../../support/busyPlan"
import { samplePlan } from "../../../support/samples"

const today = "2026-03-09"
const now = { moment: `${today}T10:00:00Z`, zone: "Europe/London" }
const [powder, , cream, toner] = houseProducts
const [mixA] = samplePlan.mixes

/** One slice far from the hairline, everything asked and nothing found. */
const inside: Plan = {
  ...samplePlan,
  date: today,
  sections: samplePlan.sections.filter(({ kind }) => kind === "slice"),
  consultation: askedAll(today),
}
/** The same at the hairline; parted 6 mm behind it. */
const atHairline: Plan = { ...inside, sections: busyPlan(1).sections.filter(isFoil).slice(0, 1) }
const withCushion: Plan = {
  ...inside,
  sections: samplePlan.sections.filter(({ kind }) => kind === "backcomb"),
}

const mixed = (change: Partial<Mix>, plan = inside): Plan => ({ ...plan, mixes: [{ ...mixA, ...change }] })
const heated = (heatMin: number, plan = inside): Plan => ({ ...plan, timing: { ...usualTiming, heatMin } })
/** The house powder as another sheet would have it. */
const onSheet = (change: Partial<ProductSheet>, plan = inside): Plan => ({
  ...plan,
  salon: { ...newSalon(), sheets: [{ ...powder, id: "own", name: "Own powder", ...change }] },
  mixes: plan.mixes.map((mix) => ({ ...mix, product: "Own powder" })),
})
const told = (change: Partial<Consultation>): Plan => ({ ...inside, consultation: askedAll(today, change) })
const yes = (name: Question) => told({ answers: answersOn(today, { [name]: "yes" }) })
const history = (of: HairHistory) => {
  const { hair } = askedAll(today)
  return told({ hair: { top: { roots: { ...hair.top?.roots, history: [of] } } } as Consultation["hair"] })
}
const reacted: AlertTest = {
  product: toner.name,
  place: "behind the ear",
  appliedAt: "2026-03-05T10:00:00Z",
  result: { outcome: "reacted", readBy: "J", readAt: "2026-03-07T11:00:00Z" },
  validUntil: null,
  visit: today,
  changedSince: { said: "no", on: today },
}

const onCard = (kind: AllergyKind): Plan => ({
  ...inside,
  client: { ...inside.client, allergies: [{ kind, to: "nickel", since: "" }] },
})

/** A plan for each row that stops, whatever else it may stop for. */
const plans: Partial<Record<RuleName, readonly Plan[]>> = {
  "under-16": [told({ ageYears: 15 })],
  "past-reaction": [yes("pastReaction"), told({ alertTests: [reacted] })],
  "breathing-reaction": [yes("breathingReaction")],
  "mixer-breathing": [yes("colouristBreathing")],
  "dye-allergy": [yes("dyeAllergy")],
  scalp: [told({ scalp: { seen: "broken", on: today } })],
  "scalp-today": [yes("scalpToday")],
  "sensitive-scalp": [told({ scalp: { seen: "sensitive", on: today } })],
  "face-rash": [yes("faceRash")],
  expecting: [yes("expecting")],
  "scalp-condition": [yes("scalpCondition")],
  medicines: [yes("medicines")],
  chemotherapy: [yes("chemotherapy")],
  asthma: [yes("asthma")],
  allergy: [yes("otherAllergy")],
  "card-dye-allergy": [onCard("dye"), onCard("not-known")],
  "card-allergy": [onCard("other")],
  "alert-test": [
    {
      ...inside,
      toning: { ...newToning(), toner: { product: toner.name, developerVolume: 10, parts: 2 } },
    } as Plan,
  ],
  "metallic-salts": [history("metallic-salts")],
  henna: [history("henna")],
  "strand-test-failed": [told({ strandTests: [{ product: powder.name, outcome: "failed" }] })],
  "over-stretched": [
    told({
      hair: { top: { roots: { level: 7, history: [], porosity: "usual", stretch: "breaks" } } },
    }),
  ],
  "recent-relaxer": [yes("recentRelaxer")],
  "unknown-content": [yes("homeColour")],
  // Lightened at the last visit, and drawn as it was then.
  "coated-twice": [
    {
      ...inside,
      lightened: inside.sections.filter(isFoil).map((section) => ({ on: "2026-01-05", level: 9, section })),
    },
  ],
  "over-legal-limit": [
    mixed({ product: "Off the shelf", developerVolume: 60, ratio: { lightener: 1, developer: 3 } }),
  ],
  "hairline-strength": [mixed({ developerVolume: 30 }, atHairline)],
  "strong-developer": [mixed({ developerVolume: 40 })],
  "developer-not-on-sheet": [mixed({ product: cream.name, developerVolume: 30 })],
  "ratio-not-on-sheet": [mixed({ ratio: { lightener: 1, developer: 4 } })],
  "off-scalp-product": [
    { ...inside, sections: inside.sections.map((section) => ({ ...section, rootDistanceMm: 0 })) },
  ],
  heat: [
    heated(15),
    heated(5, mixed({ product: cream.name })),
    heated(5, mixed({ product: "Off the shelf" })),
  ],
  "heat-place": [heated(5, mixed({ developerVolume: 30 })), heated(5, atHairline), heated(5, withCushion)],
  "heat-time": [heated(15, onSheet({ heatMin: 20 }))],
}
const cases = (Object.keys(plans) as RuleName[]).flatMap((rule) =>
  (plans[rule] ?? []).map((plan, at) => [`${rule}, ${at + 1}`, rule, plan] as const),
)

const holds = ({ stops }: Clearance, rule: RuleName) => stops.some((stop) => stop.rule === rule)
/** Whether the Formula holds the bowl a stop is about; a stop of the whole visit holds every one. */
const isBowlHeldFor = (told: Clearance, rule: RuleName) =>
  holding(told.stops, mixA.id).some((stop) => stop.rule === rule) ||
  told.stops.some((stop) => stop.rule === rule && !stop.mixes?.includes(mixA.id))
function overridden(plan: Plan, rule: RuleName): Plan {
  const found = clearanceOf(plan, now).stops.filter((stop) => stop.rule === rule)
  const passes = found.map(({ mixes, about }) => ({
    rule,
    reason: "Seen on Monday.",
    by: "J",
    visit: today,
    ...(mixes && { mix: mixes[0] }),
    ...(about !== undefined && { about }),
  }))
  return { ...plan, consultation: { ...(plan.consultation ?? askedAll(today)), passes } }
}
const clock = (plan: Plan) => {
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error(timed.problems.map(({ code }) => code).join(" "))
  return timed
}

describe("every row that stops", () => {
  test("has its plan here", () => {
    const stopping = rules.filter(({ severity }) => severity === "stop").map(({ rule }) => rule)
    expect(new Set(Object.keys(plans))).toEqual(new Set(stopping))
  })

  test.each(cases)(
    "%s: pill, bowl and chair hold, and go by the row once a reason is written",
    (_, rule, plan) => {
      const before = clearanceOf(plan, now)
      expect([holds(before, rule), isBowlHeldFor(before, rule), before.state]).toEqual([true, true, "stop"])
      const after = clearanceOf(overridden(plan, rule), now)
      const isFinal = !rules.some((row) => row.rule === rule && row.passable)
      expect([holds(after, rule), isBowlHeldFor(after, rule)]).toEqual([isFinal, isFinal])
      if (isFinal) expect(after.state).toBe("stop")
      else expect(after.cautions).toContainEqual(expect.objectContaining({ rule, severity: "stop" }))
    },
  )
})

describe("heat on the clock and at the chair", () => {
  const heatCases = cases.filter(([, rule]) => rule.startsWith("heat"))
  test.each(heatCases)(
    "%s: is left out, and counted once it was overridden where that is allowed",
    (_, rule, plan) => {
      const left = clock(plan)
      expect([left.schedule.heat, plannedService(plan, left).heatMin]).toEqual([null, undefined])
      expect(left.assumed).toContainEqual(expect.objectContaining({ code: "heat-left-out" }))
      const passed = overridden(plan, rule)
      const after = clock(passed)
      const isFinal = rule === "heat"
      expect(heatRefusal(after.service) === null).toBe(!isFinal)
      expect(plannedService(passed, after).heatMin).toBe(isFinal ? undefined : plan.timing?.heatMin)
      expect(after.assumed.some(({ code }) => code === "heat-counted")).toBe(!isFinal)
    },
  )

  test("overridden, makes its foils ready sooner; an override of other heat counts for nothing", () => {
    const plan = heated(10, atHairline)
    const passed = overridden(plan, "heat-place")
    const ready = (of: Plan) => clock(of).schedule.foils[0].readyMin.mid
    expect(ready(passed)).toBeLessThan(ready(plan))
    const longer = { ...heated(5, passed), consultation: passed.consultation }
    expect(clock(longer).schedule.heat).toBeNull()
  })

  test("has a limit of what can be worked out that nobody overrides", () => {
    const plan = heated(5, atHairline)
    const warm = { ...plan, timing: { ...usualTiming, heatMin: 5, heatC: 41 } }
    expect(heatRefusal(clock(overridden(warm, "heat-place")).service)?.code).toBe("too-warm")
  })
})

describe("the hairline", () => {
  test("30 vol there is for the colourist to override; where the sheet does not list it nobody may", () => {
    const passed = overridden(mixed({ developerVolume: 30 }, atHairline), "hairline-strength")
    expect(clearanceOf(passed, now).stops).toEqual([])
    const offSheet = mixed({ product: cream.name, developerVolume: 30 }, atHairline)
    const both = overridden(overridden(offSheet, "developer-not-on-sheet"), "hairline-strength")
    expect(clearanceOf(both, now).stops.map(({ rule }) => rule)).toContain("developer-not-on-sheet")
  })

  test("a sheet that keeps its product off the scalp holds at the hairline too", () => {
    const near = (plan: Plan): Plan => ({
      ...plan,
      sections: plan.sections.map((section) => ({ ...section, rootDistanceMm: 0 })),
    })
    const plan = near(atHairline)
    expect(holds(clearanceOf(overridden(plan, "off-scalp-product"), now), "off-scalp-product")).toBe(true)
    expect(holds(clearanceOf(onSheet({ onScalp: true }, plan), now), "off-scalp-product")).toBe(false)
  })
})
