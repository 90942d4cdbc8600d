import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, tablet, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { openPlanText } from "../support/chair"
import { goTo, options, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const press = (page: Page, name: RegExp | string) => page.getByRole("button", { name }).first().click()

/** The clock, with its settings open. */
async function openSettings(page: Page) {
  await goTo(page, "Timing")
  await press(page, "Change")
  await page.getByRole("group", { name: "Pace" }).waitFor()
}

async function liftFrom7To9(page: Page) {
  await page.getByRole("radio", { name: "From level to level" }).check()
  expect(await page.getByRole("textbox", { name: "Level now" }).inputValue()).toBe("7")
  await page.getByRole("textbox", { name: "Target level" }).fill("9")
  await page.keyboard.press("Tab")
}

it("writes down a strand test and says when to look; scrubs the head in time by keys", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await openSettings(page)
  await liftFrom7To9(page)
  await page.getByRole("radio", { name: "Mix A, 20 vol" }).check()
  await page.getByRole("button", { name: "Add a check of the strand" }).click()
  await page.getByRole("textbox", { name: "Level seen" }).fill("8")
  await page.keyboard.press("Tab")
  await page
    .getByText(/^Check from minute 10; expected ready at minute \d+ to \d+; max time 45 min\.$/)
    .waitFor()
  await page.getByRole("textbox", { name: "Level seen" }).fill("5.5")
  await page.keyboard.press("Tab")
  await page
    .getByText(/^Row 1: level 5\.5 is darker than level 7 at the check before\. Lifted hair does not darken/)
    .waitFor()

  const slider = page.getByRole("slider", { name: "Minute of the visit" })
  await slider.focus()
  await page.keyboard.press("Home")
  expect(await slider.getAttribute("aria-valuetext")).toBe("Minute 0: 0 foils on, 9 to come, 0 off")
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight")
  expect(await slider.getAttribute("aria-valuetext")).toContain("Minute 5: 1 foil on, the longest for 1 min")
  expect(problems).toEqual([])
  await close()
})

it("counts a look at the strand from the moment its level is written, and keeps to the phone's width", async () => {
  const { page, problems, close } = await visit(phone)
  await options(page).first().waitFor()
  await openSettings(page)
  await liftFrom7To9(page)
  await page.getByRole("radio", { name: "Mix A, 20 vol" }).check()
  const window = () => page.locator(".window").first().textContent()
  const before = await window()
  await press(page, "Add a check of the strand")
  const level = page.getByRole("textbox", { name: "Level seen" })
  expect(await level.evaluate((field) => field === document.activeElement)).toBe(true)
  expect([await level.inputValue(), await window()]).toEqual(["", before])
  await page.keyboard.type("8")
  await page.keyboard.press("Enter")
  await expect.poll(window).not.toBe(before)
  expect(await level.evaluate((field) => field === document.activeElement)).toBe(true)
  expect(await page.locator(".page").evaluate((screen) => screen.scrollWidth - screen.clientWidth)).toBe(0)
  expect(problems).toEqual([])
  await close()
})

const settled = (page: Page) => page.getByRole("heading", { name: "No clashes in the schedule" }).waitFor()

describe.each([
  ["tablet", tablet],
  ["phone", phone],
] as const)("fixes on a %s", (_, size) => {
  it("come from beside the screen, each with one touch and one undo", async () => {
    const { page, problems, close } = await visit(size)
    const workers: string[] = []
    page.on("worker", (worker) => workers.push(worker.url()))
    await options(page).first().waitFor()
    await openSettings(page)
    await page.getByRole("radio", { name: "All in one rinse" }).check()
    await page.getByRole("radio", { name: /^Learner/ }).check()
    await page.getByRole("heading", { name: "1 clash" }).waitFor()
    const fixes = page.locator(".conflict").getByRole("button")
    await fixes.nth(3).waitFor()
    expect(workers.length).toBeGreaterThan(0)
    const labels = await fixes.allInnerTexts()
    expect(labels.slice(0, 2)).toEqual(["Take each foil off when it is ready", "Work with an assistant"])
    expect(await axeFaults(page)).toEqual([])
    for (const label of labels) {
      await press(page, label)
      await settled(page)
      await press(page, /^Undo/)
      await page.getByRole("heading", { name: "1 clash" }).waitFor()
    }
    expect(problems).toEqual([])
    await close()
  })
})

