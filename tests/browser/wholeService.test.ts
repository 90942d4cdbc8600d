import type { Locator, Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, startClock, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000
const finger = { ...portrait, hasTouch: true }

async function sitDown(page: Page) {
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await page.getByRole("button", { name: "Start at the chair" }).tap()
  await startClock(page)
}

/** Everything that is asked for at this minute, in the order of the calls. */
const asked = (page: Page): Locator[] => [
  page.locator(".call .touch").filter({ hasText: /^Off \d+$/ }),
  page.locator(".call.due").getByRole("button", { name: /^Carry on/ }),
  page.locator(".call.due .call-words").filter({ hasText: /fresh bowl|Toner|melt/ }),
]

it("takes a whole service of eleven foils in at most 60 taps", { timeout: 240_000 }, async () => {
  const { page, problems, close } = await visit(finger)
  await takeClock(page)
  const plan = busyPlan(40)
  const foils = plan.sections.filter(({ kind }) => kind !== "left-out").slice(0, 11)
  await openPlanText(page, { ...plan, sections: foils, consultation: askedToday() })
  await sitDown(page)
  // To the chair, and the start.
  let taps = 2
  const tap = async (what: Locator) => {
    await what.first().tap()
    taps += 1
    await page.clock.runFor(1100)
  }
  const on = page.getByRole("button", { name: /^Foil \d+ is on$/ })
  const tonerOn = page.getByRole("button", { name: /^(Root melt|Toner).* on\b/ })
  const end = page.getByRole("button", { name: "End the service" })
  const over = page.getByRole("heading", { name: "Weigh what is left" })
  for (let min = 0; min < 240 && !(await over.isVisible()); min++) {
    await page.clock.runFor(minute)
    for (let left = true; left; ) {
      left = false
      for (const what of asked(page))
        if ((await what.count()) > 0) {
          await tap(what)
          left = true
          break
        }
    }
    if ((await on.count()) > 0) {
      if (min % 2 === 0) await tap(on)
    } else if ((await tonerOn.count()) > 0) await tap(tonerOn)
    else if ((await page.locator(".tile, .toner-on").count()) === 0 && (await end.count()) > 0) await tap(end)
  }
  await over.waitFor()
  expect(taps).toBeLessThanOrEqual(60)
  expect(problems).toEqual([])
  await close()
})

it("does nothing at a second touch on the same spot within a second, and says so", async () => {
  const { page, problems, close } = await visit(finger)
  await takeClock(page)
  await sitDown(page)
  await page.clock.runFor(2000)
  const first = page.getByRole("button", { name: "Foil 1 is on" })
  const box = await first.boundingBox()
  if (!box) throw new Error("no button for foil 1")
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.touchscreen.tap(x, y)
  await page.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  await page.touchscreen.tap(x, y)
  await page.locator(".said").getByText("Second tap in the same place within a second: ignored.").waitFor()
  expect(await page.locator(".tile").count()).toBe(1)
  expect(problems).toEqual([])
  await close()
})

it("acts on burning at its tap: the steps open, the foil is named, the record keeps it", async () => {
  const { page, problems, close } = await visit(finger)
  await takeClock(page)
  await sitDown(page)
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Foil 1 is on" }).tap()
  await page.clock.runFor(2000)
  await page.locator(".tile").first().tap()
  await page.getByRole("button", { name: "Burning" }).tap()
  await page.getByRole("heading", { name: "Burning scalp or skin" }).waitFor()
  await page.getByText("Take off what lies there now.").waitFor()
  await page
    .getByRole("region", { name: "Time log" })
    .getByText(/Burning scalp or skin \(Foil 1\)$/)
    .waitFor()
  await page.getByRole("button", { name: "Back to the clock" }).tap()
  await page.locator(".call.danger").getByText("Foil 1: off now, a check said stop").waitFor()
  expect(problems).toEqual([])
  await close()
})
