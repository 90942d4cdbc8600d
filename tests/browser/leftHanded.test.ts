import type { Locator, Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, tablet, visit } from "../support/browser"
import { putOn, sitDown, takeClock } from "../support/chair"
import { options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const finger = { hasTouch: true, isMobile: true }
const hands = [
  ["phone with its bars", { viewport: { width: 390, height: 664 }, ...finger }],
  ["phone lying down", { viewport: { width: 844, height: 390 }, ...finger }],
  ["tablet standing up", { ...portrait, hasTouch: true }],
  ["tablet lying down", { ...tablet, hasTouch: true }],
  ["desktop", { viewport: { width: 1920, height: 1080 } }],
] as const

const middleOf = async (target: Locator) => {
  const box = await target.boundingBox()
  if (!box) throw new Error("it is not on the screen")
  return box.x + box.width / 2
}

/** On which side of the second the first stands, once the page has been laid out anew. */
const standsLeftOf = async (one: Locator, other: Locator) => (await middleOf(one)) < (await middleOf(other))

async function settingsOf(page: Page) {
  const settings = page.locator(".switches summary")
  await settings.scrollIntoViewIfNeeded()
  return settings
}

async function takeLeftHand(page: Page) {
  await (await settingsOf(page)).click()
  await page.getByRole("checkbox", { name: "Left-handed" }).check()
  await (await settingsOf(page)).click()
}

/** What a right hand has at its right, by pairs that change places. */
const onTheMap = (page: Page) => {
  const pane = page.locator(".pane.large")
  const inOneColumn: [Locator, Locator][] = [
    [pane.locator(".pane-name"), pane.locator(".pane-fit")],
    [page.locator(".tool-choices"), page.locator(".switches summary")],
  ]
  const inColumns: [Locator, Locator][] = [
    [pane.locator(".pane-name"), pane.locator(".pane-fit")],
    [page.locator(".tools"), page.locator(".list")],
  ]
  return { inOneColumn, inColumns }
}

describe.each(hands)("on a %s", (_, size) => {
  const { width, height } = size.viewport
  const isOneColumn = (width < 940 && height > 560) || width < 640

  it("turns the tools of the map and the sheet in hand round for a left hand", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).nth(1).click()
    const pairs = onTheMap(page)[isOneColumn ? "inOneColumn" : "inColumns"]
    if (isOneColumn)
      pairs.push([page.getByRole("button", { name: /^Repeat behind/ }), page.locator(".sheet-close")])
    for (const [one, other] of pairs) expect(await standsLeftOf(one, other)).toBe(true)
    await takeLeftHand(page)
    for (const [one, other] of pairs) await expect.poll(() => standsLeftOf(one, other)).toBe(false)
    expect(problems).toEqual([])
    await close()
  })

  it("turns what is tapped at the chair round for a left hand, red button and all", async () => {
    const { page, problems, close } = await visit(size)
    await takeClock(page)
    const button = (name: RegExp | string) => page.getByRole("button", { name })
    const seen = async () => ({
      alarm: await standsLeftOf(button("Leave"), button("Something is wrong")),
      bowl: await standsLeftOf(button(/^Mix B now/), button(/^(Rinse now|End the service)/)),
      foil: await standsLeftOf(button("Checked"), button("Burning").first()).catch(() => null),
    })
    await takeLeftHand(page)
    await sitDown(page)
    await putOn(page, 1)
    await page.locator(".tile").first().press("Enter")
    await button("Checked").waitFor()
    await expect.poll(async () => (await seen()).alarm).toBe(false)
    const { bowl, foil } = await seen()
    expect(bowl).toBe(false)
    // On a narrow phone Burning has a row to itself.
    if (width > 400) expect(foil).toBe(false)
    if (width > 1000) expect(await standsLeftOf(page.locator(".next"), page.locator(".on-now"))).toBe(false)
    if (height < 560) expect(await standsLeftOf(button("Foil 2 is on"), button(/^Mix B now/))).toBe(false)
    for (const name of ["Checked", "Off", "Burning", "Something is wrong"]) {
      const box = await button(name).first().boundingBox()
      expect(Math.min(box?.x ?? -1, width - (box?.x ?? 0) - (box?.width ?? 0)), name).toBeGreaterThanOrEqual(
        0,
      )
    }
    expect(problems).toEqual([])
    await close()
  })
})
