import { describe, expect, it } from "vitest"
import { questionNames } from "../../../web/core/document/consultation"
import type { StrandFault } from "../../../web/core/lift/strandTest"
import { say } from "../../../web/words/say"
import { everyLanguage } from "../../support/words"

const faults: { [C in StrandFault["code"]]: Extract<StrandFault, { code: C }> } = {
  "no-rows": { code: "no-rows" },
  "too-many-rows": { code: "too-many-rows", most: 6 },
  "start-off-scale": { code: "start-off-scale", level: 0, darkest: 1, lightest: 10 },
  "row-off-scale": { code: "row-off-scale", row: 2, level: 11, darkest: 1, lightest: 10 },
  "out-of-order": { code: "out-of-order", row: 2, minutes: 15, beforeMin: 20 },
  "past-longest": { code: "past-longest", row: 3, minutes: 50, longestMin: 45 },
  darker: { code: "darker", row: 2, level: 6, beforeLevel: 7 },
}

describe.each(everyLanguage)("in %s", (_, { client }) => {
  it("has a sentence for every fault of a strand test", () => {
    for (const fault of Object.values(faults)) {
      expect(say(client.strandFaults, fault)).not.toMatch(/undefined|NaN|\[object/)
      expect(say(client.strandFaults, fault).length).toBeGreaterThan(10)
    }
  })

  it("asks every question, and none of them twice", () => {
    const asked = questionNames.map((question) => client.questions[question])
    expect(new Set(asked).size).toBe(questionNames.length)
    for (const question of asked) expect(question.trim()).not.toBe("")
  })
})
