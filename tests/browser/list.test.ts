import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { newPlan } from "../../web/core/document/newPlan"
import { newSection } from "../../web/core/document/newSection"
import { repeatBehind } from "../../web/core/edits/lay/repeatBehind"
import { moveSections } from "../../web/core/edits/parting/moveSections"
import { addSections } from "../../web/core/edits/sections/addSections"
import { changeSection } from "../../web/core/edits/sections/changeSections"
import { savePlan } from "../../web/core/file/planFile"
import { axeFaults as faults } from "../support/axe"
import { closeBrowser, openBrowser, phone, type Visit, visit } from "../support/browser"
import { fingerOn } from "../support/finger"
import { readPdfText } from "../support/pdfText"
import { done, rightParting } from "../support/samples"
import { goTo, onLargeView, openPlanFile, options, startNewPlan } from "../support/screen"
import { settled } from "../support/settled"

beforeAll(openBrowser)
afterAll(closeBrowser)

const bare = { ...newPlan(new Date("2026-03-09T12:00:00Z")), name: "List" }
const one = done(addSections(newSection("slice", rightParting, bare)), bare)
const narrow = { kind: "foil", widthMm: 40, lengthMm: 300 } as const
const wide = done(changeSection("s1", { treatment: { carrier: narrow } }), one)
const twice = done(moveSections(["s2"], { alongMm: 0, behindMm: -4 }), done(repeatBehind("s1", 3), one))

function fileOf(plan: typeof one) {
  const file = join(mkdtempSync(join(tmpdir(), "partline-list-")), "plan.json")
  writeFileSync(file, savePlan(plan))
  return file
}

async function withVisit(work: (visit: Visit) => Promise<void>, size?: Parameters<typeof visit>[0]) {
  const open = await visit(size)
  try {
    await options(open.page).nth(8).waitFor()
    await work(open)
    expect(open.problems).toEqual([])
  } finally {
    await open.close()
  }
}

const status = (page: Page) => page.getByRole("status").last().textContent()
const numbers = async (page: Page) =>
  (await options(page).locator(".number").allTextContents()).filter((text) => text !== "–").slice(0, 4)
const middleOf = async (page: Page, row: number, what = ".grip") => {
  const box = await options(page).nth(row).locator(what).boundingBox()
  if (!box) throw new Error(`row ${row} has no ${what}`)
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, height: box.height, width: box.width }
}

