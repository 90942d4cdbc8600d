import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, handsReady, openBrowser, portrait, visit } from "../support/browser"
import { askedToday, openPlanText, startClock, takeClock } from "../support/chair"
import { fingerOn } from "../support/finger"
import { readPdfText } from "../support/pdfText"
import { emptyPlan } from "../support/samples"
import { atRest, goTo, onLargeView, options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const touchTablet = { ...portrait, hasTouch: true }
const minute = 60_000

/** A finger through places of the page, px. */
async function stroke(page: Page, places: readonly (readonly [number, number])[]) {
  const finger = await fingerOn(page)
  const [first, ...more] = places
  await finger.down(first)
  for (const place of more) await finger.move(place)
  await finger.up()
}

it("is drawn and painted by finger, mixed, timed and printed, and is nowhere called a foil", async () => {
  const { page, problems, close } = await visit(touchTablet)
  await takeClock(page)
  await openPlanText(page, { ...emptyPlan, consultation: askedToday() })
  await handsReady(page)
  await page.locator(".tools").getByRole("radio", { name: "Paint", exact: true }).check()
  const places = [
    [-12, 88],
    [-24, 88],
    [-38, 85],
    [-50, 76],
  ] as const
  await stroke(page, await Promise.all(places.map(([x, y]) => onLargeView(page, "front", x, y))))
  await expect.poll(() => options(page).count()).toBe(1)
  await page.getByRole("heading", { name: /^1 panel/ }).waitFor()
  await options(page).first().tap()

  const editor = page.locator("section.editor")
  await editor.getByText("All settings").tap()
  const flat = page.locator(".painted-panel")
  await flat.scrollIntoViewIfNeeded()
  const box = await atRest(flat)
  const on = (across: number, down: number) =>
    [box.x + across * box.width, box.y + down * box.height] as const
  await stroke(page, [on(0.02, 0.3), on(0.25, 0.45), on(0.5, 0.6), on(0.75, 0.4), on(0.98, 0.25)])
  await page.getByText(/of the panel painted/).waitFor()
  expect(await page.getByRole("radio", { name: "Freehand" }).last().isChecked()).toBe(true)
  for (const [place, percent] of [
    [1, "30"],
    [5, "60"],
    [9, "25"],
  ])
    expect(await page.getByLabel(`Edge, place ${place} of 9`).inputValue()).toBe(percent)
  // By keys: the edge goes back to a V, and starts lower.
  await page.getByRole("group", { name: "Edge" }).getByRole("radio", { name: "V", exact: true }).check()
  const starts = page.getByLabel("Edge starts at")
  await starts.fill("40")
  await starts.press("Enter")
  // From 40 %, and on the mean half of 35 % lower.
  await page
    .getByText("43% of the panel painted")
    .or(page.getByText("42% of the panel painted"))
    .first()
    .waitFor()

  await goTo(page, "Formula")
  await page
    .getByText(/lies in the open air/)
    .first()
    .waitFor({ state: "attached" })
  await page.getByText(/1 panel uses mix A/).waitFor()
  await goTo(page, "Timing")
  await page.clock.runFor(1000)
  await page.getByRole("button", { name: "Start at the chair" }).waitFor()
  await page.getByRole("button", { name: "Start at the chair" }).tap()
  await page.getByText(/^1 panel, 1 bowl/).waitFor()
  await startClock(page)
  await page.clock.runFor(4 * minute)
  await page.getByRole("button", { name: "Panel 1 is on" }).tap()
  await page.clock.runFor(10 * minute)
  await page
    .getByText(/^Panel 1: check now/)
    .first()
    .waitFor()
  expect(await page.getByText(/Foil 1/).count()).toBe(0)
  await page.getByRole("button", { name: "Leave" }).tap()

  await goTo(page, "Sheets")
  for (const [sheet, words] of [
    ["Placement map", "Painted panels, scale 1 : 10"],
    ["Technique handout", "Lay the panel flat"],
  ] as const) {
    await page.getByRole("radio", { name: sheet, exact: true }).check()
    await page.locator(".sheet svg, .small-page svg").first().waitFor()
    const saved = page.waitForEvent("download")
    await page.getByRole("button", { name: "Save PDF" }).tap()
    const file = readFileSync(await (await saved).path())
    expect(await readPdfText(file)).toContain(words)
  }
  expect(problems).toEqual([])
  await close()
})

it("is added by keys and words alone, from its own tool key to its edge", async () => {
  const { page, problems, close } = await visit(portrait)
  await startNewPlan(page)
  await page.keyboard.press("p")
  expect(await page.locator(".tools").getByRole("radio", { name: "Paint", exact: true }).isChecked()).toBe(
    true,
  )
  await tabTo(page, /^Add by typing/)
  await page.keyboard.press("Enter")
  await page.getByRole("group", { name: "What" }).getByRole("radio", { name: "Painted panel" }).focus()
  await page.keyboard.press("Space")
  await tabTo(page, /^Add painted panel/)
  await page.keyboard.press("Enter")
  await page.getByRole("heading", { name: /^1 panel/ }).waitFor()
  await page.getByRole("listbox", { name: /^Foils/ }).focus()
  await page.keyboard.press("ArrowDown")
  await page.getByText("All settings").focus()
  await page.keyboard.press("Enter")
  await page.getByRole("group", { name: "Edge" }).getByRole("radio", { name: "W", exact: true }).focus()
  await page.keyboard.press("Space")
  const drops = page.getByLabel("Edge drops by")
  await drops.fill("30")
  await drops.press("Enter")
  // From 35 % of the length, and on the mean half of 30 % lower.
  await page.getByText("50% of the panel painted").first().waitFor()
  expect(problems).toEqual([])
  await close()
})
