import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { countedHand } from "../support/countedHand"
import { fingerOn } from "../support/finger"
import { hairlineStroke } from "../support/hairlineStroke"
import { onLargeView, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const finger = { ...portrait, hasTouch: true }

/** A new plan as its button leaves it, at Client, and a finger that counts from there. */
async function fromNothing() {
  const { page, problems, close } = await visit(finger)
  await options(page).first().waitFor()
  const hand = countedHand(page)
  await hand.button(/Plans…/)
  await hand.button("New plan")
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  hand.count.taps = 0
  return { page, hand, problems, close }
}

const tile = (page: Page, name: string) => page.locator(".technique").filter({ hasText: name })
const foils = (page: Page, count: number) => expect.poll(() => options(page).count()).toBe(count)

/** Each foil of one side has its twin on the other. */
async function isMirroredFrame(page: Page) {
  await foils(page, 6)
  const rows = (await options(page).locator(".what").allTextContents()).map((words) => words.toLowerCase())
  const [right, left] = ["right", "left"].map((side) => rows.filter((words) => words.includes(side)))
  expect(right.map((words) => words.replace("right", "left")).sort()).toEqual([...left].sort())
  expect(right.length).toBe(3)
}

it("lays a mirrored frame of six foils by technique in at most four touches", async () => {
  const { page, hand, problems, close } = await fromNothing()
  await hand.screen("Placement")
  await hand.tap(tile(page, "Micro-slices, temple to temple"))
  await isMirroredFrame(page)
  expect(hand.count.taps).toBeLessThanOrEqual(4)
  expect(problems).toEqual([])
  await close()
})

it("draws a mirrored frame of six foils by hand in at most twelve touches", async () => {
  const { page, hand, problems, close } = await fromNothing()
  await hand.screen("Placement")
  const stroke = await fingerOn(page)
  const [first, ...more] = await Promise.all(hairlineStroke.map(([x, y]) => onLargeView(page, "front", x, y)))
  await stroke.down(first)
  for (const place of more) await stroke.move(place)
  await stroke.up()
  hand.count.taps += 1
  await foils(page, 1)
  await hand.button(/^Mirror/)
  await foils(page, 2)
  await hand.button(/^Repeat behind/)
  await foils(page, 4)
  await hand.button(/^Repeat behind/)
  await isMirroredFrame(page)
  expect(hand.count.taps).toBeLessThanOrEqual(12)
  expect(problems).toEqual([])
  await close()
})

it("selects five of six foils and changes their depth, start and mix in at most six touches", async () => {
  const { page, hand, problems, close } = await fromNothing()
  await hand.screen("Formula")
  await hand.button("Add mix B")
  await hand.screen("Placement")
  await hand.tap(tile(page, "Micro-slices, temple to temple"))
  await foils(page, 6)
  hand.count.taps = 0
  await hand.button(/^All$/)
  await hand.tap(page.getByRole("checkbox", { name: "Select several" }))
  await hand.tap(options(page).first())
  await page.getByRole("heading", { name: "5 sections selected" }).waitFor()
  const radio = (group: string, name: RegExp) =>
    page
      .locator("section.editor")
      .getByRole("group", { name: group, exact: true })
      .getByRole("radio", { name })
  const choices = [radio("Depth", /^Standard/), radio("Product starts", /^Soft/), radio("Mix", /^B$/)]
  for (const choice of choices) await hand.tap(choice)
  expect(hand.count.taps).toBeLessThanOrEqual(6)
  for (const choice of choices) expect(await choice.isChecked()).toBe(true)
  const chosen = options(page).and(page.locator("[aria-selected=true]"))
  expect(await chosen.locator(".ink").allTextContents()).toEqual(["B", "B", "B", "B", "B"])
  expect(problems).toEqual([])
  await close()
})

it("saves four sheets in at most eight touches", async () => {
  const { page, hand, problems, close } = await fromNothing()
  await hand.screen("Placement")
  await hand.tap(tile(page, "Micro-slices, temple to temple"))
  await foils(page, 6)
  hand.count.taps = 0
  await hand.screen("Sheets")
  const saved: string[] = []
  for (const sheet of ["Placement map", "Technique handout", "Take home", "Record card"]) {
    const choice = page.getByRole("radio", { name: sheet, exact: true })
    await choice.waitFor()
    if (!(await choice.isChecked())) await hand.chip("Sheet", sheet)
    await page.locator(".sheet svg").waitFor()
    const [download] = await Promise.all([page.waitForEvent("download"), hand.button("Save PDF")])
    saved.push(download.suggestedFilename())
  }
  expect(new Set(saved).size).toBe(4)
  expect(hand.count.taps).toBeLessThanOrEqual(8)
  expect(problems).toEqual([])
  await close()
})
