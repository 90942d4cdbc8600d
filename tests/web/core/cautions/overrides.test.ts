import { describe, expect, it } from "vitest"
import { withOverride } from "../../../../web/core/cautions/overrides"
import type { Pass } from "../../../../web/core/document/consultation"

const day = "2026-03-09"
const written: Pass = {
  rule: "hairline-strength",
  mix: "A",
  about: "30",
  reason: "held",
  by: "Kit",
  on: day,
  visit: day,
}

describe("an override", () => {
  it("takes the place of the one of the same finding for the same visit", () => {
    const anew = { ...written, reason: "a second strand held" }
    expect(withOverride([written], anew)).toEqual([anew])
  })
  it.each<[string, Partial<Pass>]>([
    ["another thing that the rule found", { about: "40" }],
    ["another mix", { mix: "B" }],
    ["another rule", { rule: "scalp-strength" }],
    ["another visit", { visit: "2026-05-04" }],
  ])("leaves what was written of %s", (_, other) => {
    const more = { ...written, ...other }
    expect(withOverride([written], more)).toEqual([written, more])
  })
})
