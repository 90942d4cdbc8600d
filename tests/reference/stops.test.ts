import { describe, expect, it } from "vitest"
import { legalLimitPercent } from "../../presets/formula/developers"
import { visitLimits } from "../../presets/timing/visitLimits"
import { questionRows } from "../../web/core/cautions/asking/questions"
import { type RuleName, rules } from "../../web/core/cautions/cautions"

const row = (name: RuleName) => {
  const found = rules.find(({ rule }) => rule === name)
  if (!found) throw new Error(`no row is called ${name}`)
  return found
}

/** Stops held against what public bodies print. */
describe("stops of public bodies", () => {
  it("12 % peroxide on the head at most: Regulation (EC) 1223/2009, Annex III, entry 12(a), by (EU) 2019/831", () => {
    expect(legalLimitPercent).toBe(12)
    expect(row("over-legal-limit")).toMatchObject({ severity: "stop", decides: "law", passable: false })
  })

  it("not under 16: label words listed by Tukes (Finland); National Hair and Beauty Federation (UK)", () => {
    expect(visitLimits.youngestYears).toBe(16)
    expect(row("under-16")).toMatchObject({ severity: "stop", decides: "law", passable: false })
  })

  // "Do not colour your hair if: you have a rash on your face or sensitive, irritated and damaged scalp; you have ever
  // experienced any reaction after colouring your hair; you have experienced a reaction to a temporary black henna
  // tattoo in the past": label words of Annex III, as listed by Tukes (Finland).
  it.each<RuleName>(["face-rash", "sensitive-scalp", "scalp", "past-reaction"])(
    "the label stops colour, and no reason overrides it: %s",
    (rule) => {
      expect(row(rule)).toMatchObject({ severity: "stop", decides: "law", passable: false, letter: false })
    },
  )

  it("a test at least 48 hours before, each time: National Hair and Beauty Federation (UK); FDA, Hair dyes: 2 days", () => {
    expect(visitLimits.alertTestHours).toBe(48)
    expect(row("alert-test")).toMatchObject({ severity: "stop", decides: "maker", passable: false })
  })

  it("persulfates give wheeze and hives: Cosmetic Ingredient Review 2001; HSE, COSHH: stop, asked alone", () => {
    expect(row("breathing-reaction")).toMatchObject({ severity: "stop", passable: false, letter: false })
    expect(questionRows.breathingReaction.alone).toBe(true)
  })
})
