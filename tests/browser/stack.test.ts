import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, tablet, type Visit, visit } from "../support/browser"
import { drawOnFront, goTo, options, placeBehind, startNewPlan, takeTool } from "../support/screen"
import { settled } from "../support/settled"

beforeAll(openBrowser)
afterAll(closeBrowser)

async function withSlice(size: typeof tablet, work: (page: Visit["page"]) => Promise<void>) {
  const { page, problems, close } = await visit(size)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await takeTool(page, "Slice")
  await drawOnFront(page, [placeBehind(20, 6), placeBehind(75, 6)])
  await work(page)
  expect(problems).toEqual([])
  await close()
}

const bluish = (page: Visit["page"]) =>
  page
    .locator(".pane.large canvas")
    .last()
    .evaluate((canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? {
        data: [],
      }
      let drawn = 0
      for (let i = 3; i < data.length; i += 4) if (data[i] > 40) drawn += 1
      return drawn
    })

it("shows a stack while its number is stepped, lays it in one act and takes it back in one", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "Stack behind…" }).click()
    await page.locator(".foot").filter({ hasText: "4 sections more" }).waitFor()
    const four = await bluish(page)
    await page.getByRole("button", { name: "One more" }).click()
    await page.locator(".foot").filter({ hasText: "5 sections more" }).waitFor()
    expect(await bluish(page)).toBeGreaterThan(four)
    expect(await options(page).count()).toBe(1)

    await page.getByRole("group", { name: "Alternate with" }).getByRole("radio", { name: "Weave" }).check()
    await page.getByRole("button", { name: "Place 5" }).click()
    expect(await options(page).count()).toBe(6)
    expect(await options(page).allTextContents()).toEqual(
      [/1Slice/, /2Weave/, /3Slice/, /4Weave/, /5Slice/, /6Weave/].map((kind) => expect.stringMatching(kind)),
    )
    expect(await page.getByRole("status").last().textContent()).toBe("Stack 5 behind foil 1")
    await page.getByRole("button", { name: "Undo: Stack 5 behind foil 1" }).click()
    expect(await options(page).count()).toBe(1)
  }))

it("nudges what is in hand with the arrows, taken back together", () =>
  withSlice(tablet, async (page) => {
    const behind = page.getByLabel("Behind the hairline", { exact: true })
    const before = Number(await behind.inputValue())
    await page.keyboard.press("ArrowUp")
    await page.keyboard.press("Shift+ArrowUp")
    await page.getByRole("button", { name: /^Undo: Move \d mm away from the hairline/ }).waitFor()
    const offMm = async () => Math.abs(Number(await behind.inputValue()) - before - 6)
    await expect.poll(offMm).toBeLessThan(0.6)
    await page.keyboard.press("Control+z")
    await expect.poll(() => behind.inputValue()).toBe(String(before))
  }))

it("is called off by Escape, and nothing is left of it", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "Stack behind…" }).click()
    await page.locator(".foot").filter({ hasText: "4 sections more" }).waitFor()
    await page.keyboard.press("Escape")
    await page.locator(".foot").filter({ hasText: "1 foil" }).waitFor()
    expect(await page.getByRole("status").last().textContent()).toBe("Stack cancelled")
    expect(await page.getByRole("heading", { name: /^Stack behind/ }).count()).toBe(0)
    expect(await options(page).count()).toBe(1)
  }))

it("says how many fit, lays those when asked, and names what it cannot use", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "Stack behind…" }).click()
    const many = page.getByLabel("How many more", { exact: true })
    await many.fill("-3")
    await many.press("Enter")
    await page.getByText("How many more: expected 1 to 40.").waitFor()
    await many.fill("40")
    await many.press("Enter")
    const said = page.getByText(/^Only \d+ of 40 fit behind foil 1: the hair ends there\.$/)
    await said.waitFor()
    const fits = /Only (\d+)/.exec((await said.textContent()) ?? "")?.[1]
    await page.getByLabel("Gap").fill("-1")
    await page.getByLabel("Gap").press("Enter")
    await page.getByText("Gap: expected 0 to 60 mm.").waitFor()
    await page.getByLabel("Gap").fill("0")
    await page.getByLabel("Gap").press("Enter")
    await page.getByText(/Gap 0 mm: they lie back to back/).waitFor()
    await page.getByLabel("Gap").fill("3")
    await page.getByLabel("Gap").press("Enter")
    await page.getByRole("button", { name: `Place the ${fits} that fit` }).click()
    expect(await options(page).count()).toBe(Number(fits) + 1)
  }))

