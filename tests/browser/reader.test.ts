import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { askedToday, openPlanText, sitDown, startClock } from "../support/chair"
import { framePlan } from "../support/framePlan"
import { goTo, options, startNewPlan, tabTo } from "../support/screen"

/** What a person hears who does not see the screen, and where the focus goes when what had it is gone. */

beforeAll(openBrowser)
afterAll(closeBrowser)

const focused = (page: Page) =>
  page.evaluate(() => {
    const { activeElement: at } = document
    return at === document.body || !at ? null : (at.getAttribute("aria-label") ?? at.textContent?.trim())
  })
const said = (page: Page) => page.locator("output[aria-live]").last().textContent()

it("tells the tool a key takes, the foil a tap takes, and the same deed twice", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await page.locator("body").press("w")
  expect(await said(page)).toBe("Weave")
  await page.locator("body").press("v")
  expect(await said(page)).toBe("Select")

  const spoken = await page.evaluateHandle(() => {
    const told: string[] = []
    for (const region of document.querySelectorAll("output[aria-live]"))
      new MutationObserver(() => told.push(region.textContent ?? "")).observe(region, {
        childList: true,
        subtree: true,
        characterData: true,
      })
    return told
  })
  await tabTo(page, /^Foils in order/)
  await page.keyboard.press("Home")
  await page.keyboard.press("Control+c")
  await page.keyboard.press("Control+c")
  await expect.poll(() => spoken.jsonValue()).toEqual(["1 section copied", "1 section copied"])
  expect(problems).toEqual([])
  await close()
})

it("names the fields of each mix by its mix", async () => {
  const { page, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  const mix = (letter: string) => page.getByRole("group", { name: `mix ${letter}`, exact: true })
  await mix("B").locator("summary").first().click()
  expect(await mix("B").getByRole("group", { name: "Developer", exact: true }).count()).toBe(1)
  expect(await mix("A").getByRole("group", { name: "Developer", exact: true }).count()).toBe(0)
  await close()
})

it("keeps the focus where the hand was when a button goes with its deed", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await options(page).nth(1).click()
  await page.getByRole("button", { name: "Thicker" }).press("Enter")
  await page.getByRole("button", { name: /^Undo: / }).press("Enter")
  await page.getByRole("button", { name: "Undo", exact: true, disabled: true }).waitFor()
  await expect.poll(() => focused(page)).not.toBe(null)
  await page.keyboard.press("Tab")
  expect(await focused(page)).toMatch(/^Redo/)

  await page.getByRole("button", { name: /Plans…/ }).waitFor()
  await goTo(page, "Timing")
  await page.getByRole("button", { name: "Start at the chair" }).press("Enter")
  await page.getByRole("button", { name: "Leave" }).waitFor()
  await expect.poll(() => focused(page)).not.toBe(null)
  await startClock(page)
  await page.getByRole("button", { name: "Foil 1 is on" }).press("Enter")
  await page.locator(".tile").press("Enter")
  await page.getByRole("button", { name: "Checked" }).press("Enter")
  await page.locator(".look-pad").waitFor()
  await expect.poll(() => focused(page)).not.toBe(null)
  await page.keyboard.press("Tab")
  expect(await focused(page)).toBe("Half a level darker")
  await page.getByRole("button", { name: "Moist" }).press("Enter")
  await page.getByRole("button", { name: "Save check" }).press("Enter")
  await page.locator(".look-pad").waitFor({ state: "detached" })
  await expect.poll(() => focused(page)).not.toBe(null)
  await page.getByRole("button", { name: /^Rinse now/ }).press("Enter")
  await page.getByRole("button", { name: "Not yet" }).waitFor()
  await expect.poll(() => focused(page)).not.toBe(null)
  expect(await focused(page)).toBe("Next")
  await tabTo(page, /^Not yet$/, 6)
  expect(problems).toEqual([])
  await close()
})

it("says in words what the large view shows", async () => {
  const { page, close } = await visit()
  await options(page).first().waitFor()
  await expect
    .poll(() =>
      page
        .getByRole("region", { name: "Front" })
        .getByText(/foils?:/)
        .textContent(),
    )
    .toBe("9 foils: 4 right, 4 left, 1 centre")
  await page.getByRole("button", { name: /Back: make it the large view/ }).press("Enter")
  expect(await focused(page)).toBe("Back")
  await page.getByText("No foils on this side of the head").waitFor({ state: "attached" })
  await close()
})

it("keeps the focus by the list when the last foil goes, and at the chair when the clock starts", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await startNewPlan(page)
  await tabTo(page, /Add by typing/)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Add slice/)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Foils in order/, 80, "Shift+Tab")
  await page.keyboard.press("Delete")
  expect(await focused(page)).toMatch(/^Foils/)

  await openPlanText(page, { ...framePlan, consultation: askedToday() })
  await sitDown(page)
  await page.locator(".next-foil").first().waitFor()
  expect(await focused(page)).not.toBe(null)
  expect(problems).toEqual([])
  await close()
})
