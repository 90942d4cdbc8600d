import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, putOn, startClock, takeClock, tapAway } from "../support/chair"
import { goTo, options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000
const press = (page: Page, name: RegExp | string) => page.getByRole("button", { name }).first().click()
const bar = (page: Page) => page.getByRole("complementary", { name: "Service going on" })
const spoken = (page: Page) => page.locator("output[aria-live]").last().textContent()

/** What the device was asked for: every tone, vibration and lock of the screen, counted. */
type Asked = { tones: number[]; shakes: number[][]; locks: number; released: number }
declare global {
  var device: Asked
}

/** A device whose sound, motor and screen only write down what they are asked for; its clock goes by hand. */
async function withDevice(page: Page) {
  await page.addInitScript(() => {
    globalThis.device = { tones: [], shakes: [], locks: 0, released: 0 }
    class Tone {
      frequency = { value: 0 }
      connect(next: object) {
        return next
      }
      start() {
        globalThis.device.tones.push(this.frequency.value)
      }
      stop() {}
    }
    class Sound {
      state = "running"
      currentTime = 0
      destination = {}
      resume = async () => {}
      createOscillator = () => new Tone()
      createGain = () => ({
        gain: { setValueAtTime() {}, exponentialRampToValueAtTime() {} },
        connect: (next: object) => next,
      })
    }
    Object.defineProperty(globalThis, "AudioContext", { value: Sound })
    Object.defineProperty(navigator, "vibrate", {
      value: (pattern: number[]) => globalThis.device.shakes.push(pattern),
    })
    Object.defineProperty(navigator, "wakeLock", {
      value: {
        request: async () => {
          globalThis.device.locks += 1
          const release = async () => {
            globalThis.device.released += 1
          }
          return { release }
        },
      },
    })
  })
  await takeClock(page)
  await page.reload()
  await options(page).first().waitFor()
}
const asked = (page: Page): Promise<Asked> => page.evaluate(() => globalThis.device)

async function sitDown(page: Page) {
  await goTo(page, "Timing")
  await press(page, "Start at the chair")
  await startClock(page)
}

it("sounds, shakes and keeps the screen awake, and lets it sleep when the service has ended", async () => {
  const { page, problems, close } = await visit()
  await withDevice(page)
  await sitDown(page)
  expect((await asked(page)).locks).toBe(1)
  await press(page, "Foil 1 is on")
  await page.clock.runFor(4 * minute + 2000)
  expect(await asked(page)).toMatchObject({ tones: [660], shakes: [[160]] }) // check soon: once
  await page.clock.runFor(minute)
  expect((await asked(page)).tones).toEqual([660, 880, 880]) // check now: twice
  await page.clock.runFor(40 * minute)
  const late = (await asked(page)).tones.filter((hertz) => hertz === 990).length
  expect(late).toBeGreaterThanOrEqual(4) // past its limit
  await page.clock.runFor(16_000)
  expect((await asked(page)).tones.filter((hertz) => hertz === 990).length).toBe(late + 4) // and again
  await press(page, /^Rinse now/)
  await tapAway(page.getByRole("button", { name: "End the service" }))
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  expect((await asked(page)).released).toBe(1)
  expect(problems).toEqual([])
  await close()
})

it.each([
  ["tablet", undefined],
  ["phone", phone],
] as const)("goes on calling on every screen of a %s, with a bar that leads back", async (_, size) => {
  const { page, problems, close } = await visit(size)
  await withDevice(page)
  await sitDown(page)
  await press(page, "Foil 1 is on")
  await press(page, /^Leave/)
  for (const screen of ["Client", "Placement", "Formula", "Timing", "Sheets"] as const) {
    await goTo(page, screen)
    await bar(page)
      .getByText(/^Foil 1: check in/)
      .waitFor()
    const { height, width } = (await bar(page).getByRole("button").boundingBox()) ?? { height: 0, width: 0 }
    expect(Math.min(height, width)).toBeGreaterThanOrEqual(44)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
  }
  await goTo(page, "Placement")
  await page.clock.runFor(5 * minute + 2000)
  await bar(page).getByText("Foil 1: check now").waitFor()
  expect(await spoken(page)).toBe("Foil 1: check now.")
  expect((await asked(page)).tones).toContain(880)
  await bar(page).getByRole("button", { name: "To the chair" }).click()
  await page.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("follows onto another client's plan and through a reload there, and finds its own plan again", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await sitDown(page)
  await press(page, "Foil 1 is on")
  await press(page, /^Leave/)
  await goTo(page, "Placement")
  await startNewPlan(page)
  await bar(page)
    .getByText(/^Foil 1: check in/)
    .waitFor()
  await page.reload()
  await bar(page)
    .getByText(/^Foil 1: check in/)
    .waitFor()
  await bar(page).getByRole("button", { name: "To the chair" }).click()
  await page.getByRole("button", { name: "Foil 2 is on" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("writes the red button down before the start and after the end, with the plan", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await press(page, "Start at the chair")
  await press(page, "Something is wrong")
  await press(page, "Product in the eye")
  const log = page.getByRole("region", { name: "Time log" })
  await log.getByText(/Product in the eye$/).waitFor()
  await press(page, "Back to the clock")
  await startClock(page)
  await press(page, "Foil 1 is on")
  await press(page, /^Rinse now/)
  await press(page, "Rinse all")
  await tapAway(page.getByRole("button", { name: "End the service" }))
  await press(page, "Something is wrong")
  await press(page, "Fainting")
  await log.getByText(/Fainting$/).waitFor()
  await press(page, "Back to the clock")
  await press(page, /^Leave/)
  await page.reload()
  await goTo(page, "Timing")
  await page.getByRole("heading", { name: "What went wrong" }).waitFor()
  await page.getByText(/Product in the eye$/).waitFor()
  await page.getByText(/Fainting$/).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("is run by keys alone, from the start to the end", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  const go = async (name: RegExp) => {
    await tabTo(page, name)
    await page.keyboard.press("Enter")
  }
  await go(/^Start at the chair/)
  await startClock(page)
  await go(/^Foil 1 is on/)
  await go(/^Foil 1\s*1\s*0 min|^Foil 10 min/)
  await go(/^Checked/)
  for (const answer of [/^OK/, /^Limp/, /^Warm/, /^Moist/]) await go(answer)
  await go(/^Save check/)
  await go(/^Rinse now/)
  await go(/^Rinse all/)
  await go(/^End the service/)
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("takes a finger's taps on a phone: on, looked, off, heat and its end", async () => {
  const { page, problems, close } = await visit(phone)
  await options(page).first().waitFor()
  const plan = busyPlan(40)
  const behind = plan.sections.filter((each) => each.kind === "slice").slice(-3)
  await openPlanText(page, {
    ...plan,
    name: "Slices behind",
    sections: behind,
    consultation: askedToday(),
  })
  await goTo(page, "Timing")
  await page.getByRole("button", { name: "Change" }).tap()
  await page.getByRole("radio", { name: "10 min", exact: true }).tap()
  await page.getByRole("button", { name: "Start at the chair" }).tap()
  await startClock(page)
  for (const { mapNumber } of behind) await putOn(page, mapNumber, "tap")
  await tapAway(page.getByRole("button", { name: /^Heat on/ }), "tap")
  await tapAway(page.getByRole("button", { name: /^Heat off/ }), "tap")
  await page.getByRole("button", { name: /check now/ }).waitFor() // heat ends with a look
  await page.locator(".tile").first().tap()
  await page.getByRole("button", { name: "Off", exact: true }).tap()
  expect(await page.locator(".tile").count()).toBe(2)
  await page.getByRole("button", { name: "Undo tap" }).tap()
  await page.locator(".tile").nth(2).waitFor()
  expect(await axeFaults(page)).toEqual([])
  await page.getByRole("button", { name: /^Leave/ }).tap()
  expect(await axeFaults(page)).toEqual([])
  expect(problems).toEqual([])
  await close()
})
