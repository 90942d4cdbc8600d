import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, tablet, visit } from "../support/browser"
import { fingerOn } from "../support/finger"
import { drawOnFront, onLargeView, options, placeBehind, startNewPlan, takeTool } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("tells a hovering mouse where it is by the hairline", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).first().waitFor()
  await startNewPlan(page)
  const beside = page.locator(".pane.large .hand-readout")
  await page.mouse.move(...(await onLargeView(page, "front", ...placeBehind(-25, 10))))
  await beside.filter({ hasText: /10 mm behind the hairline, (left recession|centre front)/ }).waitFor()
  expect(await beside.textContent()).toMatch(/2[456] mm along from centre front/)
  await page.mouse.move(...(await onLargeView(page, "front", 0, 20)))
  await beside.filter({ hasText: /mm in front of the hairline, centre front/ }).waitFor()
  await page.mouse.move(2, 2)
  await beside.waitFor({ state: "hidden" })
  expect(problems).toEqual([])
  await close()
})

it("snaps a straight parting to the last, and leaves it alone with Alt or without the switch", async () => {
  const { page, problems, close } = await visit(tablet)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await takeTool(page, "Slice")
  await drawOnFront(page, [placeBehind(20, 6), placeBehind(75, 6)])
  await page.getByRole("radio", { name: "Straight" }).check()
  const stroke = [placeBehind(24, 12), placeBehind(70, 14)]
  const beside = page.locator(".pane.large .hand-readout")

  await drawOnFront(page, stroke, true)
  expect(await beside.textContent()).toMatch(/Snapped: parallel to the last parting, gap 3 mm/)
  await page.keyboard.down("Alt")
  await drawOnFront(page, [stroke[1]], true)
  await page.mouse.move(...(await onLargeView(page, "front", stroke[1][0] + 1, stroke[1][1])), { steps: 3 })
  await beside.filter({ hasNotText: "Snapped" }).waitFor()
  await page.keyboard.up("Alt")
  await page.mouse.move(...(await onLargeView(page, "front", ...stroke[1])), { steps: 3 })
  await beside.filter({ hasText: "Snapped" }).waitFor()
  await page.mouse.up()
  expect(await page.getByRole("status").last().textContent()).toMatch(
    /^Draw slice: 1[23] mm behind the hairline, right \w+, Snapped: parallel to the last parting/,
  )
  await page.getByRole("button", { name: /^Undo: Draw slice$/ }).click()

  await page.getByRole("checkbox", { name: "Snap" }).uncheck()
  await drawOnFront(page, stroke, true)
  expect(await beside.textContent()).not.toMatch(/Snapped/)
  await page.mouse.up()
  expect(await options(page).count()).toBe(2)
  expect(problems).toEqual([])
  await close()
})

it("shows the place to a finger, above it", async () => {
  const { page, close } = await visit(phone)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await takeTool(page, "Weave")
  const finger = await fingerOn(page)
  const [from, to] = await Promise.all([
    onLargeView(page, "front", ...placeBehind(15, 8)),
    onLargeView(page, "front", ...placeBehind(60, 8)),
  ])
  await finger.down(from)
  await finger.move(to)
  const beside = page.locator(".pane.large .hand-readout")
  await beside.filter({ hasText: /parallel to the hairline/ }).waitFor()
  const box = await beside.boundingBox()
  if (!box) throw new Error("no words beside the finger")
  const apart = [
    Math.max(box.x - to[0], to[0] - box.x - box.width, 0),
    Math.max(box.y - to[1], to[1] - box.y - box.height, 0),
  ]
  expect(Math.hypot(...apart)).toBeGreaterThan(40)
  await finger.up()
  await beside.waitFor({ state: "hidden" })
  expect(await options(page).count()).toBe(1)
  await close()
})
