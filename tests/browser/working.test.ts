import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, sizes, tablet, visit } from "../support/browser"
import { fingerOn } from "../support/finger"
import { onLargeView, options, startNewPlan, tabTo, takeTool } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const said = (page: Page) => page.getByRole("status").last().textContent()
const groups = (page: Page) => page.getByRole("listbox", { name: /^Foils/ }).getByRole("group")
const numbers = (page: Page) => options(page).locator(".number").allTextContents()

async function divide(page: Page, name: RegExp) {
  await page.getByText("Divide into sections").click()
  await page.getByRole("button", { name }).click()
  await page.getByRole("heading", { name: /sections/ }).waitFor()
}

async function enlarge(page: Page, view: string) {
  await page
    .locator(".strip")
    .getByRole("button", { name: new RegExp(`^${view}`) })
    .click()
  await page.locator(".pane.large").getByRole("heading", { name: view }).waitFor()
  await page.locator(".pane.large [data-hands=ready]").waitFor()
}

it("divides in one tap, groups the list, trims what crosses, numbers by section, and takes each back", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).nth(10).waitFor()
  const before = await numbers(page)
  await divide(page, /^Four sections Centre front/)
  expect(await groups(page).count()).toBe(2)
  expect(await groups(page).first().textContent()).toMatch(/I Front right/)
  // The weave and its veil at centre front lie astride the profile parting; either side may have most of them.
  const weave = options(page).filter({ hasText: "Weave" })
  expect(await weave.textContent()).toMatch(/× crosses into front/)
  await weave.click()
  await page.locator(".crossing-note").getByRole("button", { name: /^Trim/ }).click()
  expect(await said(page)).toBe("Trim foil 9 to the section of the head")
  expect(await weave.textContent()).not.toMatch(/crosses into/)
  await page.getByRole("button", { name: /^Undo/ }).click()
  expect(await weave.textContent()).toMatch(/crosses into/)
  await page
    .locator(".crossing-note")
    .getByRole("button", { name: /^Split/ })
    .click()
  expect(await options(page).filter({ hasText: "Weave" }).count()).toBe(2)
  await page.getByRole("button", { name: /^Undo/ }).click()
  await weave.click()
  await page.locator(".crossing-note").getByRole("button", { name: /^Let/ }).click()
  expect(await weave.textContent()).not.toMatch(/crosses into/)

  await page.getByRole("button", { name: /Work front left earlier/ }).click()
  expect(await groups(page).first().textContent()).toMatch(/I Front left/)
  await page.getByRole("button", { name: "Number by section and side" }).click()
  const counted = (await numbers(page)).map(Number).filter(Number.isFinite)
  expect(counted).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
  for (let i = 0; i < 4; i++) await page.getByRole("button", { name: /^Undo/ }).click()
  expect(await groups(page).count()).toBe(0)
  expect(await numbers(page)).toEqual(before)
  expect(problems).toEqual([])
  await close()
})

it("draws a dividing parting with the pointer, moves it, and removes it", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await enlarge(page, "Scalp laid flat")
  await takeTool(page, "Divide")
  await page.locator(".tools").getByRole("radio", { name: "Straight" }).check()
  const drag = async (from: readonly [number, number], to: readonly [number, number]) => {
    await page.mouse.move(...(await onLargeView(page, "unrolled", ...from)))
    await page.mouse.down()
    await page.mouse.move(...(await onLargeView(page, "unrolled", ...to)), { steps: 8 })
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 30))))
    await page.mouse.up()
  }
  await drag([0, 90], [0, -40])
  expect(await said(page)).toBe("Draw a section line")
  await page.getByRole("heading", { name: "2 sections" }).waitFor()
  expect(await page.getByLabel("Name of section I", { exact: true }).inputValue()).toBe("Right side")

  await takeTool(page, "Select")
  await drag([0, 30], [18, 30])
  expect(await said(page)).toBe("Move the section line")
  await page.getByText("Section lines", { exact: true }).click()
  await page.getByRole("button", { name: "To the client’s right" }).click()
  await page.getByRole("button", { name: "Remove", exact: true }).click()
  await page.getByText("Divide into sections").waitFor()
  expect(problems).toEqual([])
  await close()
})

it("is drawn with a finger on a phone, and chosen with a tap", async () => {
  const { page, problems, close } = await visit(phone)
  await options(page).first().waitFor()
  await enlarge(page, "Top")
  await takeTool(page, "Divide")
  await page.locator(".tools").getByRole("radio", { name: "Straight" }).check()
  const finger = await fingerOn(page)
  await finger.down(await onLargeView(page, "top", -50, 0))
  for (const x of [-30, -10, 10, 30, 50]) await finger.move(await onLargeView(page, "top", x, 0))
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 30))))
  await finger.up()
  await page.getByRole("heading", { name: "2 sections" }).waitFor()
  await page.getByText("Divide further").tap()
  await page.getByRole("button", { name: /^Centre line/ }).tap()
  await page.getByRole("heading", { name: "4 sections" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("refuses with a cure a stroke that divides nothing", async () => {
  const { page, close } = await visit(tablet)
  await options(page).first().waitFor()
  await takeTool(page, "Divide")
  await page.locator(".tools").getByRole("radio", { name: "Freehand" }).check()
  const [from, to] = [await onLargeView(page, "front", -15, 108), await onLargeView(page, "front", 12, 110)]
  await page.mouse.move(...from)
  await page.mouse.down()
  await page.mouse.move(...to, { steps: 6 })
  await page.mouse.up()
  expect(await page.locator("output.refusal").textContent()).toMatch(
    /draw it on to the hairline or to another/,
  )
  await close()
})

it("does the same by keyboard alone", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).nth(10).waitFor()
  await page.getByText("Divide into sections").waitFor()
  await tabTo(page, /Divide into sections/)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Four sections ?Centre/)
  await page.keyboard.press("Enter")
  await page.getByRole("heading", { name: /sections/ }).waitFor()
  await tabTo(page, /^↓ ?Work front right later/, 160)
  await page.keyboard.press("Enter")
  expect(await groups(page).first().textContent()).toMatch(/I Front left/)
  await tabTo(page, /Name of section II\b/, 160)
  await page.keyboard.press("Control+a")
  await page.keyboard.type("Parting side")
  await page.keyboard.press("Enter")
  expect(await said(page)).toBe("Rename front right to Parting side")
  await tabTo(page, /^Number by section/, 160)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Section lines/, 160)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Section line 1/, 160)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Towards the face/, 160)
  await page.keyboard.press("Enter")
  expect(await said(page)).toMatch(/^Move the section line towards the face|expected/)
  for (let i = 0; i < 3; i++) await page.keyboard.press("Control+z")
  expect(problems).toEqual([])
  await close()
})

describe.each(sizes)("on a %s", (_, size) => {
  it("is clean to axe and no wider than the page", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await divide(page, /^Four sections with a triangle/)
    await page.getByText("Section lines", { exact: true }).click()
    await page.getByRole("button", { name: /^Section line 1/ }).click()
    await page.getByText("Divide further").click()
    await page.getByRole("button", { name: /^Ear to ear/ }).waitFor()
    expect(await axeFaults(page)).toEqual([])
    await options(page).nth(1).click()
    await page.locator("#editor-title").waitFor({ state: "attached" })
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.viewport.width)
    expect(problems).toEqual([])
    await close()
  })
})
