import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { countedHand, threeDaysAgo } from "../support/countedHand"
import { goTo, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("fills a full usual consultation by touch on a tablet in at most 40 taps and 4 typed values", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await startNewPlan(page)
  await goTo(page, "Client")
  const { count, chip, type, choose, button } = countedHand(page)

  // The hair now: never treated, level 6 all over; the ends lightened once, lighter and porous.
  await chip("Level now", "6")
  await chip("Hair history", "Never treated")
  await chip("Porosity", "Normal")
  await chip("Elasticity, stretched wet", "Springs back")
  await chip("Along the strand", "Ends")
  await chip(/^Level now/, "8")
  await chip("Hair history", "Lightened")
  await chip("Porosity", "High")
  // What she wants.
  await chip("Target level, before toner", "9")
  await chip("Finish tone", "Cool")
  await chip("Brightest where", "Hairline")
  await chip("Brightest where", "Top")
  await chip("How close to the root", "Standard, 6 mm")
  await chip("Weeks between visits", "10")
  await chip("Grey", "None")
  // Density, fibre and length.
  await chip("Density", "Low 170")
  await chip("Hair texture", "Fine 55")
  await choose("Front", "chin")
  await choose("Sides", "shoulder")
  await choose("Back", "shoulder blade")
  // Health.
  await type("Age, not asked", "34")
  await chip("Scalp", "Calm")
  await chip(/^Contact lenses/, "Yes")
  const alone = [/^Ever had wheezing/, /^Allergic to/, /^Any other allergy/, /^A rash/, /^Pregnant/]
  const breathing = [/^Asthma/, /^Does the person mixing/]
  for (const question of [...alone, ...breathing]) await chip(question, "No")
  await button("I asked all of these: “No” to the remaining 11")
  // Tests: the strand held; the toner was put on three days ago and is read now.
  await chip("House powder (invented)", "Passed")
  await button("Apply test now: House toner (invented)")
  await page.getByLabel("Applied", { exact: true }).fill(threeDaysAgo())
  count.taps += 1
  count.typed += 1
  await chip("Result", "Clear")
  await type("Read by", "J")
  await chip("Anything changed since?", "No")

  for (const step of ["Ask", "Hair", "What the client wants"])
    await page.getByRole("heading", { name: new RegExp(`^${step} (\\d+) of \\1$`) }).waitFor()
  await page
    .getByText(
      "All over: roots and mid-lengths level 6, never treated, normal porosity, springs back; ends level 8, lightened, high porosity, springs back.",
    )
    .waitFor()
  await page.getByText(/^Clear, read .* Valid today/).waitFor()
  console.info(`A full usual consultation: ${count.taps} taps, ${count.typed} of them to type a value.`)
  expect(count.taps).toBeLessThanOrEqual(40)
  expect(count.typed).toBeLessThanOrEqual(4)
  await goTo(page, "Formula")
  await page.getByRole("heading", { name: /^Cleared on / }).waitFor()
  expect(await page.getByText(/more things? not known/).count()).toBe(0)
  expect(problems).toEqual([])
  await close()
})

it("takes an answer back by its cross or by the space bar, never by another tap", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await startNewPlan(page)
  await goTo(page, "Client")
  const asthma = page.getByRole("group", { name: "Asthma?" })
  const [yes, no] = [asthma.getByLabel("Yes"), asthma.getByLabel("No")]
  const undo = page.getByRole("button", { name: /^Undo: / })
  await yes.tap()
  const done = await undo.getAttribute("aria-label")
  await yes.tap()
  await yes.tap()
  expect(await yes.isChecked()).toBe(true)
  expect(await undo.getAttribute("aria-label")).toBe(done)
  await asthma.getByRole("button", { name: "Clear: Asthma?" }).tap()
  expect(await yes.isChecked()).toBe(false)
  expect(await yes.evaluate((radio) => radio === document.activeElement)).toBe(true)

  await no.focus()
  await page.keyboard.press("Space")
  expect(await no.isChecked()).toBe(true)
  await page.keyboard.press("ArrowLeft")
  expect(await yes.isChecked()).toBe(true)
  await page.keyboard.press("Space")
  expect([await yes.isChecked(), await no.isChecked()]).toEqual([false, false])
  expect(problems).toEqual([])
  await close()
})
