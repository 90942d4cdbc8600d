import type { Locator, Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, sizes, tablet, visit } from "../support/browser"
import { fingerOn } from "../support/finger"
import { atRest, goTo, options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

/** The client's own hairline: landmarks by hand, by finger, by keys, by figures. */

const handle = (page: Page, name: string) =>
  page.locator(".pane.large").getByRole("button", { name, exact: true })
const into = (page: Page) => page.getByRole("textbox", { name: "Into the hair" })
const towardNape = (page: Page) => page.getByRole("textbox", { name: "Towards the nape" })
const said = (page: Page) => page.getByRole("status").last().textContent()
const figures = async (page: Page) => [
  Number(await into(page).inputValue()),
  Number(await towardNape(page).inputValue()),
]

async function takeHairline(page: Page) {
  await page.locator(".tools").getByRole("radio", { name: "Hairline", exact: true }).check()
  await allOfHairline(page)
}

/** The tool has all that it brings along, none of which is to move the map under the hand. */
async function allOfHairline(page: Page) {
  await page.locator(".tools").getByRole("radio", { name: "Both sides" }).waitFor()
  await page.getByRole("heading", { name: "The client’s hairline" }).waitFor({ state: "attached" })
  await handle(page, "centre front").waitFor()
}

async function middleOf(target: Locator): Promise<[number, number]> {
  const box = await atRest(target)
  return [box.x + box.width / 2, box.y + box.height / 2]
}

async function drag(page: Page, name: string, [dx, dy]: readonly [number, number]) {
  const [x, y] = await middleOf(handle(page, name))
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + dx, y + dy, { steps: 6 })
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20))))
}

describe("a landmark of the hairline", () => {
  it("is dragged on both sides, on one, called off, refused, and taken back by one undo each", async () => {
    const { page, problems, close } = await visit(tablet)
    await options(page).first().waitFor()
    await takeHairline(page)
    await drag(page, "right recession", [4, -24])
    await page.mouse.up()
    expect(await said(page)).toMatch(/^Recession, both sides: \d+(\.\d)? mm into the hair/)
    await expect.poll(async () => (await figures(page))[0]).toBeGreaterThan(4)
    const [both] = await figures(page)
    await page.locator(".tools").getByRole("radio", { name: "Left only" }).check()
    await expect.poll(async () => (await figures(page))[0]).toBe(both)

    await drag(page, "left recession", [-4, -18])
    await page.mouse.up()
    expect(await said(page)).toMatch(/^Left recession:/)
    await expect.poll(async () => (await figures(page))[0]).toBeGreaterThan(both)
    await page.locator(".tools").getByRole("radio", { name: "Right only" }).check()
    await expect.poll(async () => (await figures(page))[0]).toBe(both)

    await drag(page, "right temple", [20, -20])
    await page.keyboard.press("Escape")
    await page.mouse.up()
    await drag(page, "right recession", [230, 10])
    expect(await page.locator(".overlay-refusal").textContent()).toMatch(/cross the middle|cross itself/)
    await page.mouse.up()
    expect(await said(page)).toMatch(/The hairline stays as it was\.$/)
    await expect.poll(async () => (await figures(page))[0]).toBe(both)

    await page.getByRole("button", { name: /^Undo/ }).click()
    await page.getByRole("button", { name: /^Undo/ }).click()
    await expect.poll(() => figures(page)).toEqual([0, 0])
    expect(await page.getByRole("button", { name: /^Undo/ }).isDisabled()).toBe(true)
    expect(problems).toEqual([])
    await close()
  })

  it.each(["Client’s left", "Client’s right", "Back", "Top", "Turntable", "Scalp laid flat"])(
    "is dragged in the view %s",
    async (view) => {
      const { page, problems, close } = await visit(tablet)
      await options(page).first().waitFor()
      await takeHairline(page)
      await page
        .locator(".strip")
        .getByRole("button", { name: new RegExp(`^${view}`) })
        .click()
      await page.locator(".pane.large").getByRole("heading", { name: view }).waitFor()
      const seen = page.locator(".pane.large .handle:not([aria-label^=centre], [aria-label^=crown])").last()
      const name = (await seen.getAttribute("aria-label")) ?? ""
      const before = await middleOf(seen)
      const paper = await middleOf(page.locator(".pane.large .pane-paper"))
      // Toward the middle of the page there is head under the hand.
      const way = [Math.sign(paper[0] - before[0]) * 7, Math.sign(paper[1] - before[1]) * 9] as const
      await drag(page, name, way)
      await page.mouse.up()
      await page.getByRole("button", { name: "Reset all", disabled: false }).waitFor()
      const after = await middleOf(handle(page, name))
      // It lies under the hand, but for the tenth of a millimetre that is kept.
      expect(Math.hypot(after[0] - before[0] - way[0], after[1] - before[1] - way[1])).toBeLessThan(1)
      expect(problems).toEqual([])
      await close()
    },
  )

  it("is moved by the arrow keys from where Tab finds it, a run of them one undo", async () => {
    const { page, problems, close } = await visit(tablet)
    await startNewPlan(page)
    await page.keyboard.press("h")
    await allOfHairline(page)
    await tabTo(page, /^right temple/)
    await page.keyboard.press("ArrowUp")
    await page.keyboard.press("Shift+ArrowUp")
    expect(await said(page)).toMatch(/^Temple, both sides: /)
    await expect.poll(async () => Math.hypot(...(await figures(page)))).toBeCloseTo(6, 0)
    await page.keyboard.press("Control+z")
    await expect.poll(() => figures(page)).toEqual([0, 0])
    expect(problems).toEqual([])
    await close()
  })

  it("follows a finger on a phone", async () => {
    const { page, problems, close } = await visit(phone)
    await options(page).first().waitFor()
    await takeHairline(page)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.viewport.width)
    expect(await axeFaults(page)).toEqual([])
    const [x, y] = await middleOf(handle(page, "right temple"))
    const finger = await fingerOn(page)
    await finger.down([x, y])
    for (const step of [4, 8, 12]) await finger.move([x + step, y - step])
    await finger.up()
    await expect.poll(() => said(page)).toMatch(/^Temple, both sides: /)
    expect(problems).toEqual([])
    await close()
  })
})

