import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { sitDown, tapAway } from "../support/chair"
import { goTo, options } from "../support/screen"

// The browser's own sound and wake lock, not stand-ins: Chromium grants both to a page of this machine.
beforeAll(openBrowser)
afterAll(closeBrowser)

type Heard = { contexts: AudioContext[]; locks: WakeLockSentinel[]; peak: number }

/** Listens in on every AudioContext and wake lock the page makes; they work as they always do. */
async function listenIn(page: Page) {
  await page.addInitScript(() => {
    const heard: Heard = { contexts: [], locks: [], peak: 0 }
    Object.assign(globalThis, { heard })
    const samples = new Float32Array(2048)
    globalThis.AudioContext = class extends globalThis.AudioContext {
      ear = this.createAnalyser()
      constructor() {
        super()
        heard.contexts.push(this)
        setInterval(() => {
          this.ear.getFloatTimeDomainData(samples)
          heard.peak = Math.max(heard.peak, ...samples.map(Math.abs))
        }, 10)
      }
    }
    const connect = AudioNode.prototype.connect as (to: AudioNode) => AudioNode
    AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode) {
      if (to instanceof AudioDestinationNode && "ear" in this.context)
        connect.call(this, this.context.ear as AnalyserNode)
      return connect.call(this, to)
    } as typeof AudioNode.prototype.connect
    const request = navigator.wakeLock.request.bind(navigator.wakeLock)
    navigator.wakeLock.request = async (type) => {
      const lock = await request(type)
      heard.locks.push(lock)
      return lock
    }
  })
  await page.reload()
}

const locksHeld = (page: Page) =>
  page.evaluate(
    () => (globalThis as unknown as { heard: Heard }).heard.locks.filter(({ released }) => !released).length,
  )

/** The loudest that has come out since the page was loaded, 0 to 1. */
const loudest = (page: Page) => page.evaluate(() => (globalThis as unknown as { heard: Heard }).heard.peak)

it("keeps the real screen awake while a service runs, and lets it sleep after", async () => {
  const { page, problems, close } = await visit()
  await listenIn(page)
  await options(page).first().waitFor()
  expect(await locksHeld(page)).toBe(0)
  await sitDown(page)
  await expect.poll(() => locksHeld(page)).toBe(1)
  await page.getByRole("button", { name: "Foil 1 is on" }).click()
  await page.getByRole("button", { name: /^Leave/ }).click()
  await goTo(page, "Placement")
  expect(await locksHeld(page)).toBe(1) // under every screen
  await page.getByRole("button", { name: "To the chair" }).click()
  await page.getByRole("button", { name: /^Rinse now/ }).click()
  await page.getByRole("button", { name: "Rinse all" }).click()
  await tapAway(page.getByRole("button", { name: "End the service" }))
  await expect.poll(() => locksHeld(page)).toBe(0)
  expect(problems).toEqual([])
  await close()
})

it("sounds a call through the real audio of the device, and is silent before it", async () => {
  const { page, problems, close } = await visit()
  await listenIn(page)
  await options(page).first().waitFor()
  await sitDown(page)
  const state = () =>
    page.evaluate(() =>
      (globalThis as unknown as { heard: Heard }).heard.contexts.map((context) => context.state),
    )
  await expect.poll(state).toEqual(["running"])
  await page.getByRole("button", { name: "Foil 1 is on" }).click()
  await page.locator(".elapsed").getByText("0:02").waitFor()
  expect(await loudest(page)).toBe(0)
  // The device's clock runs on by ten minutes, as after sleep: the first check is due.
  await page.evaluate(() => {
    const now = Date.now
    Date.now = () => now() + 605_000
  })
  await page.getByRole("button", { name: /^Foil 1: check now/ }).waitFor()
  await expect.poll(() => loudest(page)).toBeGreaterThan(0.05)
  expect(problems).toEqual([])
  await close()
})
