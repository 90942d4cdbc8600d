import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { sheetNames } from "../../presets/sheets/sheetNames"
import { openPlan } from "../../web/core/file/planFile"
import { toPdf } from "../../web/sheets/printPlan"
import { layOutSheet } from "../../web/sheets/sheetKinds"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { openPlanText } from "../support/chair"
import { goTo } from "../support/screen"
import { servedPlan } from "../support/servedPlan"
import { sheetFonts, sheetOptions } from "../support/sheetFonts"
import { en } from "../support/words"
import { fieldEnds } from "./fieldEnds"
import { howMany } from "./howMany"

/** Every field of a plan at each end of its schema: a sentence says what is wrong with it, or every sheet and screen draws it. */
const ends = fieldEnds(servedPlan())
const some = (count: number) => {
  const every = Math.ceil(ends.length / howMany({ slice: count, whole: ends.length }))
  return ends.filter((_, i) => i % every === 0)
}

it("are many", () => expect(ends.length).toBeGreaterThan(50))

it.each(some(20))("$name, on every sheet", ({ raw }) => {
  const opened = openPlan(JSON.stringify(raw))
  if (!opened.ok) {
    expect(en.problems.sentence(opened.problems[0])).not.toMatch(/undefined|\[object|^$/)
    return
  }
  for (const name of sheetNames)
    expect(
      toPdf(layOutSheet(name, opened.plan, sheetOptions(), sheetFonts), sheetFonts).length,
    ).toBeGreaterThan(0)
})

describe("on every screen", () => {
  beforeAll(openBrowser)
  afterAll(closeBrowser)

  it.each(some(3))("$name", async ({ raw }) => {
    const opened = openPlan(JSON.stringify(raw))
    if (!opened.ok) return
    const { page, problems, close } = await visit()
    await openPlanText(page, opened.plan)
    for (const screen of ["Client", "Placement", "Formula", "Timing", "Sheets"] as const) {
      await goTo(page, screen)
      await page.getByRole("main").waitFor()
    }
    await page.getByRole("group", { name: en.sheets.screen.asPrinted }).waitFor()
    expect(await page.getByText(en.plans.parts.tryAgain).count()).toBe(0)
    expect(problems).toEqual([])
    await close()
  })
})
