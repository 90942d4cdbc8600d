import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { openPlanFile, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const folder = mkdtempSync(join(tmpdir(), "partline-files-"))

it("names what is wrong with a file and leaves the open plan alone", async () => {
  const { page, problems, close } = await visit()
  await options(page).nth(10).waitFor()
  const example = readFileSync("presets/plans/examplePlan.partline.json", "utf8")
  const broken = join(folder, "broken.json")
  const plan = JSON.parse(example)
  plan.sections[2].depthMm.start = 500
  writeFileSync(broken, JSON.stringify(plan))

  await page.getByRole("button", { name: /Plans…/ }).click()
  for (const [text, words] of [
    [JSON.stringify(plan), /Section 3, depth at the start: expected 0.5 to 60 mm, found 500/],
    [example.slice(0, 400), /cut short/],
    ['{"kind":"partline-plan","version":7}', /newer Partline/],
  ] as const) {
    writeFileSync(broken, text)
    await page.getByLabel("Plan file").setInputFiles(broken)
    await page.getByRole("dialog").getByText(words).first().waitFor()
  }
  await page.keyboard.press("Escape")
  expect(await options(page).count()).toBe(12)
  expect(problems).toEqual([])
  await close()
})

it("gives back from a file the plan that was saved to it", async () => {
  const { page, problems, close } = await visit()
  await options(page).nth(10).waitFor()
  await page.getByRole("button", { name: /Plans…/ }).click()
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save everything to a file" }).click(),
  ])
  const saved = join(folder, "saved.json")
  await download.saveAs(saved)
  await page.keyboard.press("Escape")
  await openPlanFile(page, saved)
  expect(await options(page).count()).toBe(12)
  expect(problems).toEqual([])
  await close()
})
