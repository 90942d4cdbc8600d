import { describe, expect, it } from "vitest"
import { notKnown } from "../../../../../web/core/cautions/asking/notAsked"
import { daysOf, isOfToday, isOfVisit, questionRows } from "../../../../../web/core/cautions/asking/questions"
import { fieldOf, openTogether } from "../../../../../web/core/cautions/clearance"
import { newConsultation, questionNames } from "../../../../../web/core/document/consultation"
import { askedAll } from "../../../../support/answers"

const at = (moment: string, zone = "Europe/London") => ({ moment, zone })

describe("the questions", () => {
  it("of breath, allergy, rash and pregnancy are never answered together with others", () => {
    expect(questionNames.filter((name) => questionRows[name].alone).toSorted()).toEqual([
      "asthma",
      "breathingReaction",
      "colouristBreathing",
      "dyeAllergy",
      "expecting",
      "faceRash",
      "otherAllergy",
    ])
  })

  it("of today's skin, eyes and pregnancy are asked again each day", () => {
    expect(questionNames.filter((name) => questionRows[name].lasts === "day").toSorted()).toEqual([
      "expecting",
      "faceRash",
      "lenses",
      "scalpToday",
    ])
  })

  it("left open are answered together where they may be, and nothing else is", () => {
    const open = (question: "asthma" | "lenses" | "medicines") =>
      ({ code: "question", question, before: null, isOld: false }) as const
    const things = [{ code: "age" } as const, open("asthma"), open("lenses"), open("medicines")]
    expect(openTogether(things)).toEqual(["lenses", "medicines"])
  })
})

describe("a thing not asked", () => {
  it("leads to the field that answers it", () => {
    const question = { code: "question", question: "asthma", before: null, isOld: false } as const
    expect(
      [
        question,
        { code: "which-allergy" } as const,
        { code: "changed-since", product: "Toner" } as const,
        { code: "black-henna-date" } as const,
        { code: "age" } as const,
      ].map(fieldOf),
    ).toEqual(["question-asthma", "allergy", "patch-tests", "black-henna-date", "age"])
  })

  it("is, where nothing is known that hurts nobody, each thing by its name", () => {
    expect(notKnown(newConsultation()).map(({ code }) => code)).toEqual([
      "target-level",
      "finish",
      "brightest",
      "root-distance",
      "grey",
      "upkeep",
      "level",
      "porosity",
    ])
    const known = askedAll("2026-03-09", {
      liftToLevel: 9,
      finish: "cool",
      brightest: ["hairline"],
      rootDistanceMm: 5,
      greyShare: 0,
      upkeepWeeks: 10,
    })
    expect(notKnown(known)).toEqual([])
  })
})

describe("the days that answers are held against", () => {
  it("are today by the wall of the place, and the day of the visit, which is never past", () => {
    const late = at("2026-03-09T23:30:00Z", "Europe/Berlin")
    expect(daysOf({ date: "2026-03-20" }, late)).toEqual({ today: "2026-03-10", visit: "2026-03-20" })
    expect(daysOf({ date: "2026-03-01" }, late)).toEqual({ today: "2026-03-10", visit: "2026-03-10" })
  })

  it("take in the evening before where the service of then goes on over midnight, and no earlier one", () => {
    const night = at("2026-03-10T00:30:00Z")
    expect(daysOf({ date: "2026-03-09" }, night, "2026-03-09T21:00:00Z").begun).toBe("2026-03-09")
    expect(daysOf({ date: "2026-03-09" }, night, "2026-03-08T21:00:00Z").begun).toBeUndefined()
    expect(daysOf({ date: "2026-03-09" }, night, "2026-03-10T00:10:00Z").begun).toBeUndefined()
    expect(daysOf({ date: "2026-03-09" }, night, "not a moment").begun).toBeUndefined()
  })

  it("cannot be told without a moment", () => {
    expect(() => daysOf({ date: "2026-03-09" }, at("noon"))).toThrow("now is no moment: noon")
  })

  it("count what was said on that evening as of today's visit, and not of a later one", () => {
    const begun = { today: "2026-03-10", visit: "2026-03-10", begun: "2026-03-09" }
    expect(isOfToday("2026-03-09", begun)).toBe(true)
    expect(isOfToday("2026-03-09", { today: "2026-03-10", visit: "2026-03-10" })).toBe(false)
    // Nothing said is of no day, whether or not a service goes on.
    expect(isOfToday(undefined, { today: "2026-03-10", visit: "2026-03-10" })).toBe(false)
    expect(isOfVisit("2026-03-09", begun)).toBe(true)
    expect(isOfVisit("2026-03-10", { ...begun, visit: "2026-03-20" })).toBe(false)
    expect(isOfVisit("2026-03-20", { ...begun, visit: "2026-03-20" })).toBe(true)
  })
})
