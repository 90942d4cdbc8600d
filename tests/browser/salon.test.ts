import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, startClock, tapAway } from "../support/chair"
import { goTo, options, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const unfold = (page: Page, name: RegExp) => page.locator("summary").filter({ hasText: name }).click()
/** Opens the fields of a mix, by its place. */
const openMix = (page: Page, nth: number) => page.locator(".mix > summary").nth(nth).click()
async function type(page: Page, name: string, value: string) {
  await page.getByLabel(name, { exact: true }).fill(value)
  await page.keyboard.press("Enter")
}

it("keeps a sheet that is in order, mixes by it, and brings it to the next plan", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await unfold(page, /^Your product sheets/)
  await page.getByRole("button", { name: "Add a product sheet" }).click()
  const keep = page.getByRole("button", { name: "Save this product sheet" })
  expect(await keep.isDisabled()).toBe(true)
  await type(page, "Name on the tub", "Salon powder")
  await type(page, "Thickest mix", "2")
  await type(page, "Thinnest mix", "1")
  await page.getByText("runs backwards. Enter the thicker mix first: 1 to 2").waitFor()
  await type(page, "Thinnest mix", "2.5")
  await page.getByRole("button", { name: "Add 20 vol" }).click()
  await keep.click()
  await openMix(page, 0)
  await page.getByRole("radio", { name: "Salon powder" }).check()
  await goTo(page, "Client")
  await page
    .getByRole("group", { name: "Target level, before toner" })
    .getByRole("radio", { name: "9" })
    .check()
  await page.getByRole("group", { name: "Level now" }).getByRole("radio", { name: "7" }).check()
  await goTo(page, "Formula")
  await openMix(page, 0)
  await page.getByText("Salon powder states no levels of lift. Enter them from the tub.").first().waitFor()

  await goTo(page, "Placement")
  await startNewPlan(page)
  await goTo(page, "Formula")
  await openMix(page, 0)
  await page.getByRole("radio", { name: "Salon powder" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("lets Tab reach Save while a fault stands, saves nothing then, and saves it once cured", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await unfold(page, /^Your product sheets/)
  await page.getByLabel("or start from an invented one").selectOption({ index: 1 })
  const keep = page.getByRole("button", { name: "Save this product sheet" })
  const tabToKeep = async () => {
    await page.getByLabel("for", { exact: true }).focus()
    await page.keyboard.press("Tab")
    expect(await keep.evaluate((button) => button === document.activeElement)).toBe(true)
    await page.keyboard.press("Enter")
  }
  const kept = page.getByRole("list", { name: "Saved product sheets" })
  await page.getByText("Name: the product has none.").waitFor()
  await tabToKeep()
  expect(await keep.count()).toBe(1)
  expect(await kept.count()).toBe(0)
  await type(page, "Name on the tub", "Salon powder")
  await tabToKeep()
  await kept.getByRole("button", { name: "Salon powder" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("learns from weighed bowls, keeps them over a reload, and leaves none out unasked", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await type(page, "Before", "150")
  await type(page, "After", "160")
  await page.getByText("150 g before and 160 g after: the bowl weighs more after").waitFor()
  await type(page, "After", "138.5")
  await page.getByRole("button", { name: "Save: 11.5 g used" }).click()
  await page.getByText("1 weighing").waitFor()
  await page.reload()
  await page.getByText("1 weighing").waitFor()

  const rows = Array.from({ length: 12 }, (_, i) => [
    4 + ((3 * i) % 7),
    1500 + 400 * ((2 * i) % 5),
    4 + (i % 5),
  ])
  const list = rows.map(([hair, strand, foils]) =>
    [hair, strand, (1.2 * (0.3 * foils + 2 * hair + 0.003 * strand)).toFixed(1), foils].join(","),
  )
  const csv = ["hairG,strandAreaCm2,productG,foils", ...list, "4,1500,90.5,4"].join("\n")
  await page
    .getByLabel("Add a list, CSV")
    .setInputFiles({ name: "bowls.csv", mimeType: "text/csv", buffer: Buffer.from(csv) })
  await page.getByText(/bowls\.csv, line 14: 90\.5 g weighed/).waitFor()
  await unfold(page, /^14 weighings/)
  await page.getByRole("checkbox", { name: "Counts" }).first().uncheck()
  await page.getByText(/^This plan uses what was learnt from all weighings/).waitFor()
  await page.getByRole("button", { name: "Back to the starting figures" }).click()
  await page.getByText("Until then this plan uses the starting figures, which are assumptions.").waitFor()
  await page.getByText("14 weighings").waitFor()
  expect(problems).toEqual([])
  await close()
})

it("groups foils into mixes by their hair, and pours a strength that is not on the shelf from two bottles", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await expect.poll(() => page.locator(".mix").count()).toBe(2)
  await page.getByRole("button", { name: "Use this suggestion" }).click()
  await expect.poll(() => page.locator(".mix").count()).toBe(1)
  await openMix(page, 0)
  await page.getByRole("radio", { name: "20 vol, 6 %" }).check()
  await unfold(page, /^Your salon: phone, stock, scale and prices/)
  await page.getByRole("checkbox", { name: "10 vol, 3 %" }).check()
  await page.getByRole("checkbox", { name: "40 vol, 12 %" }).check()
  await page.getByText(/^Developer by weight: .* g of 40 vol \(12 %\) \+ .* g of 10 vol \(3 %\)\.$/).waitFor()
  await type(page, "Placement, once", "45")
  await page.getByText("In all").waitFor()
  expect(problems).toEqual([])
  await close()
})

it("says whose service it is and how the salon is reached, whatever plan is open and however old it is", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await unfold(page, /^Your salon: phone, stock, scale and prices/)
  await type(page, "Salon’s name", "Corner (invented)")
  await type(page, "Salon’s phone", "555 0100")
  await type(page, "Local emergency number", "112")
  const { salon: _, ...old } = busyPlan(2)
  await goTo(page, "Placement")
  await openPlanText(page, { ...old, client: { initials: "K.W." }, consultation: askedToday() })
  const press = (name: string) => page.getByRole("button", { name }).first().click()
  const says = async (...texts: string[]) => {
    for (const text of texts) await page.getByRole("main").getByText(text, { exact: true }).waitFor()
  }
  const whereToCall = ["Emergency number: 112", "Salon: Corner (invented). Salon phone: 555 0100"]
  await goTo(page, "Timing")
  await press("Start at the chair")
  await says("K.W.")
  await startClock(page)
  await says("K.W.")
  await press("Something is wrong")
  await says("K.W.", ...whereToCall)
  await press("Back to the clock")
  await tapAway(page.getByRole("button", { name: /^Leave/ }))
  await goTo(page, "Placement")
  await startNewPlan(page)
  await page.getByRole("complementary", { name: "Service going on" }).getByText("K.W.").waitFor()
  await page.evaluate(() => {
    location.hash = "#chair"
  })
  await says(
    "K.W.",
    "The service of another plan goes on in this window. Open this plan in a second window to run both.",
  )
  await press("Something is wrong")
  await says("K.W.", ...whereToCall)
  expect(problems).toEqual([])
  await close()
})