describe("the client's head", () => {
  it.each(sizes)("is told in figures and words on a %s, and kept", async (_, size) => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await goTo(page, "Client")
    await page.getByRole("radio", { name: "Recession" }).check()
    await page.getByRole("radio", { name: "Left only" }).check()
    await into(page).fill("4")
    await page.keyboard.press("Tab")
    await page.getByRole("radio", { name: "Right only" }).check()
    await expect.poll(() => into(page).inputValue()).toBe("0")
    await page.getByRole("radio", { name: "On the left" }).check()
    await page.getByRole("radio", { name: "Anticlockwise" }).check()
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.viewport.width)
    await page.getByText("Saved", { exact: true }).waitFor()
    await page.reload()
    await page.getByRole("radio", { name: "Recession" }).check()
    await page.getByRole("radio", { name: "Left only" }).check()
    await expect.poll(() => into(page).inputValue()).toBe("4")
    expect(await page.getByRole("radio", { name: "On the left" }).isChecked()).toBe(true)
    expect(await page.getByRole("radio", { name: "Anticlockwise" }).isChecked()).toBe(true)

    // Far down over the face: refused with a sentence, and what was there stays.
    await into(page).fill("-55")
    await page.keyboard.press("Tab")
    await expect.poll(() => into(page).inputValue()).toBe("4")
    expect(await page.getByRole("alert").or(page.getByRole("status")).allTextContents()).toContainEqual(
      expect.stringMatching(/hairline|scalp/),
    )
    await page.getByRole("button", { name: "Shape the hairline on the map" }).click()
    await handle(page, "left recession").waitFor()
    expect(problems).toEqual([])
    await close()
  })
})
