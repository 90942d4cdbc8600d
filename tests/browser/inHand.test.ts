import type { Locator } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, portrait, tablet, visit } from "../support/browser"
import { onLargeView, options, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const finger = { hasTouch: true }
const inOneColumn = [
  ["phone with its bars", { ...phone, viewport: { width: 390, height: 664 } }],
  ["phone", phone],
  ["tablet standing up", { ...portrait, ...finger }],
] as const

/** Whether a finger could touch it now: its middle on the screen, and nothing over it. */
const isInReach = (target: Locator) =>
  target.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect()
    const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2)
    return top >= 0 && bottom <= innerHeight && element.contains(hit)
  })

/** Once the page rests: what lies over the map comes with the tap. */
const inReach = (target: Locator) => expect.poll(() => isInReach(target)).toBe(true)

it.each(inOneColumn)(
  "brings what is done to a foil over the lower map when it is tapped on a %s",
  async (_, size) => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    // The slice at the right temple of the example.
    const at = await onLargeView(page, "front", -66, 53)
    await page.touchscreen.tap(...at)
    const sheet = page.locator(".in-hand")
    await sheet.locator("#editor-title").waitFor()
    expect(await page.locator("main.placement").evaluate(({ scrollTop }) => scrollTop)).toBe(0)
    const mirror = sheet.getByRole("button", { name: /^Repeat behind/ })
    const depth = sheet.getByRole("group", { name: "Depth", exact: true })
    for (const part of [mirror, sheet.locator("#editor-title")]) await inReach(part)
    // The hairline stays in sight above it, and each of its four fields can be come to.
    const box = await sheet.boundingBox()
    expect(box?.y).toBeGreaterThan(at[1])
    await depth.scrollIntoViewIfNeeded()
    await inReach(depth.getByRole("radio").first())
    await inReach(mirror)
    const close1 = sheet.getByRole("button", { name: "Close", exact: true })
    await inReach(close1)
    await close1.tap()
    await sheet.locator("#editor-title").waitFor({ state: "detached" })
    // Further down the page the row stays under the thumb.
    await page.touchscreen.tap(...(await onLargeView(page, "front", -66, 53)))
    await sheet.locator("#editor-title").waitFor()
    await options(page).first().scrollIntoViewIfNeeded()
    await inReach(mirror)
    expect(problems).toEqual([])
    await close()
  },
)

it("has what is done most in two rows over the fields, and the rest behind one button that stays as it is left", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).nth(1).click()
  const row = page.getByRole("region", { name: "What to do" })
  const title = page.locator("#editor-title")
  const rest = row.getByRole("button", { name: "Leave out a veil" })
  const top = (await row.boundingBox())?.y ?? 0
  expect(((await title.boundingBox())?.y ?? 0) - top).toBeLessThan(150)
  await inReach(page.locator("section.editor").getByRole("radio").first())
  expect(await rest.count()).toBe(0)
  // By keys, in the order they are read: the frequent ones, the rest, then Delete.
  await tabTo(page, /^Stack behind/)
  for (const name of ["Thinner", "Thicker", "More"]) {
    await page.keyboard.press("Tab")
    await row.getByRole("button", { name, exact: true }).and(page.locator(":focus")).waitFor()
  }
  await page.keyboard.press("Enter")
  await row.getByRole("button", { name: "More", expanded: true }).waitFor()
  await page.keyboard.press("Tab")
  await row.getByRole("button", { name: "Towards the hairline" }).and(page.locator(":focus")).waitFor()
  await options(page).nth(2).click()
  await rest.waitFor()
  expect(await row.getByRole("button").last().textContent()).toBe("Delete")
  expect(problems).toEqual([])
  await close()
})
