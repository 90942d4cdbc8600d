import { describe, expect, it } from "vitest"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { recordFoils } from "../../../../web/core/record/recordFoils"
import { clientLines } from "../../../../web/core/record/recordWords"
import { servedPlan } from "../../../support/servedPlan"

describe("the record of a service", () => {
  it("has each foil's planned and real minutes, and what each look saw", () => {
    const [first, second, third] = recordFoils(servedPlan())
    expect(first).toMatchObject({
      number: 1,
      mix: "B",
      planned: { onMin: 4, offMin: 30 },
      real: { onMin: 5, offMin: 33 },
      looks: ["10 min: level 8", "20 min: level 8.5, stretch soft, dry"],
    })
    expect(second.real).toEqual({ onMin: 7, offMin: null })
    expect([third.real, third.looks]).toEqual([null, []])
  })
  it("is planned by the clock where no service was written down", () => {
    const [first] = recordFoils(examplePlan())
    expect(first.real).toBeNull()
    expect(first.planned).toEqual({ onMin: 4, offMin: 30 })
  })
  it("tells what was asked, every yes in its own words, and counts the rest", () => {
    const said = clientLines(servedPlan(), "UTC").map(({ label, text }) => `${label}: ${text}`)
    expect(said).toContain("Wanted: lift to level 9, finish cool")
    expect(said).toContain(
      "Health: Scalp sensitive; yes: Contact lenses in today?; 1 answered no; 13 not asked",
    )
    expect(said).toContain(
      "Alert test: House toner (invented), behind the ear, on 2026-03-06 10:00; clear, read 2026-03-08 11:30 by M.",
    )
  })
  it("says that nothing was asked where nothing was", () => {
    expect(clientLines(examplePlan(), "UTC").at(-1)).toEqual({ label: "Consultation", text: "not asked" })
  })
})