describe("the order of application", () => {
  it("is changed by dragging a row with the mouse: one undo, the number on the map stays, Escape calls it off", () =>
    withVisit(async ({ page }) => {
      expect(await numbers(page)).toEqual(["1", "2", "3", "4"])
      const handle = await middleOf(page, 3)
      expect(Math.min(handle.width, handle.height)).toBeGreaterThanOrEqual(44)
      const drag = async () => {
        // Waits until the row stands still: the list makes room above it when fields come.
        await options(page).nth(3).locator(".grip").hover()
        const to = await middleOf(page, 1)
        await page.mouse.down()
        await page.mouse.move(to.x, to.y - to.height / 3, { steps: 5 })
        await page.locator("[data-drop]").waitFor()
      }
      await drag()
      await page.keyboard.press("Escape")
      await page.mouse.up()
      // The row let go is chosen, and the list makes room for its fields.
      await page.locator("section.editor").waitFor()
      await settled(page, () => options(page).nth(3).boundingBox())
      expect(await numbers(page)).toEqual(["1", "2", "3", "4"])
      await drag()
      await page.mouse.up()
      expect(await numbers(page)).toEqual(["3", "1", "2", "4"])
      expect(await status(page)).toBe("Foil 3 goes on 1st of 9")
      expect(await options(page).nth(1).textContent()).toMatch(/^1st3Slice/)
      await page.getByRole("button", { name: "Number in this order" }).click()
      expect(await numbers(page)).toEqual(["1", "2", "3", "4"])
      await page.getByRole("button", { name: /^Undo: Number/ }).click()
      await page.getByRole("button", { name: /^Undo: Foil 3 goes on 1st/ }).click()
      expect(await numbers(page)).toEqual(["1", "2", "3", "4"])
    }))

  it("is changed by a finger on a phone, while the page stays put", () =>
    withVisit(async ({ page }) => {
      await options(page).nth(2).scrollIntoViewIfNeeded()
      const [from, to] = [await middleOf(page, 2), await middleOf(page, 1)]
      const finger = await fingerOn(page)
      await finger.down([from.x, from.y])
      for (let i = 1; i <= 6; i++)
        await finger.move([from.x, from.y + ((to.y - to.height / 3 - from.y) * i) / 6])
      await page.locator("[data-drop]").waitFor()
      await finger.up()
      await expect.poll(() => numbers(page)).toEqual(["2", "1", "3", "4"])
      expect(await status(page)).toBe("Foil 2 goes on 1st of 9")

      // On to the tools, which lie over the rows above: they come down until the first is there.
      await options(page).nth(9).scrollIntoViewIfNeeded()
      await page.locator(".placement").evaluate((screen) => screen.scrollBy(0, 200))
      const last = await settled(page, () => middleOf(page, 9))
      const tools = await page.locator(".tools").boundingBox()
      if (!tools) throw new Error("the tools are not on the screen")
      await finger.down([from.x, last.y])
      await finger.move([from.x, last.y - 20])
      await finger.move([from.x, tools.y + tools.height - 4])
      await options(page).nth(0).and(page.locator("[data-drop=before]")).waitFor()
      await finger.up()
      expect(await options(page).nth(0).locator(".number").textContent()).not.toBe("–")
    }, phone))

  it("is changed by keys and by buttons, each told once", () =>
    withVisit(async ({ page }) => {
      await options(page).nth(1).click()
      const list = page.getByRole("listbox", { name: /^Foils/ })
      await list.press("Alt+ArrowDown")
      expect(await status(page)).toBe("Foil 1 goes on 2nd of 9")
      expect(await numbers(page)).toEqual(["2", "1", "3", "4"])
      await page.getByRole("button", { name: "More", exact: true }).click()
      await page.getByRole("button", { name: "Earlier", exact: true }).click()
      expect(await numbers(page)).toEqual(["1", "2", "3", "4"])
    }))
})

it("gives a foil a name that stands in list, editor and on paper", () =>
  withVisit(async ({ page }) => {
    await options(page).nth(1).click()
    await page.locator("section.editor").getByText("All settings", { exact: true }).click()
    await page.locator("section.editor").getByLabel("Name", { exact: true }).fill("Money piece")
    await page.keyboard.press("Enter")
    expect(await options(page).nth(1).textContent()).toContain("Money piece")
    expect(await page.locator("#editor-title").textContent()).toMatch(/^1 Money piece: Slice/)
    await goTo(page, "Sheets")
    await page.locator(".preview svg").first().waitFor()
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save PDF" }).click(),
    ])
    expect(await readPdfText(readFileSync(await download.path()))).toContain("Slice, Money piece")
  }))

it("keeps a mirrored section and its image a pair until the pair is broken", () =>
  withVisit(async ({ page }) => {
    await openPlanFile(page, fileOf(one))
    await options(page).first().click()
    await page.getByRole("button", { name: "Mirror" }).click()
    const inHand = async (row: number) => {
      await options(page).nth(row).click()
      return options(page).nth(row).textContent()
    }
    expect(await inHand(0)).toContain("pair with foil 2 on the client’s left")
    await page.getByRole("button", { name: "Thicker" }).click()
    expect(await inHand(0)).toMatch(/× 4 mm/)
    expect(await inHand(1)).toMatch(/× 4 mm/)
    const editor = page.locator("section.editor")
    await editor.getByText("All settings", { exact: true }).click()
    await editor.getByRole("radio", { name: "Weave", exact: true }).check()
    expect(await options(page).allTextContents()).toEqual([
      expect.stringMatching(/1Weave, right/),
      expect.stringMatching(/2Weave, left/),
    ])
    await page.getByRole("button", { name: "Break the pair" }).click()
    expect(await status(page)).toBe("Break the pair")
    await page.getByRole("button", { name: "Thicker" }).click()
    expect(await inHand(1)).toMatch(/× 5 mm/)
    const other = await inHand(0)
    expect(other).toMatch(/× 4 mm/)
    expect(other).not.toContain("pair with")
    expect(await faults(page)).toEqual([])
  }))

