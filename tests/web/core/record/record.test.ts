import { describe, expect, it } from "vitest"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { coatLetters } from "../../../../web/core/placement/coatCodes"
import { recordFoils } from "../../../../web/core/record/recordFoils"
import { clientLines } from "../../../../web/core/record/recordLines"
import { say } from "../../../../web/words/say"
import { servedPlan } from "../../../support/servedPlan"
import { en } from "../../../support/words"

describe("the record of a service", () => {
  it("has each foil's planned and real minutes, and what each look saw", () => {
    const [first, second, third] = recordFoils(servedPlan())
    expect(first).toMatchObject({
      number: 1,
      coats: [{ part: "whole", mix: "B", rootsToMm: null }],
      planned: { onMin: 4, offMin: 30 },
      real: { onMin: 5, offMin: 33 },
    })
    expect(first.looks.map((look) => say(en.record.looks, look))).toEqual([
      "10 min: level 8",
      "20 min: level 8.5, limp, dry",
    ])
    expect(second.real).toEqual({ onMin: 7, offMin: null })
    expect([third.real, third.looks]).toEqual([null, []])
  })
  it("names the mix a foil was coated with, whatever letter it was given after it went on", () => {
    const served = servedPlan()
    if (!served.service) throw new Error("nothing was carried out")
    const foils = served.service.foils.map((foil, at) => (at === 0 ? { ...foil, mix: "A" } : foil))
    const [first, second] = recordFoils({ ...served, service: { ...served.service, foils } })
    // Of the second nothing was kept: as drawn.
    expect([first.coats, second.coats].map(coatLetters)).toEqual(["A", "B"])
  })
  it("keeps that a check was put off: “Not now” writes “not checked”", () => {
    const served = servedPlan()
    const { service } = served
    if (!service) throw new Error("nothing was carried out")
    const [{ id }] = service.foils
    const last = service.log[service.log.length - 1]
    const putOff = { ...last, tap: { kind: "not-checked" as const, foils: [id] }, onAtMs: null }
    const [first] = recordFoils({ ...served, service: { ...service, log: [...service.log, putOff] } })
    expect(first.looks.map((look) => say(en.record.looks, look))).toEqual([
      "10 min: level 8",
      "20 min: level 8.5, limp, dry",
      "not checked",
    ])
  })
  it("is planned by the clock where no service was written down", () => {
    const [first] = recordFoils(examplePlan())
    expect(first.real).toBeNull()
    // The example's first foil lies at the hairline: 0.9 of the usual 26 minutes.
    expect(first.planned).toEqual({ onMin: 4, offMin: expect.closeTo(4 + 0.9 * 26, 9) })
  })
  it("tells what was asked, every yes in its own words, and counts the rest", () => {
    const said = clientLines(servedPlan(), "UTC").map(
      (line) => `${line.code === "hair" ? "" : en.record.labels[line.code]}: ${say(en.record.lines, line)}`,
    )
    expect(said).toContain("Wanted: Lift to level 9, finish cool")
    expect(said).toContain(
      "Health: Scalp sensitive; age not asked; yes: Contact lenses in today?; 1 answered no; 17 not asked",
    )
    expect(said).toContain(
      "Patch test: House toner (invented): applied 6 March 2026, 10:00 (behind the ear); clear, read 8 March 2026, 11:30 by M.",
    )
  })
  it("says that nothing was asked where nothing was", () => {
    expect(clientLines(examplePlan(), "UTC").at(-1)).toEqual({ code: "no-consultation" })
  })
})