it("repeats, thickens and thins with one tap on a phone, and slides a stack out", () =>
  withSlice(phone, async (page) => {
    await page.getByRole("button", { name: "Thicker" }).tap()
    expect(await options(page).first().textContent()).toMatch(/× 4 mm/)
    await page.getByRole("button", { name: "Thinner" }).tap()
    await page.getByRole("button", { name: "Repeat behind" }).tap()
    expect(await options(page).count()).toBe(2)
    await page.getByRole("button", { name: "Stack behind…" }).tap()
    await page.getByRole("slider", { name: "How many more, by sliding" }).fill("7")
    await page.getByRole("button", { name: "Place 7" }).tap()
    expect(await options(page).count()).toBe(9)
  }))

it("opens a stack in sight on a phone, and lays it, however far down the list the hand was", () =>
  withSlice(phone, async (page) => {
    await page.locator(".placement").evaluate((screen) => screen.scrollTo(0, 300))
    await page.getByRole("button", { name: "Stack behind…" }).tap()
    for (const name of ["One fewer", "One more", "Place 4", "Cancel"]) {
      const button = page.getByRole("button", { name })
      await button.waitFor()
      await expect.poll(() => button.evaluate(isOnTop)).toBe(true)
    }
    await page.getByRole("button", { name: "Place 4" }).tap()
    expect(await options(page).count()).toBe(5)
    await page.locator(".strip").waitFor()
  }))

/** Its middle is on the screen and nothing lies over it. */
function isOnTop(button: Element) {
  const { left, top, width, height } = button.getBoundingClientRect()
  return button.contains(document.elementFromPoint(left + width / 2, top + height / 2))
}

it("leaves hair out by name with one tap each, and prints it", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "More", exact: true }).click()
    await page.getByRole("button", { name: "Leave out baby hairs" }).click()
    await options(page).first().click()
    await page.getByRole("button", { name: "Repeat behind" }).click()
    await options(page)
      .first()
      .click({ modifiers: ["Control"] })
    await page.getByRole("button", { name: "Leave out the hair between these two" }).click()
    await options(page).first().click()
    await page.getByRole("button", { name: "Leave out a veil" }).click()
    const names = ["Baby hairs", "Space between 1 and 2", "Veil"]
    const joinWords = await options(page).allTextContents()
    for (const name of names) expect(joinWords).toContainEqual(expect.stringContaining(name))
    await goTo(page, "Sheets")
    await page.locator(".preview svg").first().waitFor()
    const printed = ((await page.locator(".preview").textContent()) ?? "").replace(/\s+/g, " ")
    for (const name of names) expect(printed).toContain(name)
  }))

const handle = (page: Visit["page"]) =>
  page.getByRole("slider", { name: "How many more, from the last parting" })

/** The middle of the handle on the map. */
async function handleAt(page: Visit["page"]): Promise<[number, number]> {
  const box = await handle(page).boundingBox()
  if (!box) throw new Error("the stack has no handle on the map")
  expect([box.width, box.height]).toEqual([44, 44])
  return [box.x + 22, box.y + 22]
}

const asked = async (page: Visit["page"]) => Number(await handle(page).getAttribute("aria-valuenow"))

it("is pulled out on the map by its last parting, seen while it is pulled, and pushed in again", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "Stack behind…" }).click()
    const [x, y] = await handleAt(page)
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x, y - 60, { steps: 12 })
    await expect.poll(() => asked(page)).toBeGreaterThan(6)
    const more = await settled(page, () => asked(page))
    await page
      .locator(".foot")
      .filter({ hasText: `${more} sections more` })
      .waitFor()
    expect(await handle(page).textContent()).toBe(`${more} more`)
    await page.mouse.move(x, y + 20, { steps: 12 })
    await expect.poll(() => asked(page)).toBeLessThan(4)
    const fewer = await settled(page, () => asked(page))
    await page.mouse.up()
    expect(await page.getByLabel("How many more", { exact: true }).inputValue()).toBe(String(fewer))
    await handle(page).focus()
    await page.keyboard.press("ArrowUp")
    await expect.poll(() => asked(page)).toBe(fewer + 1)
    await page.keyboard.press("Home")
    await expect.poll(() => asked(page)).toBe(1)
    await page.getByRole("button", { name: "Place 1" }).click()
    expect(await options(page).count()).toBe(2)
    expect(await handle(page).count()).toBe(0)
  }))

it("goes on behind a pair as pairs, the foils told, taken back in one", () =>
  withSlice(tablet, async (page) => {
    await page.getByRole("button", { name: "Mirror" }).click()
    await options(page).first().click()
    await page.getByRole("button", { name: "Repeat behind" }).click()
    expect(await options(page).count()).toBe(4)
    await page.getByRole("button", { name: "Stack behind…" }).click()
    await page.getByText("On both sides, as pairs: 8 foils in all.").waitFor()
    await page.getByRole("button", { name: "Place 4 on each side" }).click()
    expect(await options(page).count()).toBe(12)
    await page.getByRole("button", { name: /^Undo: Stack 4 behind foil 3 on each side: 8 foils/ }).click()
    expect(await options(page).count()).toBe(4)
  }))