it("copies and pastes by keys and buttons, behind in the same plan, in place in another", () =>
  withVisit(async ({ page }) => {
    await openPlanFile(page, fileOf(one))
    await page.keyboard.press("Control+a")
    expect(await status(page)).toBe("1 section selected")
    await page.keyboard.press("Control+c")
    expect(await status(page)).toBe("1 section copied")
    await page.keyboard.press("Control+v")
    expect(await options(page).count()).toBe(2)
    expect(await page.getByText("Overlapping foils").count()).toBe(0)
    await startNewPlan(page)
    await page.getByRole("button", { name: "Paste 1" }).click()
    expect(await options(page).count()).toBe(1)
    await page.getByRole("button", { name: /^Undo: Paste a section/ }).click()
    expect(await page.getByText("No foils yet.").isVisible()).toBe(true)
  }))

it("selects several by Shift, by a switch and by a box", () =>
  withVisit(async ({ page }) => {
    const chosen = () => options(page).and(page.locator('[aria-selected="true"]')).count()
    await options(page).nth(1).click()
    await options(page)
      .nth(3)
      .click({ modifiers: ["Shift"] })
    expect(await chosen()).toBe(3)
    await options(page)
      .nth(2)
      .click({ modifiers: ["Control"] })
    expect(await chosen()).toBe(2)
    await page.mouse.click(...(await onLargeView(page, "front", 0, 0)))
    expect(await chosen()).toBe(0)
    await page.getByRole("checkbox", { name: "Select several" }).check()
    await options(page).nth(1).click()
    await options(page).nth(2).click()
    expect(await chosen()).toBe(2)
    expect(await faults(page)).toEqual([])
    await page.mouse.move(...(await onLargeView(page, "front", 95, 150)))
    await page.mouse.down()
    await page.mouse.move(...(await onLargeView(page, "front", 20, 60)), { steps: 5 })
    await page.mouse.up()
    expect(await chosen()).toBeGreaterThan(4)
    await page.getByRole("checkbox", { name: "Select several" }).uncheck()
  }))

it("splits a section wider than its foil with one touch and one undo", () =>
  withVisit(async ({ page }) => {
    await openPlanFile(page, fileOf(wide))
    await options(page).first().click()
    await page.getByRole("button", { name: /^Split into \d foils/ }).click()
    const count = await options(page).count()
    expect(count).toBeGreaterThan(1)
    await options(page).first().click()
    expect(await page.getByRole("button", { name: /^Split into/ }).count()).toBe(0)
    await page.getByRole("button", { name: /^Undo: Split foil 1 into foils/ }).click()
    expect(await options(page).count()).toBe(1)
  }))

it("shows hair taken twice, counts it once, and parts the two with one touch and one undo", () =>
  withVisit(async ({ page }) => {
    const black = () =>
      page
        .locator(".pane.large canvas")
        .nth(1)
        .evaluate((canvas: HTMLCanvasElement) => {
          const { data } = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? {
            data: [],
          }
          return data.filter((value, i) => i % 4 === 3 && value > 100).length
        })
    await openPlanFile(page, fileOf(twice))
    await page.getByRole("heading", { name: "Overlapping foils" }).waitFor()
    expect(await page.locator(".foot").textContent()).toMatch(/\d g less: hair taken twice, by 1 and 2/)
    await expect.poll(black).toBeGreaterThan(50)
    expect(await faults(page)).toEqual([])
    await page.getByRole("button", { name: "Reduce foil 2" }).click()
    expect(await page.getByRole("heading", { name: "Overlapping foils" }).count()).toBe(0)
    await expect.poll(black).toBe(0)
    await page.getByRole("button", { name: /^Undo: Reduce foil 2/ }).click()
    expect(await page.getByRole("heading", { name: "Overlapping foils" }).count()).toBe(1)
  }))
