import type { CDPSession, Locator, Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, tablet, visit } from "../support/browser"
import { options, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

type Place = { x: number; y: number }
type Part = "mousePressed" | "mouseMoved" | "mouseReleased"

/** A pen as the browser itself reports one. */
function penOf(session: CDPSession) {
  const send = (type: Part, { x, y }: Place) =>
    session.send("Input.dispatchMouseEvent", {
      ...{ type, x, y, button: "left", buttons: type === "mouseReleased" ? 0 : 1 },
      ...{ clickCount: 1, pointerType: "pen" },
    })
  const draw = async (from: Place, to: Place, meanwhile?: () => Promise<unknown>) => {
    await send("mousePressed", from)
    for (let i = 1; i <= 8; i += 1)
      await send("mouseMoved", {
        x: from.x + ((to.x - from.x) * i) / 8,
        y: from.y + ((to.y - from.y) * i) / 8,
      })
    await meanwhile?.()
    await send("mouseReleased", to)
  }
  const tap = async (target: Locator) => {
    await target.scrollIntoViewIfNeeded()
    const at = await middleOf(target)
    await send("mousePressed", at)
    await send("mouseReleased", at)
  }
  return { draw, tap }
}

async function middleOf(target: Locator): Promise<Place> {
  const box = await target.boundingBox()
  if (!box) throw new Error("it is not on the screen")
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

const grip = (page: Page, row: number) => options(page).nth(row).locator(".grip")

it("lays a technique, pulls a stack out and drags a row with a pen alone", async () => {
  const { page, problems, close } = await visit({ ...tablet, hasTouch: true })
  await options(page).first().waitFor()
  await startNewPlan(page)
  const pen = penOf(await page.context().newCDPSession(page))
  await pen.tap(page.locator(".technique").filter({ hasText: "Fringe panel" }))
  await expect.poll(() => options(page).count()).toBe(4)

  await pen.tap(options(page).first())
  await pen.tap(page.getByRole("button", { name: "Stack behind…" }))
  const handle = page.getByRole("slider", { name: "How many more, from the last parting" })
  await handle.waitFor()
  const at = await middleOf(handle)
  const before = Number(await handle.getAttribute("aria-valuenow"))
  await pen.draw(at, { x: at.x, y: at.y + 24 })
  await expect.poll(async () => Number(await handle.getAttribute("aria-valuenow"))).toBeLessThan(before)
  const count = Number(await handle.getAttribute("aria-valuenow"))
  await pen.tap(page.getByRole("button", { name: new RegExp(`^Place ${count}`) }))
  await expect.poll(() => options(page).count()).toBe(4 + count)

  await options(page).nth(0).scrollIntoViewIfNeeded()
  const numbers = () => options(page).locator(".number").allTextContents()
  const was = await numbers()
  const [from, to] = [await middleOf(grip(page, 1)), await middleOf(grip(page, 0))]
  await pen.draw(from, { x: to.x, y: to.y - 24 }, () => page.locator("[data-drop]").waitFor())
  await expect.poll(numbers).toEqual([was[1], was[0], ...was.slice(2)])
  expect(problems).toEqual([])
  await close()
})
