import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { goTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const heading = (name: string) => ({ name, exact: true, level: 1 })

describe("the address of a screen", () => {
  it("leads back and forward from screen to screen, and to the same screen after a reload", async () => {
    const { page, problems, close } = await visit(portrait)
    await goTo(page, "Formula")
    await page.getByRole("heading", heading("Formula")).waitFor()
    await goTo(page, "Sheets")
    await page.getByRole("heading", heading("Sheets")).waitFor()
    expect(await page.title()).toMatch(/^Sheets: /)
    await page.goBack()
    await page.getByRole("heading", heading("Formula")).waitFor()
    expect(await page.title()).toMatch(/^Formula: /)
    await page.goBack()
    await page.locator(".pane.large canvas").first().waitFor()
    await page.goForward()
    await page.getByRole("heading", heading("Formula")).waitFor()
    await page.reload()
    await page.getByRole("heading", heading("Formula")).waitFor()
    expect(problems).toEqual([])
    await close()
  })
})

describe("the example", () => {
  it("says that it is one, and leads to one's own plan, which begins with the client and a tool in hand", async () => {
    const { page, problems, close } = await visit(portrait)
    await page.getByText("An invented example.").waitFor()
    await page.reload()
    await page.getByText("An invented example.").waitFor()
    await page.getByRole("button", { name: "Start your own plan" }).click()
    await page.getByRole("heading", heading("Client")).waitFor()
    expect(await page.getByText("An invented example.").count()).toBe(0)
    await goTo(page, "Placement")
    await page.getByText("No foils yet.").waitFor()
    expect(await page.locator(".tools").getByRole("radio", { name: "Slice" }).isChecked()).toBe(true)
    expect(problems).toEqual([])
    await close()
  })
})
