import { describe, expect, it } from "vitest"
import { clearanceOf } from "../../../../web/core/cautions/clearance"
import type { Consultation } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { laterVisit, nextVisit } from "../../../../web/core/document/visits"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { askedAll } from "../../../support/answers"
import { servedPlan } from "../../../support/servedPlan"

const today = "2026-03-09"
const day = "2026-05-04"
const state = { level: 5, history: ["coloured"], porosity: "usual", stretch: "springs-back" } as const
const [held, failed] = [
  { product: "House powder (invented)", outcome: "held" as const },
  { product: "Tub", outcome: "failed" as const },
]
const consultation: Consultation = askedAll(today, {
  hair: { top: { roots: state } },
  liftToLevel: 8,
  strandTests: [held, failed],
  passes: [{ rule: "henna", reason: "Seen.", by: "J" }],
})
const served: Plan = {
  ...servedPlan(),
  consultation,
  timing: {
    ...usualTiming,
    lift: { fromLevel: 5, toLevel: 8 },
    strandTest: {
      product: held.product,
      developerVolume: 20,
      startLevel: 5,
      rows: [{ minutes: 20, level: 6 }],
    },
  },
}

describe("the visit after foils went on", () => {
  const next = nextVisit(served, day)

  it("knows that the hair was lightened, and not how it came out of it", () => {
    expect(next.consultation?.hair.top?.roots).toEqual({
      level: null,
      history: ["coloured", "lightened"],
      porosity: null,
      stretch: null,
    })
    expect(next.consultation).toMatchObject({ liftToLevel: 8, scalp: null, strandTests: [failed] })
    expect(next.timing).toMatchObject({ lift: null, strandTest: null })
  })

  it("overrides nothing from the last time, and asks before anything is mixed", () => {
    expect(next.consultation?.passes).toEqual([])
    const codes = clearanceOf(next, { moment: `${day}T10:00:00Z`, zone: "Europe/London" }).notAsked
    expect(codes.map(({ code }) => code)).toContain("stretch")
  })

  it("keeps the service among the earlier ones, and opens again", () => {
    expect([next.date, next.earlier?.length, next.service]).toEqual([day, 1, undefined])
    expect(openPlan(savePlan(next)).ok).toBe(true)
  })

  it("counts a foil whose first touch was missed, and no touch that was taken back", () => {
    const { service } = served
    if (!service) throw new Error("served, and no service")
    const hairAfter = (log: typeof service.log) =>
      nextVisit({ ...served, service: { ...service, log } }, day).consultation?.hair
    expect(hairAfter(service.log.filter(({ tap }) => tap.kind === "off"))).toEqual(next.consultation?.hair)
    expect(hairAfter(service.log.map((tap) => ({ ...tap, undone: true })))).toEqual(consultation.hair)
  })
})

describe("a visit before which no foil went on", () => {
  const { service: _, ...planned } = served
  const next = nextVisit(planned, day)

  it("keeps what was seen of the hair and tested on it, and no override and no strand of the clock", () => {
    expect(next.consultation).toEqual({ ...consultation, passes: [] })
    expect(next.timing).toEqual({ ...served.timing, strandTest: null })
  })
})

it("overrides nothing for the foils kept for another day", () => {
  expect(laterVisit(served, "Later").consultation).toEqual({ ...consultation, passes: [] })
})
