import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { drawOnFront, options, placeBehind, startNewPlan, startNewPlanByKeys, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

/** The hairline frame: a parallel slice, a diagonal-back slice and a backcombed weave, and their twins. */
const frame = [
  /1Slice, right/,
  /2Slice, left/,
  /3Slice, right/,
  /4Slice, left/,
  /5Backcomb, (\d+ mm behind the hairline, )?right/,
  /6Backcomb, (\d+ mm behind the hairline, )?left/,
]

const joinWords = (page: Page) => options(page).allTextContents()

/** The words of a row in hand: only there does the list say how its parting runs. */
const inHand = (page: Page, row: number) =>
  options(page).nth(row).and(page.locator("[aria-selected=true]")).textContent()

it("takes at most 12 actions by hand on both sides", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await startNewPlan(page)
  let actions = 0
  const tap = async (role: "radio" | "button", name: string) => {
    actions += 1
    await page.getByRole(role, { name, exact: true }).first().click()
  }
  const drag = async (...places: (readonly [number, number])[]) => {
    actions += 1
    await drawOnFront(page, places)
  }

  await tap("radio", "Slice")
  await drag(placeBehind(18, 5), placeBehind(70, 5))
  await tap("button", "Mirror")
  await tap("radio", "Straight")
  await drag(placeBehind(20, 14), placeBehind(72, 30))
  await tap("button", "Mirror")
  await tap("radio", "Backcomb")
  await drag(placeBehind(20, 34), placeBehind(72, 50))
  await tap("button", "Mirror")

  expect(await joinWords(page)).toEqual(frame.map((words) => expect.stringMatching(words)))
  for (const [row, runs] of [
    [0, "parallel to the hairline"],
    [2, "diagonal back"],
    [4, "diagonal back"],
  ] as const) {
    await options(page).nth(row).click()
    expect(await inHand(page, row)).toContain(runs)
  }
  console.log(`hairline frame by hand: ${actions} actions`)
  expect(actions).toBe(9)
  expect(problems).toEqual([])
  await close()
})

it("is built by keyboard alone, by words, a typed distance and mirrors", async () => {
  const { page, problems, close } = await visit()
  const press = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key)
  }
  const type = async (label: RegExp, text: string) => {
    await tabTo(page, label)
    await page.keyboard.type(text)
    await press("Tab")
  }
  await options(page).first().waitFor()
  await startNewPlanByKeys(page)

  await tabTo(page, /Add by typing/)
  await press("Enter")
  await tabTo(page, /^The client’s left/)
  await press("ArrowRight")
  await type(/Behind the hairline where it starts/, "5")
  await tabTo(page, /^Add slice/)
  await press("Enter")
  await type(/Behind the hairline where it starts/, "14")
  await type(/Drifts back by/, "10")
  await tabTo(page, /^Add slice/)
  await press("Enter")
  await tabTo(page, /^Slice/, 80, "Shift+Tab")
  await press("ArrowRight", "ArrowRight")
  await type(/Behind the hairline where it starts/, "33")
  await type(/Drifts back by/, "9")
  await tabTo(page, /^Add backcomb/)
  await press("Enter")
  expect(await options(page).count()).toBe(3)

  await tabTo(page, /^Foils in order/, 120, "Shift+Tab")
  await press("Home", "Shift+ArrowDown", "Shift+ArrowDown", "m")
  expect(await joinWords(page)).toEqual(
    [
      /1Slice, right/,
      /2Slice, right/,
      /3Backcomb, right/,
      /4Slice, left/,
      /5Slice, left/,
      /6Backcomb, left/,
    ].map((words) => expect.stringMatching(words)),
  )
  await press("Home")
  expect(await inHand(page, 0)).toContain("parallel to the hairline")
  await press("ArrowDown")
  expect(await inHand(page, 1)).toContain("diagonal back")

  await press("Home")
  await tabTo(page, /^All settings/)
  await press("Enter")
  await type(/Behind the hairline/, "6")
  await page.getByText("Move behind the hairline").waitFor({ state: "attached" })
  expect(problems).toEqual([])
  await close()
})
