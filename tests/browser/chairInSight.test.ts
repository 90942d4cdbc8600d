import type { Locator, Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, sizes, visit } from "../support/browser"
import { putOn, sitDown, takeClock } from "../support/chair"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

/** Whether a finger could touch it now: whole on the screen, and nothing over it. */
const isInReach = (button: Locator) =>
  button.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect()
    const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2)
    return top >= 0 && bottom <= innerHeight && element.contains(hit)
  })

/** Pressed where it is, without the scroll that the test's own click would make. */
async function pressInSight(page: Page, name: RegExp | string) {
  const button = page.getByRole("button", { name }).first()
  await button.waitFor()
  expect(await isInReach(button), String(name)).toBe(true)
  await button.click()
}

/** Three foils past their max time, one at its planned time, two bowls past their pot life, and checks that are due. */
async function threeCallsLate(page: Page) {
  for (const foil of [1, 2, 3]) await putOn(page, foil)
  await page.clock.runFor(35 * minute)
  for (const foil of [4, 5, 6]) await putOn(page, foil)
  await page.clock.runFor(13 * minute)
  await page.getByText("and 2 more", { exact: true }).waitFor()
}

/** A phone whose browser shows its bars. */
const lowPhone = { ...phone, viewport: { width: 390, height: 664 } }
const low = [
  ["low phone", lowPhone],
  ["small phone", { ...phone, viewport: { width: 360, height: 640 } }],
  ["phone lying down", { ...phone, viewport: { width: 844, height: 390 } }],
  ["tablet at 200 %", { viewport: { width: 683, height: 512 } }],
  ["low tablet", { viewport: { width: 1024, height: 690 } }],
] as const

/** Whether no other part lies over any corner of it. */
const isUncovered = (button: Locator) =>
  button.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect()
    const corners = [left + 12, right - 12].flatMap((x) => [top + 8, bottom - 8].map((y) => [x, y] as const))
    return corners.every(([x, y]) => element.contains(document.elementFromPoint(x, y)))
  })

it.each(low)("shows three late calls whole beside the next foil on a %s", async (_, size) => {
  const { page, problems, close } = await visit(size)
  await takeClock(page)
  await sitDown(page)
  const earlier = page.getByRole("button", { name: "It went on earlier" })
  if (size.viewport.width < 700) expect(await isUncovered(earlier)).toBe(true)
  await threeCallsLate(page)
  const calls = await page.locator(".calls .touch").all()
  expect(calls.length).toBe(7)
  for (const call of calls) expect(await isUncovered(call), (await call.textContent()) ?? "").toBe(true)
  for (const name of ["Foil 7 is on", /^Rinse now/, /^Mix [AB] now/, "Undo tap", "Something is wrong"])
    expect(await isUncovered(page.getByRole("button", { name })), String(name)).toBe(true)
  expect(problems).toEqual([])
  await close()
})

it.each([...sizes, ["low phone", lowPhone] as const])(
  "keeps the bowl and the rinse in sight beside the next foil under three late calls on a %s",
  async (_, size) => {
    const { page, problems, close } = await visit(size)
    await takeClock(page)
    await sitDown(page)
    await threeCallsLate(page)
    for (const name of ["Foil 7 is on", /^Rinse now/, /^Mix [AB] now/]) {
      const button = page.getByRole("button", { name })
      if (name !== "Foil 7 is on" && (await button.count()) === 0) continue
      expect(await isInReach(button), String(name)).toBe(true)
    }
    expect(await page.getByRole("button", { name: /^Rinse now/ }).count()).toBe(1)
    expect(problems).toEqual([])
    await close()
  },
)

it.each(sizes)("keeps each minute's taps in sight under three late calls on a %s", async (_, size) => {
  const { page, problems, close } = await visit(size)
  await takeClock(page)
  await sitDown(page)
  await threeCallsLate(page)
  await pressInSight(page, "Foil 7 is on")
  await pressInSight(page, /^Foils 1 to 3: off now/)
  await pressInSight(page, /^Off$/)
  await pressInSight(page, /^Foils 2.*3: off now/)
  await pressInSight(page, "Checked")
  await pressInSight(page, "Half a level lighter")
  await page.getByRole("group", { name: "Stretch" }).getByRole("button", { name: "Ok" }).click()
  await page.getByRole("group", { name: "Scalp" }).getByRole("button", { name: "Ok" }).click()
  await pressInSight(page, "Moist")
  await pressInSight(page, "Save check")
  await page.locator(".look-pad").waitFor({ state: "detached" })
  expect(await page.locator("main.chair").evaluate(({ scrollTop }) => scrollTop)).toBe(0)
  expect(problems).toEqual([])
  await close()
})
