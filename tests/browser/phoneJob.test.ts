import { readFileSync } from "node:fs"
import type { Locator, Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, portrait, visit } from "../support/browser"
import { startClock, takeClock } from "../support/chair"
import { fingerOn } from "../support/finger"
import { hairlineStroke } from "../support/hairlineStroke"
import { readPdfText } from "../support/pdfText"
import { atRest, onLargeView, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

type Place = readonly [number, number]

/** What this person has in the hand: it taps something that can be seen, and draws through places of the screen. */
type Hand = { tap(target: Locator): Promise<void>; draw(places: readonly Place[]): Promise<void> }

async function fingerHand(page: Page): Promise<Hand> {
  const finger = await fingerOn(page)
  return {
    tap: (target) => target.tap(),
    draw: async ([first, ...more]) => {
      await finger.down(first)
      for (const place of more) await finger.move(place)
      await finger.up()
    },
  }
}

/** A pen as the browser itself reports one. It waits for what it taps, and taps it where it lies once it is still. */
async function penHand(page: Page): Promise<Hand> {
  const session = await page.context().newCDPSession(page)
  const send = (type: "mousePressed" | "mouseMoved" | "mouseReleased", [x, y]: Place) =>
    session.send("Input.dispatchMouseEvent", {
      ...{ type, x, y, button: "left", buttons: type === "mouseReleased" ? 0 : 1 },
      ...{ clickCount: 1, pointerType: "pen" },
    })
  return {
    tap: async (target) => {
      await target.click({ trial: true })
      const { x, y, width, height } = await atRest(target)
      const at = [x + width / 2, y + height / 2] as const
      await send("mousePressed", at)
      await send("mouseReleased", at)
    },
    draw: async (places) => {
      await send("mousePressed", places[0])
      for (const place of places.slice(1)) await send("mouseMoved", place)
      await send("mouseReleased", places[places.length - 1])
    },
  }
}

const lowPhone = { ...phone, viewport: { width: 390, height: 664 } }
const hands = [
  ["phone by finger", phone, fingerHand],
  ["phone with its bars by finger", lowPhone, fingerHand],
  ["tablet standing up by pen", { ...portrait, hasTouch: true }, penHand],
] as const

/** All that can hurt, asked and looked at by hand: age, scalp, the questions asked alone, the others at once, the hair. */
async function askAll(page: Page, hand: Hand) {
  const chip = (group: string | RegExp, word: string) =>
    hand.tap(page.getByRole("group", { name: group }).getByLabel(word, { exact: true }))
  await page.getByLabel("Age, not asked", { exact: true }).fill("34")
  await page.keyboard.press("Enter")
  await chip("Scalp", "Calm")
  const breathing = [/^Ever had wheezing/, /^Asthma/, /^Does the person mixing/]
  for (const alone of [...breathing, /^Allergic to/, /^Any other allergy/, /^A rash/, /^Pregnant/])
    await chip(alone, "No")
  await hand.tap(page.getByRole("button", { name: /^I asked all of these/ }))
  await chip("Hair history", "Never treated")
  await chip("Porosity", "Normal")
  await chip("Elasticity, stretched wet", "Springs back")
}

it.each(hands)(
  "carries the whole job on a %s, from an empty plan through the chair to the record card",
  async (_, size, handOf) => {
    const { page, problems, close } = await visit(size)
    const hand = await handOf(page)
    const touch = (name: string | RegExp, role: "button" | "radio" = "button") =>
      hand.tap(page.getByRole(role, { name }).first())
    await takeClock(page)
    await touch(/Plans…/)
    await touch("New plan")
    await page.getByRole("textbox", { name: "Initials" }).fill("F.N.")
    await askAll(page, hand)
    await touch("Placement")
    await page.getByText("No foils yet.").waitFor()
    await hand.draw(await Promise.all(hairlineStroke.map(([x, y]) => onLargeView(page, "front", x, y))))
    await expect.poll(() => options(page).count()).toBe(1)
    await touch(/^Mirror/)
    await expect.poll(() => options(page).count()).toBe(2)
    await touch(/^Repeat behind/)
    await expect.poll(() => options(page).count()).toBe(4)
    await touch("Formula")
    await touch("Timing")
    await page.clock.runFor(1000)
    await page.locator(".head-at-minute svg").first().waitFor()
    await touch("Start at the chair")
    await startClock(page)
    await page.clock.runFor(4 * minute)
    for (const number of [1, 2, 3, 4]) {
      await touch(`Foil ${number} is on`)
      await page.clock.runFor(2 * minute)
    }
    await page.clock.runFor(4 * minute)
    await touch(/^Foils 1, 2: check now/)
    await touch("Checked")
    await touch("Half a level lighter")
    for (const group of ["Stretch", "Scalp"])
      await hand.tap(page.getByRole("group", { name: group }).getByRole("button", { name: "Ok" }))
    await touch("Moist")
    await touch("Save check")
    await page.clock.runFor(12 * minute)
    await touch(/^Foil 1/)
    await touch("Off")
    // Three foils are not ready: the rinse asks once.
    await touch("Rinse now")
    await touch("Rinse all")
    await page.clock.runFor(2000)
    await touch("End the service")
    await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
    await touch("Leave")
    await touch("Sheets")
    await touch("Record card", "radio")
    await page.locator(".preview svg").first().waitFor()
    const [download] = await Promise.all([page.waitForEvent("download"), touch("Save PDF")])
    const text = await readPdfText(readFileSync(await download.path()))
    for (const words of ["F.N.", "Record card"]) expect(text).toContain(words)
    expect(problems).toEqual([])
    await close()
  },
)
