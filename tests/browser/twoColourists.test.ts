import { afterAll, beforeAll, expect, it } from "vitest"
import { isFoil } from "../../geometry/section/section"
import { usualTiming } from "../../web/core/document/usualTiming"
import { closeBrowser, openBrowser, phone, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, sitDown } from "../support/chair"
import { options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("shows who taps where two work: whoever placed last, or whoever was chosen, also after a reload", async () => {
  const { page, problems, close } = await visit(phone)
  await options(page).first().waitFor()
  const known = askedToday()
  const timing = { ...usualTiming, hands: 2 as const, people: ["Ana", "Mia"] }
  const plan = { ...busyPlan(6), date: known.scalp?.on ?? "", consultation: known, timing }
  expect(plan.sections.filter(isFoil).length).toBeGreaterThan(2)
  await openPlanText(page, plan)
  await sitDown(page)
  const whoTaps = page.getByRole("group", { name: "Who taps" })
  const person = (name: string) => whoTaps.getByRole("button", { name })
  const inHand = async () =>
    Promise.all(["Ana", "Mia"].map((name) => person(name).getAttribute("aria-pressed")))
  await whoTaps.waitFor()
  expect(await inHand()).toEqual(["false", "false"])
  const lane = page.getByRole("region", { name: "Mia" })
  await lane.getByRole("button", { name: /^Foil \d+ is on$/ }).tap()
  await expect.poll(inHand).toEqual(["false", "true"])
  await person("Ana").tap()
  await expect.poll(inHand).toEqual(["true", "false"])
  await page.reload()
  await expect.poll(inHand).toEqual(["true", "false"])
  expect(problems).toEqual([])
  await close()
})
