import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { countedHand, threeDaysAgo } from "../support/countedHand"
import { options, startNewPlan } from "../support/screen"

/** Three invented clients from the first question to the chair, by finger on a tablet, the taps counted. */

beforeAll(openBrowser)
afterAll(closeBrowser)

type Hand = ReturnType<typeof countedHand>

const pill = (page: Page) => page.locator(".button.pill")
const start = (page: Page) => page.getByRole("button", { name: "Start the clock" })

async function withClient(meet: (page: Page, hand: Hand) => Promise<void>) {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await options(page).first().waitFor()
  await startNewPlan(page)
  await meet(page, countedHand(page))
  expect(problems).toEqual([])
  await close()
}

const alone = [
  /^Ever had wheezing/,
  /^Asthma/,
  /^Allergic to/,
  /^Any other allergy/,
  /^A rash/,
  /^Pregnant/,
  /^Does the person mixing/,
]

/** Every question of the list: "Yes" to these, "No" to the rest. */
async function ask({ chip, type, button }: Hand, yes: readonly RegExp[] = []) {
  await type("Age, not asked", "41")
  await chip("Scalp", "Calm")
  for (const question of yes) await chip(question, "Yes")
  for (const question of alone)
    if (!yes.some((each) => String(each) === String(question))) await chip(question, "No")
  await button(/^I asked all of these/)
}

async function describeHair({ chip }: Hand, level: string, wanted: string, history: string) {
  await chip("Level now", level)
  await chip("Hair history", history)
  await chip("Porosity", "Normal")
  await chip("Elasticity, stretched wet", "Springs back")
  await chip("Target level, before toner", wanted)
}

async function test(page: Page, { chip, type, button }: Hand) {
  await chip("House powder (invented)", "Passed")
  await button("Apply test now: House toner (invented)")
  await page.getByLabel("Applied", { exact: true }).fill(threeDaysAgo())
  await chip("Result", "Clear")
  await type("Read by", "J")
  await chip("Anything changed since?", "No")
}

async function layFrame(page: Page, { screen, button }: Hand) {
  await screen("Placement")
  await button(/^Bright frame/)
  await options(page).first().waitFor()
}

const told = (what: string, { count }: Hand) =>
  console.info(`${what}: ${count.taps} taps, ${count.typed} of them to type a value.`)

it("A, level 7 and healthy, who wants level 9: cleared, mixed, and at the chair", () =>
  withClient(async (page, hand) => {
    await hand.screen("Client")
    await ask(hand)
    await describeHair(hand, "7", "9", "Never treated")
    await test(page, hand)
    await layFrame(page, hand)
    await hand.screen("Formula")
    await page.getByRole("heading", { name: /^\d bowls?$/ }).waitFor()
    expect(await pill(page).textContent()).toBe("Cleared today")
    expect(await page.getByText("Do not mix").count()).toBe(0)
    await hand.screen("Timing")
    await hand.button("Start at the chair")
    await start(page).and(page.locator(":enabled")).waitFor()
    told("A to the start of the clock", hand)
    expect(hand.count.taps).toBeLessThanOrEqual(40)
  }))

it("B, level 4 with home colour, who wants level 10: held, overridden with a reason, in two visits, never stronger", () =>
  withClient(async (page, hand) => {
    await hand.screen("Client")
    await ask(hand, [/^Home colour/])
    await describeHair(hand, "4", "10", "Coloured")
    await test(page, hand)
    await layFrame(page, hand)
    expect(await pill(page).textContent()).toBe("Do not mix: 1 stop")
    await hand.screen("Formula")
    await page.getByText("Home colour, or copper from well or pool water").first().waitFor()
    // Every bowl says it, where it would be mixed.
    const bowls = await page.locator(".bowl").count()
    expect(bowls).toBeGreaterThan(0)
    expect(
      await page
        .locator(".bowl")
        .getByText(/^Do not mix/)
        .count(),
    ).toBe(bowls)
    const strongest = async () =>
      Math.max(
        ...(await page.locator(".bowl .strength").allTextContents()).map((said) => Number.parseInt(said, 10)),
      )
    const before = await strongest()

    await hand.tap(page.getByText("Override in writing"))
    await hand.type("Reason", "Cut hair tested in the mix")
    await hand.type("Your name", "J")
    await hand.button("Override this stop")
    await expect.poll(() => pill(page).textContent()).toBe("Cleared today")
    await hand.button(/^Plan today to level \d, and the next visit$/)
    await page.getByText(/^Visit 2 is in your plans/).waitFor()
    expect(await strongest()).toBeLessThanOrEqual(before)
    told("B to two visits", hand)
    expect(hand.count.taps).toBeLessThanOrEqual(46)
  }))

it("C, allergic to hair dye: no bowl, no start and no override, only a doctor's letter", () =>
  withClient(async (page, hand) => {
    await hand.screen("Client")
    await ask(hand, [/^Allergic to/])
    await describeHair(hand, "6", "9", "Never treated")
    await layFrame(page, hand)
    expect(await pill(page).textContent()).toMatch(/^Do not mix: \d/)
    await hand.screen("Formula")
    const stop = page.locator(".conflict").filter({ hasText: "Allergic to hair dye" })
    await stop.waitFor()
    expect(await stop.getByText("Override in writing").count()).toBe(0)
    await hand.screen("Timing")
    await hand.button("Start at the chair")
    await start(page).waitFor()
    expect(await start(page).isEnabled()).toBe(false)
    told("C to the closed start", hand)
  }))

it("a client who was asked nothing: drawn and printed, but told as not cleared, and no clock by one signature", () =>
  withClient(async (page, hand) => {
    await layFrame(page, hand)
    expect(await pill(page).textContent()).toMatch(/^Not asked yet: \d+$/)
    await hand.screen("Sheets")
    await page.locator(".preview svg text").getByText("NOT CLEARED: health not asked").first().waitFor()
    await hand.screen("Timing")
    await hand.button("Start at the chair")
    expect(await start(page).isEnabled()).toBe(false)
    await hand.type("Your name", "J")
    await hand.button("Asked aloud: no to all of these")
    // Breathing, the mixer's too, asthma, allergies, a rash, pregnancy, age, the scalp and what the hair can take: one by one.
    await page.getByText("Not asked yet: 11.").waitFor()
    expect(await start(page).isEnabled()).toBe(false)
    told("Signed as asked aloud", hand)
  }))
