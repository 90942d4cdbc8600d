import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, expect, it } from "vitest"
import { savePlan } from "../../web/core/file/planFile"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { goTo, openPlanFile, options } from "../support/screen"
import { servedPlan } from "../support/servedPlan"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

const w = en.cards
const served = join(mkdtempSync(join(tmpdir(), "partline-cards-")), "served.json")
writeFileSync(served, savePlan({ ...servedPlan(), name: "March frame" }))

it("keeps a client over two visits: what stands, what was done, and what has grown", async () => {
  const { page, problems, close } = await visit(portrait)
  await options(page).first().waitFor()
  await openPlanFile(page, served)
  await goTo(page, "Client")
  await page.getByText(w.here.none).waitFor()
  await page.getByRole("button", { name: w.here.choose }).click()
  await page.getByLabel(w.newName).fill("Ada Brightwell")
  await page.getByRole("button", { name: w.make }).click()
  const card = page.getByRole("dialog")
  await card.getByRole("button", { name: w.allergies.add }).click()
  await card.getByRole("radio", { name: w.allergies.kinds.other }).check()
  await card.getByLabel(w.allergies.to).fill("nickel")
  await card.getByLabel(w.allergies.to).press("Tab")
  await card.getByRole("button", { name: w.visits.putHere }).click()
  await card.getByRole("button", { name: w.visits.takeOff }).waitFor()
  await card.getByRole("button", { name: "Close" }).click()
  await page.getByText(/On the card: allergy to nickel/).waitFor()

  // What the client takes along is in the language of the card; the map stays the salon's, and a choice by hand wins.
  await page.getByRole("button", { name: w.here.show }).click()
  await card.getByLabel(w.card.sheetLanguage).selectOption("fr")
  await card.getByRole("button", { name: "Close" }).click()
  await goTo(page, "Sheets")
  const setting = page.locator(".sheet-settings > summary")
  await setting.getByText("English (UK)").waitFor()
  await page.getByRole("radio", { name: en.sheets.names["take-home"], exact: true }).check()
  await setting.getByText("Français").waitFor()
  await setting.click()
  await page.getByRole("radio", { name: "Español" }).check()
  await setting.getByText("Español").waitFor()
  await page.getByRole("radio", { name: en.sheets.names.placement, exact: true }).check()
  await setting.getByText("English (UK)").waitFor()
  await goTo(page, "Client")

  await page.getByRole("button", { name: w.here.show }).click()
  await page.getByRole("dialog").getByRole("button", { name: w.visits.next }).click()
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  const last = page.locator(".last-visit")
  await last.getByText(w.last.limp(1)).waitFor()
  expect(await last.locator("tbody tr").count()).toBe(2)
  await page.getByText(/On the card: allergy to nickel/).waitFor()

  await goTo(page, "Placement")
  await page.locator(".regrowth > summary").click()
  await page.getByRole("button", { name: w.regrowth.propose }).click()
  await page.getByText(/would coat hair lightened/).waitFor({ state: "detached" })
  await page.getByRole("button", { name: `${w.regrowth.foil(1)}: ${w.regrowth.actions.keep}` }).click()
  await page.getByText(/Foil 1 would coat hair lightened on 9 March 2026/).waitFor()
  await goTo(page, "Formula")
  await page.getByText(/^Foil 1 would coat hair that was lightened before, from/).waitFor()

  // The visit is today: there is no time left for a test on the skin.
  await goTo(page, "Client")
  await page.getByRole("button", { name: w.here.show }).click()
  const download = page.waitForEvent("download")
  await card.getByRole("button", { name: w.calendar.add }).click()
  const calendar = await download
  expect(calendar.suggestedFilename()).toBe("ab-days.ics")
  const days = readFileSync(await calendar.path(), "utf8")
  expect(days.match(/SUMMARY:.*/g)).toEqual(["SUMMARY:Visit: AB"])
  expect(days).not.toMatch(/Ada|Brightwell|nickel/)
  expect(problems).toEqual([])
  await close()
})

it("finds, imports, merges and deletes cards, each said before it is done", async () => {
  const { page, problems, close } = await visit(portrait)
  await options(page).first().waitFor()
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByRole("button", { name: w.open }).click()
  const dialog = page.getByRole("dialog")
  await dialog.getByText(w.none).waitFor()
  await dialog.getByLabel(w.import.file).setInputFiles({
    name: "names.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("Name;Phone\nÉmile D.;123\nAda B.;\nA. Brightwell;555\n;7\n"),
  })
  await dialog.getByText("3 new names and 1 row without a name.").waitFor()
  await dialog.getByRole("button", { name: "Make 3 cards" }).click()
  const rows = dialog.locator(".shelf li")
  await expect.poll(() => rows.count()).toBe(3)
  await dialog.getByLabel(w.find).fill("emi")
  await expect.poll(() => rows.allInnerTexts()).toEqual([expect.stringContaining("Émile D.")])
  await dialog.getByLabel(w.find).fill("")

  await rows.getByText("Ada B.").click()
  await dialog.getByText(w.merge.title).click()
  await dialog
    .locator(".merge")
    .getByRole("button", { name: /A\. Brightwell/ })
    .click()
  await dialog.getByText(w.merge.ask("Ada B.", "A. Brightwell")).waitFor()
  await dialog.getByRole("button", { name: w.merge.do, exact: true }).click()
  await expect.poll(() => dialog.getByLabel(w.card.phone).inputValue()).toBe("555")

  await dialog.getByRole("button", { name: w.remove.open }).click()
  await dialog.getByText(w.remove.ask("Ada B.", 0)).waitFor()
  await dialog.getByRole("button", { name: w.remove.do }).click()
  await expect.poll(() => rows.count()).toBe(1)
  expect(problems).toEqual([])
  await close()
})

it("hands out one client, erases them for good with the plan on the screen, and takes them in again", async () => {
  const { page, problems, close } = await visit(portrait)
  await options(page).first().waitFor()
  await openPlanFile(page, served)
  await goTo(page, "Client")
  await page.getByRole("button", { name: w.here.choose }).click()
  const dialog = page.getByRole("dialog")
  await dialog.getByLabel(w.newName).fill("Ada Brightwell")
  await dialog.getByRole("button", { name: w.make }).click()
  await dialog.getByRole("button", { name: w.visits.putHere }).click()
  await dialog.getByRole("button", { name: w.visits.takeOff }).waitFor()
  const saved = async (name: string) => {
    const download = page.waitForEvent("download")
    await dialog.getByRole("button", { name }).click()
    return (await download).path()
  }
  const file = await saved(w.rights.saveFile)
  expect(readFileSync(await saved(w.rights.savePage), "utf8")).toContain("9 March 2026: March frame")

  await dialog.getByRole("button", { name: w.rights.erase }).click()
  await dialog.getByText(w.rights.ask("Ada Brightwell", 1)).waitFor()
  await dialog.getByRole("button", { name: w.rights.do }).click()
  await dialog.getByText(w.none).waitFor()
  await dialog.getByText(w.retention.title).click()
  await expect.poll(() => dialog.locator(".kept-cards li").allInnerTexts()).toHaveLength(3)
  expect(await page.title()).not.toContain("March frame")

  await dialog.getByLabel(w.rights.file).setInputFiles(file)
  await dialog.getByRole("button", { name: en.offline.backup.takeIn }).click()
  await dialog.getByRole("button", { name: /Ada Brightwell/ }).click()
  await dialog.locator(".card-visits").getByText("March frame").waitFor()
  expect(problems).toEqual([])
  await close()
})
