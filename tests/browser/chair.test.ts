import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, sizes, tablet, visit } from "../support/browser"
import { putOn, startClock, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000
const press = (page: Page, name: RegExp | string) => page.getByRole("button", { name }).first().click()

async function sitDown(page: Page) {
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await press(page, "Start at the chair")
  await startClock(page)
}

/** Seconds that the clock of the service shows. */
async function secondsOf(page: Page) {
  const [minutes, seconds] = ((await page.locator(".elapsed").textContent()) ?? "").match(/\d+/g) ?? []
  return 60 * Number(minutes) + Number(seconds)
}
const untilSecond = (page: Page, second: number) =>
  expect.poll(() => secondsOf(page), { timeout: 20_000 }).toBeGreaterThanOrEqual(second)

it("runs a service: taps, undo, a look, off before on, the end, and planned against real", async () => {
  const { page, problems, close } = await visit()
  await takeClock(page)
  await sitDown(page)
  await page.clock.runFor(4 * minute)
  await press(page, "Foil 1 is on")
  await page.clock.runFor(2 * minute)
  await putOn(page, 2)
  await press(page, "Undo tap")
  await page.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  await page.clock.runFor(8 * minute)
  await page.getByRole("button", { name: /^Foil 1: check now/ }).click()
  await press(page, "Checked")
  expect(await page.getByRole("button", { name: "Save check" }).isDisabled()).toBe(true)
  for (const group of ["Stretch", "Scalp"])
    await page.getByRole("group", { name: group }).getByRole("button", { name: "OK" }).click()
  await press(page, "Moist")
  await press(page, "Save check")
  expect(await page.getByRole("button", { name: /check now/ }).count()).toBe(0)
  await page.locator(".tile").first().click()
  await page.getByRole("button", { name: "Off", exact: true }).click()
  await page.getByText("No foils on.").waitFor()
  await press(page, "End the service")
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  await press(page, "Leave")
  const row = page.getByRole("region", { name: "Planned and actual times" }).getByRole("row").nth(1)
  expect((await row.getByRole("cell").allInnerTexts()).map((text) => text.trim())).toEqual([
    "4",
    "4",
    "27",
    "10",
  ])
  expect(problems).toEqual([])
  await close()
})

it("calls a foil past max time out on the red button's page too, and keeps the time of each step", async () => {
  const { page, problems, close } = await visit()
  await takeClock(page)
  await sitDown(page)
  await press(page, "Foil 1 is on")
  await page.clock.runFor(46 * minute)
  await page.getByRole("button", { name: /^Foil 1: off now/ }).waitFor()
  await press(page, "Something is wrong")
  await press(page, "Burning scalp")
  await page.getByRole("button", { name: /^Done: Rinse with plenty/ }).click()
  await page
    .getByRole("region", { name: "Time log" })
    .getByText(/Burning scalp or skin: Rinse with plenty/)
    .waitFor()
  const called = async () => {
    await page.clock.runFor(16_000) // an urgent call is said again before that
    return page.locator("output[aria-live]").last().textContent()
  }
  await expect.poll(called, { timeout: 10_000 }).toContain("Foil 1: off now")
  expect(problems).toEqual([])
  await close()
})

it("goes on after a reload, and after the device's clock was set back two hours", async () => {
  const { page, problems, close } = await visit()
  await sitDown(page)
  await press(page, "Foil 1 is on")
  await untilSecond(page, 3)
  await page.reload()
  await page.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  expect(await secondsOf(page)).toBeGreaterThanOrEqual(3)
  await page.evaluate(() => {
    const now = Date.now.bind(Date)
    Date.now = () => now() - 2 * 3_600_000
  })
  await page
    .getByText("The device’s clock was set back by 2 hours. The service’s clock goes on.")
    .first()
    .waitFor()
  await untilSecond(page, (await secondsOf(page)) + 1)
  expect(problems).toEqual([])
  await close()
})

it("knows how far its clock had come when the page has crashed and the device's clock was set back", async () => {
  const { page, close } = await visit()
  await sitDown(page)
  await press(page, "Foil 1 is on")
  await untilSecond(page, 5)
  const other = await page.context().newPage()
  await other.addInitScript(() => {
    const now = Date.now.bind(Date)
    Date.now = () => now() - 2 * 3_600_000
  })
  const crashed = page.waitForEvent("crash")
  const inspector = await page.context().newCDPSession(page)
  void inspector.send("Page.crash").catch(() => {})
  await crashed
  await other.goto(page.url())
  await other.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  expect(await secondsOf(other)).toBeGreaterThanOrEqual(4)
  await other
    .getByText(/was set back by at least 2 hours while this page was closed/)
    .first()
    .waitFor()
  await close()
})

/** A second window of the visitor, which watches the service. */
async function watchingWindow(page: Page): Promise<Page> {
  const other = await page.context().newPage()
  await other.goto(page.url())
  await other.getByText("This service is controlled in another window.").first().waitFor()
  return other
}

it("has one writer: a second window watches, and takes over when asked", async () => {
  const { page, problems, close } = await visit()
  await sitDown(page)
  const other = await watchingWindow(page)
  await press(other, "Foil 1 is on")
  await other
    .getByText("Another window controls this service. Tap “Control it here” first.")
    .first()
    .waitFor()
  await press(page, "Foil 1 is on")
  await other.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  await press(other, "Control it here")
  await page.getByText("This service is controlled in another window.").first().waitFor()
  await press(other, "Foil 2 is on")
  await page.getByRole("button", { name: "Foil 3 is on" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("keeps a burning that is tapped in a window that only watched", async () => {
  const { page, problems, close } = await visit()
  await sitDown(page)
  await press(page, "Foil 1 is on")
  const other = await watchingWindow(page)
  await other.locator(".tile").first().click()
  await press(other, "Burning")
  await other.getByRole("heading", { name: "Burning scalp or skin" }).waitFor()
  await press(other, "Back to the clock")
  await other.locator(".call.danger").getByText("Foil 1: off now, a check said stop").waitFor()
  expect(problems).toEqual([])
  await close()
})

it("goes on in the second window when the first is closed", async () => {
  const { page, problems, close } = await visit()
  await sitDown(page)
  await press(page, "Foil 1 is on")
  const other = await watchingWindow(page)
  await page.close()
  await other
    .getByText("This service is controlled in another window.")
    .first()
    .waitFor({ state: "detached" })
  await press(other, "Foil 2 is on")
  await other.getByRole("button", { name: "Foil 3 is on" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("holds its own chair again after every reload", async () => {
  const { page, problems, close } = await visit()
  await sitDown(page)
  for (let i = 1; i <= 5; i++) {
    await press(page, `Foil ${i} is on`)
    await page.reload()
    await page.getByRole("button", { name: `Foil ${i + 1} is on` }).waitFor()
  }
  expect(problems).toEqual([])
  await close()
})

describe.each(sizes)("on a %s", (_, size) => {
  it("nothing to touch is smaller than a gloved thumb, and nothing is wider than the page", async () => {
    const { page, close } = await visit(size)
    await sitDown(page)
    await press(page, "Foil 1 is on")
    const small = () =>
      page.evaluate(() =>
        [...document.querySelectorAll("main.chair button")]
          .filter((each) => each.checkVisibility())
          .map((each) => each.getBoundingClientRect())
          .filter(({ width, height }) => width < 64 || height < 64),
      )
    await page.locator(".tile").first().click()
    expect(await small()).toEqual([])
    await press(page, "Checked")
    await page.locator(".look-pad").waitFor()
    expect(await small()).toEqual([])
    // The pad has the screen to itself where it is narrow: what is next would push it out of sight.
    expect(await page.locator(".next").isVisible()).toBe(size === tablet)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await close()
  })
})

it("starts no other service of the plan on a day that nothing was asked", async () => {
  const { page, problems, close } = await visit()
  await takeClock(page)
  await sitDown(page)
  await press(page, "End the service")
  const again = page.getByRole("button", { name: "Start another service of this plan" })
  await again.and(page.locator(":enabled")).waitFor()
  await page.clock.fastForward(26 * 60 * minute)
  await again.and(page.locator(":disabled")).waitFor()
  await page.getByRole("button", { name: "Asked aloud: no to all of these" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("does nothing at a second touch on the spot of the red button, and says so on its page", async () => {
  const { page, problems, close } = await visit()
  await takeClock(page)
  await sitDown(page)
  await press(page, "Something is wrong")
  const kind = page.getByRole("button", { name: "Burning scalp" })
  const box = await kind.boundingBox()
  if (!box) throw new Error("no button for burning")
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.click(x, y)
  await page.getByRole("heading", { name: "Burning scalp or skin" }).waitFor()
  await page.mouse.click(x, y)
  await page.locator(".said").getByText("Second tap in the same place within a second: ignored.").waitFor()
  expect(problems).toEqual([])
  await close()
})
