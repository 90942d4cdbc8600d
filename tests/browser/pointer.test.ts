import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, type Visit, visit } from "../support/browser"
import { readPdfText } from "../support/pdfText"
import {
  drawOnFront,
  goTo,
  onLargeView,
  options,
  placeOfHairlineParting,
  startNewPlan,
  takeTool,
} from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const rightFrame = [
  [-10, 88],
  [-35, 87],
  [-58, 70],
] as const
const leftFrame = [
  [10, 96],
  [36, 94],
  [60, 76],
] as const

async function withVisit(work: (visit: Visit) => Promise<void>) {
  const open = await visit()
  try {
    await work(open)
    expect(open.problems).toEqual([])
  } finally {
    await open.close()
  }
}

it("meets a newcomer with a finished example", () =>
  withVisit(async ({ page }) => {
    await options(page).nth(10).waitFor()
    expect(await page.getByRole("heading", { name: /9 foils/ }).isVisible()).toBe(true)
    expect(await page.locator(".foot").textContent()).toMatch(/g product, \d+–\d+ g/)
  }))

it("carries the job from an empty plan to the printed map by pointer", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    await goTo(page, "Client")
    await page.getByLabel("Name of the plan").fill("Tuesday frame")
    await page.getByLabel("Initials").fill("T.F.")
    await page.keyboard.press("Tab")
    await goTo(page, "Placement")

    await takeTool(page, "Slice")
    await drawOnFront(page, rightFrame, true)
    expect(await page.locator(".foot").textContent()).toMatch(
      /Slice 1.*\d+ mm.*cm² scalp.*hairs.*hair to coat.*g product/,
    )
    await page.mouse.up()
    expect(await options(page).count()).toBe(1)
    expect(await options(page).first().textContent()).toMatch(/1Slice, right recession/)

    await takeTool(page, "Weave")
    await drawOnFront(page, leftFrame)
    await takeTool(page, "Backcomb")
    await page.getByRole("radio", { name: "Straight" }).check()
    await drawOnFront(page, [
      [-14, 108],
      [-60, 84],
    ])
    await takeTool(page, "Leave out")
    await page.getByRole("radio", { name: "Freehand" }).check()
    await drawOnFront(page, [
      [-8, 104],
      [0, 105],
      [8, 104],
      [14, 102],
    ])
    expect(await options(page).count()).toBe(4)
    expect(await options(page).nth(2).textContent()).toMatch(/3Backcomb/)

    await page.getByRole("button", { name: "Mirror" }).click()
    expect(await options(page).count()).toBe(5)
    await page.getByRole("button", { name: /^Undo: Mirror/ }).click()
    expect(await options(page).count()).toBe(4)

    await goTo(page, "Formula")
    await page.getByText(/3 foils use mix A/).waitFor()

    await goTo(page, "Sheets")
    await page.locator(".preview svg").first().waitFor()
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save PDF" }).click(),
    ])
    const text = await readPdfText(readFileSync(await download.path()))
    expect(text).toContain("Tuesday frame")
    expect(text).toContain("T.F.")
    for (const word of ["Slice", "Weave", "Backcomb"]) expect(text).toContain(word)

    await page.reload()
    await goTo(page, "Placement")
    await options(page).nth(3).waitFor()
    expect(await page.getByRole("button", { name: /Tuesday frame/ }).isVisible()).toBe(true)
  }))

it("calls a stroke off with Escape, and nothing is left of it", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    await takeTool(page, "Slice")
    await drawOnFront(page, rightFrame, true)
    expect(await page.locator(".foot").textContent()).toMatch(/Slice 1/)
    await page.keyboard.press("Escape")
    await page.mouse.up()
    expect(await page.getByText("No foils yet.").isVisible()).toBe(true)
    expect(await page.getByRole("button", { name: /^Undo: Draw/ }).count()).toBe(0)
  }))

it("selects, moves, bends and deepens a section by hand", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    await takeTool(page, "Slice")
    await drawOnFront(page, rightFrame)
    const figures = () => options(page).first().textContent()
    const drawn = await figures()
    await takeTool(page, "Select")

    await page.mouse.click(...(await onLargeView(page, "front", 0, 0)))
    expect(
      await page
        .getByRole("listbox", { name: /^Foils/ })
        .getByRole("option", { selected: true })
        .count(),
    ).toBe(0)
    const [x, z] = placeOfHairlineParting(rightFrame, 0.3)
    await drawOnFront(page, [
      [x, z],
      [x - 2, z + 10],
    ])
    await page.getByRole("button", { name: /^Undo: Move/ }).waitFor()
    await page.getByRole("button", { name: /^Undo: Move/ }).click()
    expect(await figures()).toBe(drawn)

    await drawOnFront(page, [placeOfHairlineParting(rightFrame, 0), [-4, 100]])
    await page.getByRole("button", { name: /^Undo: Bend/ }).waitFor()
    expect(await figures()).not.toBe(drawn)

    await options(page).first().click()
    await page.getByRole("button", { name: "Thicker" }).click()
    expect(await figures()).toMatch(/× 4 mm/)
    await page.getByRole("listbox", { name: /^Foils/ }).press("Delete")
    expect(await page.getByText("No foils yet.").isVisible()).toBe(true)
  }))

it("says why a stroke off the hair gives nothing", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    await takeTool(page, "Slice")
    await page.getByRole("radio", { name: "Straight" }).check()
    await drawOnFront(page, [
      [-20, 20],
      [20, 18],
    ])
    expect(await page.getByRole("status").last().textContent()).toMatch(/No hair grows there/)
    expect(await page.getByText("No foils yet.").isVisible()).toBe(true)
  }))

it("shows what is drawn in one view in every other that faces it", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    const inkOf = (name: string) =>
      page
        .locator(".strip .pane", { hasText: name })
        .locator("canvas")
        .first()
        .evaluate((canvas: HTMLCanvasElement) => {
          const context = canvas.getContext("2d")
          if (!context) return 0
          const { data } = context.getImageData(0, 0, canvas.width, canvas.height)
          let blue = 0
          for (let i = 0; i < data.length; i += 4)
            if (data[i + 2] > data[i] + 40 && data[i + 3] > 100) blue += 1
          return blue
        })
    expect(await inkOf("Top")).toBe(0)
    await takeTool(page, "Slice")
    await drawOnFront(page, rightFrame)
    await page.waitForTimeout(100)
    expect(await inkOf("Top")).toBeGreaterThan(5)
    expect(await inkOf("Client’s right")).toBeGreaterThan(5)
    expect(await inkOf("Turntable")).toBeGreaterThan(5)
    expect(await inkOf("Scalp laid flat")).toBeGreaterThan(5)
    expect(await inkOf("Back")).toBe(0)
  }))

it("lays a technique with one touch and takes it up with one undo", () =>
  withVisit(async ({ page }) => {
    await options(page).first().waitFor()
    await startNewPlan(page)
    await page.getByRole("button", { name: /^Bright frame/ }).click()
    expect(await options(page).count()).toBe(8)
    expect(await options(page).nth(4).textContent()).toMatch(/5Slice, left/)
    await page.getByRole("button", { name: /^Undo: Place the technique/ }).click()
    expect(await page.getByText("No foils yet.").isVisible()).toBe(true)
  }))