it("keeps foils for another day with the plan: back again, or a visit of their own", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await openSettings(page)
  await page.getByRole("radio", { name: "All in one rinse" }).check()
  await page.getByRole("radio", { name: /^Learner/ }).check()
  await press(page, /^Keep 3 foils for another day, spread over both sides: 3, 7, 9$/)
  await page.getByText(/^For another day: foils 3, 7, 9\./).waitFor()
  await press(page, "Bring them back today")
  await page.getByRole("heading", { name: "1 clash" }).waitFor()
  await press(page, /^Undo/)
  await page.getByText(/As a visit of their own they move to “.*, another day”/).waitFor()
  await press(page, "Plan them as a visit of their own")
  await page.getByText(/^The foils for another day are now in “.*, another day”, under “Plans”\.$/).waitFor()
  await press(page, /^Undo/)
  await page.getByText(/^For another day: foils 3, 7, 9\./).waitFor()
  await press(page, /^Redo/)
  await press(page, "Open that plan")
  await page.getByRole("button", { name: /another day: Plans/ }).waitFor()
  await settled(page)
  expect(await page.getByRole("region", { name: "Times of every foil" }).getByRole("row").count()).toBe(4)
  expect(problems).toEqual([])
  await close()
})

it("searches 120 foils without holding the screen up, and stops when told to", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await openPlanText(page, { ...busyPlan(120), name: "A full head" })
  // The search is held up at its start until it is let go, so that there is time to stop it on any machine.
  let letGo = () => {}
  const held = new Promise<void>((done) => {
    letGo = done
  })
  await page.route(/fixWorker/, async (route) => {
    await held
    await route.continue().catch(() => {})
  })
  await openSettings(page)
  await page.getByRole("radio", { name: "All in one rinse" }).check()
  const progress = page.getByRole("progressbar", { name: "Working out fixes" })
  await progress.waitFor()
  await press(page, "Stop")
  await page.getByText("The search was stopped.").waitFor()
  await press(page, "Search again")
  await progress.waitFor()
  const slider = page.getByRole("slider", { name: "Minute of the visit" })
  await slider.focus()
  await page.keyboard.press("Home")
  expect(await slider.getAttribute("aria-valuetext")).toContain("Minute 0: 0 foils on")
  letGo()
  await page
    .locator(".conflict")
    .getByRole("button", { name: "Take each foil off when it is ready" })
    .first()
    .click()
  await settled(page)
  expect(problems).toEqual([])
  await close()
})

it("says in a sentence what cannot be timed: no foils, levels off the scale, heat above 40", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await openSettings(page)
  await page.getByRole("radio", { name: "From level to level" }).check()
  await page.getByRole("textbox", { name: "Target level" }).fill("11")
  await page.keyboard.press("Tab")
  await page.getByText("Target level: expected 1 to 10.").waitFor()
  await page.getByRole("radio", { name: "10 min", exact: true }).check()
  await page.getByRole("textbox", { name: "Temperature, if measured" }).fill("45")
  await page.keyboard.press("Tab")
  await page
    .getByText("No heat: lift is not worked out above 40 °C, and 45 °C was entered.")
    .first()
    .waitFor()
  await goTo(page, "Placement")
  await startNewPlan(page)
  await goTo(page, "Timing")
  await page.getByText("There are no foils to time: draw one first.").waitFor()
  expect(problems).toEqual([])
  await close()
})
