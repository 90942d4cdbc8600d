import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, it } from "vitest"
import type { Foil } from "../../geometry/section/section"
import { newSection } from "../../web/core/document/newSection"
import { closeBrowser, handsReady, openBrowser, portrait, visit } from "../support/browser"
import { askedToday, openPlanText, startClock, takeClock, tapAway } from "../support/chair"
import { fingerOn } from "../support/finger"
import { readPdfText } from "../support/pdfText"
import { emptyPlan, rightParting } from "../support/samples"
import { goTo, onLargeView, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000
const [mix] = emptyPlan.mixes
const mixes = [
  { ...mix, id: "A", developerVolume: 20 },
  { ...mix, id: "B", developerVolume: 10 },
]

it("a foil drawn by finger is given a second mix on its roots, mixed, timed, placed and printed", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await takeClock(page)
  await openPlanText(page, { ...emptyPlan, mixes, consultation: askedToday() })
  await handsReady(page)
  await page.locator(".tools").getByRole("radio", { name: "Slice", exact: true }).check()
  const finger = await fingerOn(page)
  const [first, ...more] = await Promise.all(
    [
      [-12, 88],
      [-24, 88],
      [-38, 85],
      [-50, 76],
    ].map(([x, y]) => onLargeView(page, "front", x, y)),
  )
  await finger.down(first)
  for (const place of more) await finger.move(place)
  await finger.up()
  await expect.poll(() => options(page).count()).toBe(1)
  await options(page).first().tap()

  await page.locator("section.editor").getByText("All settings").tap()
  const roots = page.getByRole("group", { name: "Mix on the roots" })
  await roots.getByLabel("B", { exact: true }).tap()
  const end = page.getByLabel("Roots end, from the scalp")
  expect(await end.inputValue()).toBe("25")
  await end.fill("30")
  await end.press("Enter")
  await page
    .getByText(/mix A on mid-lengths and ends, then mix B on the roots to 30.mm/)
    .first()
    .waitFor()
  // Nobody’s roots end before product begins: it is said why, and stays as it was.
  await end.fill("2")
  await end.press("Enter")
  await page
    .getByText(/let the roots end farther down/)
    .first()
    .waitFor()
  expect(await end.inputValue()).toBe("30")

  await goTo(page, "Formula")
  await page.getByText(/1 foil uses mix A/).waitFor()
  await page.getByText(/1 foil uses mix B/).waitFor()
  expect(await page.locator(".bowls .bowl").count()).toBe(2)
  await goTo(page, "Timing")
  await page.clock.runFor(1000)
  await page.getByRole("button", { name: "Start at the chair" }).tap()
  await page.getByText(/^1 foil, 2 bowls/).waitFor()
  await startClock(page)
  await page.getByText(/mix A on mid-lengths and ends, then mix B on the roots to 30.mm/).waitFor()
  await page.clock.runFor(4 * minute)
  await page.getByRole("button", { name: "Foil 1 is on" }).tap()
  await page.getByRole("button", { name: "Leave" }).tap()

  await goTo(page, "Sheets")
  await page.getByRole("radio", { name: "Placement map", exact: true }).check()
  await page.locator(".sheet svg, .small-page svg").first().waitFor()
  const saved = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save PDF" }).tap()
  const text = await readPdfText(readFileSync(await (await saved).path()))
  expect(text).toContain("A + B")
  expect(text).toMatch(/Mix A on mid-lengths and ends, then mix B on the roots to 30.mm/)
  expect(problems).toEqual([])
  await close()
})

const rooted: Foil = {
  ...newSection("slice", rightParting, { ...emptyPlan, mixes }),
  ...{ roots: { mix: "B", toMm: 30, first: "ends" as const } },
}

it("roots are set to go on later, called out when they come due, tapped by finger and told by the record", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await takeClock(page)
  await openPlanText(page, { ...emptyPlan, mixes, sections: [rooted], consultation: askedToday() })
  await handsReady(page)
  await options(page).first().tap()
  await page.locator("section.editor").getByText("All settings").tap()
  const later = page.getByLabel("Roots go on later by")
  expect(await later.inputValue()).toBe("0")
  await later.fill("15")
  await later.press("Enter")
  await page
    .getByText(/15.min later mix B on the roots to 30.mm/)
    .first()
    .waitFor()

  await goTo(page, "Timing")
  await page.clock.runFor(1000)
  await page.getByRole("button", { name: "Start at the chair" }).tap()
  await startClock(page)
  await page.clock.runFor(4 * minute)
  await tapAway(page.getByRole("button", { name: "Foil 1 is on" }), "tap")
  await page.locator(".tile").getByText("roots to come").waitFor()
  await page.clock.runFor(16 * minute)
  await page.getByRole("button", { name: /^Foil 1: roots on, mix B/ }).waitFor()
  await tapAway(page.getByRole("button", { name: "Roots of 1 are on" }), "tap")
  await page
    .locator(".tile")
    .getByText(/planned off in/)
    .waitFor()
  // What was tapped by mistake is taken back, and they are called for again.
  await page.getByRole("button", { name: "Undo tap" }).tap()
  await page.getByRole("button", { name: "Roots of 1 are on" }).waitFor()
  await page.clock.runFor(2 * minute)
  await page.getByRole("button", { name: /^Foil 1: roots on, mix B, 3:0\d late/ }).waitFor()
  await tapAway(page.getByRole("button", { name: "Roots of 1 are on" }), "tap")
  await page.clock.runFor(30 * minute)
  await page.getByRole("button", { name: /^Foil 1: (planned off|off now)/ }).waitFor()
  await page.getByRole("button", { name: "Rinse now" }).tap()
  await tapAway(page.getByRole("button", { name: "End the service" }), "tap")
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  await page.getByRole("button", { name: "Leave" }).tap()

  await goTo(page, "Sheets")
  await page.getByRole("radio", { name: "Record card", exact: true }).check()
  await page.locator(".sheet svg, .small-page svg").first().waitFor()
  const saved = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save PDF" }).tap()
  const text = await readPdfText(readFileSync(await (await saved).path()))
  expect(text).toMatch(/roots on 18.min after the ends/)
  expect(problems).toEqual([])
  await close()
})
