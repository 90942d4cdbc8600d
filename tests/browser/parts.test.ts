import { readdirSync, readFileSync } from "node:fs"
import { afterAll, beforeAll, describe, expect, test } from "vitest"
import {
  appAddress,
  closeBrowser,
  handsReady,
  newVisitor,
  newVisitorOnline,
  openBrowser,
  visit,
} from "../support/browser"

/** Parts of the build that do not come: the server has gone, or a newer build stands in the place of this one. */

beforeAll(openBrowser)
afterAll(closeBrowser)

const answers = {
  "is gone": { status: 404, body: "not found" },
  "is a page": { status: 200, contentType: "text/html", body: "<!doctype html><p>redeployed" },
} as const

describe.each(Object.entries(answers))("a part that %s", (_, answer) => {
  test("leaves the plan, says so in its own place, and comes when it is asked for again", async () => {
    const { page, close } = await visit()
    await page.route(/FormulaScreen-.*\.js/, (route) => route.fulfill(answer))
    await page.getByRole("button", { name: "Formula" }).click()
    await page.getByText("This part could not be loaded.").waitFor()
    await page.getByRole("button", { name: "Placement" }).click()
    await handsReady(page)
    await page.getByRole("button", { name: "Formula" }).click()
    await page.getByText("This part could not be loaded.").waitFor()
    await page.unroute(/FormulaScreen-.*\.js/)
    await page.getByRole("button", { name: "Try again" }).click()
    await page.getByRole("heading", { level: 1, name: "Formula" }).waitFor({ state: "attached" })
    await close()
  })
})

test("the part that saves: says that nothing is saved, and offers the file", async () => {
  const context = await newVisitorOnline()
  const page = await context.newPage()
  await page.route(/startUp-.*\.js/, (route) => route.abort())
  await page.goto(appAddress())
  await page.getByText("could not be loaded. Save the plan to a file").waitFor()
  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save to a file" }).click()
  expect((await download).suggestedFilename()).toMatch(/\.partline\.json$/)
  await context.close()
})

/** The words of British English: the screen's and the worker's builds each hold a file of them. */
const catalogues = readdirSync("dist/assets").filter(
  (file) =>
    /^words-.*\.js$/.test(file) && readFileSync(`dist/assets/${file}`, "utf8").includes("The service"),
)

test("the words: signs stand for them, and the words come when they are asked for again", async () => {
  const context = await newVisitor()
  const page = await context.newPage()
  const ofWords = (url: URL) => catalogues.some((file) => url.pathname.endsWith(file))
  await page.route(ofWords, (route) => route.abort())
  await page.goto(appAddress())
  await page.getByRole("button", { name: "↻" }).first().waitFor()
  await page.unroute(ofWords)
  await page.getByRole("button", { name: "↻" }).first().click()
  await page.getByRole("navigation", { name: "The service" }).waitFor()
  await context.close()
})
