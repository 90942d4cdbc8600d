import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { BrowserContextOptions, Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults as faults } from "../support/axe"
import { closeBrowser, openBrowser, phone, sizes, tablet, visit } from "../support/browser"
import { drawOnFront, options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const folder = mkdtempSync(join(tmpdir(), "partline-techniques-"))

/** A visit that begins with an empty plan and must leave no word on the console. */
async function onEmptyPlan(work: (page: Page) => Promise<void>, size: BrowserContextOptions = tablet) {
  const { page, problems, close } = await visit(size)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await work(page)
  expect(problems).toEqual([])
  await close()
}

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name })
const tile = (page: Page, name: string) => page.locator(".technique").filter({ hasText: name })
const dialog = (page: Page) => page.getByRole("dialog")
const unfoldTechniques = (page: Page) => page.getByText("Techniques", { exact: true }).click()
const readMore = (page: Page, name: string) =>
  button(page, new RegExp(`^Steps and options of ${name}`)).click()

/** Lay the frame, take its first slice, and save that as a technique of one's own. */
async function saveOwn(page: Page, name: string) {
  await tile(page, "Bright frame").click()
  await options(page).first().click()
  await unfoldTechniques(page)
  await button(page, "Save the selected section as a technique…").click()
  await dialog(page).getByRole("heading", { name: "A technique of 1 section" }).waitFor()
  await page.getByLabel("Name", { exact: true }).last().fill(name)
  await page.getByLabel("What it is for, in a sentence").fill("One bright slice.")
  await button(page, "Save this technique").click()
  await tile(page, name).waitFor()
}

async function linkTo(page: Page, name: string) {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"])
  await readMore(page, name)
  await button(page, "Copy link").click()
  await dialog(page).getByText("The link is copied.").waitFor()
  await button(page, "Close").click()
  return page.evaluate(() => navigator.clipboard.readText())
}

describe("a technique of the house", () => {
  it("is changed before it is laid: picture, figures and steps follow at once", () =>
    onEmptyPlan(async (page) => {
      await readMore(page, "Micro-slices, temple to temple")
      const picture = () => dialog(page).locator("svg").first().innerHTML()
      const before = await picture()
      await dialog(page)
        .getByText(/^6 foils/)
        .waitFor()
      await page.getByLabel("Slices a side").focus()
      await page.keyboard.press("ArrowRight")
      await dialog(page)
        .getByText(/^8 foils/)
        .waitFor()
      expect(await picture()).not.toBe(before)
      expect(await dialog(page).locator("ol").textContent()).toContain("4 slices")
      await page.getByLabel("Slice depth").fill("2")
      await button(page, "Place on this head").click()
      expect(await options(page).count()).toBe(8)
      expect(await options(page).first().textContent()).toMatch(/× 2 mm/)
      await button(page, /^Undo: Place the technique/).click()
      await page.getByText("No foils yet.").waitFor()
    }))

  it("is met first on an empty plan, on a tablet and on a phone", async () => {
    for (const size of [tablet, phone])
      await onEmptyPlan(async (page) => {
        const box = await tile(page, "Bright frame").boundingBox()
        const name = await tile(page, "Bright frame").locator(".technique-name").boundingBox()
        const height = page.viewportSize()?.height ?? 0
        expect(box?.y).toBeLessThan(height)
        expect((name?.y ?? height) + (name?.height ?? 0)).toBeLessThanOrEqual(height)
      }, size)
  })

  it("is laid, read and left by keyboard alone", () =>
    onEmptyPlan(async (page) => {
      await tabTo(page, /^Steps and options of Fringe panel/)
      await page.keyboard.press("Enter")
      await dialog(page).getByRole("heading", { name: "Fringe panel" }).waitFor()
      await tabTo(page, /^Weave depth/)
      await page.keyboard.press("ArrowRight")
      await dialog(page).getByText("out of the 6.5 mm in front of it").waitFor()
      await page.keyboard.press("Escape")
      await dialog(page).waitFor({ state: "detached" })
      await tabTo(page, /^Fringe panel/, 4, "Shift+Tab")
      await page.keyboard.press("Enter")
      expect(await options(page).count()).toBe(4)
    }))
})

describe("a technique of one's own", () => {
  it("is the whole frame after one half of it was mirrored", () =>
    onEmptyPlan(async (page) => {
      await drawOnFront(page, [
        [-10, 90],
        [-35, 88],
        [-58, 70],
      ])
      await expect.poll(() => options(page).count()).toBe(1)
      await button(page, /^Mirror/).click()
      await expect.poll(() => options(page).count()).toBe(2)
      await unfoldTechniques(page)
      await button(page, "Save all sections as a technique…").click()
      await dialog(page).getByRole("heading", { name: "A technique of 2 sections" }).waitFor()
    }))

  it("is saved from a selection, laid on the next head, renamed, deleted and put back", () =>
    onEmptyPlan(async (page) => {
      await saveOwn(page, "Corner slice")
      await startNewPlan(page)
      await tile(page, "Corner slice").click()
      expect(await options(page).count()).toBe(1)
      await page.reload()
      await options(page).first().waitFor()
      await unfoldTechniques(page)
      await readMore(page, "Corner slice")
      await dialog(page).getByText("One bright slice.").waitFor()
      await button(page, "Rename, edit").click()
      await page.getByLabel("Name", { exact: true }).last().fill("Soft corner")
      await page.getByLabel("Steps, one a line").fill("Part it.\n\nPlace it.")
      await button(page, "Save this technique").click()
      await readMore(page, "Soft corner")
      expect(await dialog(page).locator("ol li").allTextContents()).toEqual(["Part it.", "Place it."])
      await dialog(page).getByRole("button", { name: "Delete" }).click()
      await page.getByText("“Soft corner” was deleted.").waitFor()
      expect(await tile(page, "Soft corner").count()).toBe(0)
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Undo")
      await page.keyboard.press("Enter")
      await tile(page, "Soft corner").waitFor()
    }))

  it("travels as a file; a file that is none is named and changes nothing", () =>
    onEmptyPlan(async (page) => {
      await saveOwn(page, "Corner slice")
      await readMore(page, "Corner slice")
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        button(page, "Save to a file").click(),
      ])
      expect(download.suggestedFilename()).toBe("corner-slice.partline-technique.json")
      const file = join(folder, "corner.json")
      await download.saveAs(file)
      await dialog(page).getByRole("button", { name: "Delete" }).click()
      await page.getByText("“Corner slice” was deleted.").waitFor()

      const broken = join(folder, "broken.json")
      writeFileSync(broken, readFileSync(file, "utf8").replace('"taken": "front"', '"taken": "above"'))
      await page.getByLabel("Technique file").setInputFiles(broken)
      await page.getByText(/Section 1, side taken: expected "front" or "behind", found "above"/).waitFor()
      await page.getByLabel("Technique file").setInputFiles(file)
      await tile(page, "Corner slice").waitFor()
    }))
})

describe("a technique by link", () => {
  it("is shown first, on any head, then laid or kept; the address is bare afterwards", () =>
    onEmptyPlan(async (page) => {
      const link = await linkTo(page, "Nape peek")
      expect(link).toContain("#technique=1.")
      await page.goto(link)
      await dialog(page).getByText("You opened a shared technique.").waitFor()
      expect(await options(page).count()).toBe(0)
      const picture = () => dialog(page).locator("svg").first().innerHTML()
      const before = await picture()
      await page.getByText("See it on another head").click()
      await page.getByRole("radio", { name: "Large, 62 cm" }).check()
      await page.getByRole("radio", { name: "Receding" }).check()
      expect(await picture()).not.toBe(before)
      await button(page, "Cancel").click()
      await dialog(page).waitFor({ state: "detached" })
      expect(await page.evaluate(() => location.hash)).toBe("")

      await page.goto(link)
      await button(page, "Place on this head").click()
      expect(await options(page).count()).toBe(4)
      await page.goto(link)
      await button(page, "Save this technique").click()
      await dialog(page).waitFor({ state: "detached" })
      await unfoldTechniques(page)
      await page.getByText("Your own").waitFor()
      expect(await tile(page, "Nape peek").count()).toBe(2)
    }))

  it("goes through the device's own sharing, and can be copied by hand where there is no clipboard", () =>
    onEmptyPlan(async (page) => {
      await page.evaluate(() => {
        const share = async ({ url }: ShareData) => {
          document.title = url ?? ""
        }
        Object.defineProperties(navigator, { share: { value: share }, clipboard: { value: undefined } })
      })
      await readMore(page, "Full hairline")
      await button(page, "Share…").click()
      await page.waitForFunction(() => document.title.includes("#technique=1."))
      await button(page, "Copy link").click()
      await dialog(page).getByText("Copy the link from here:").waitFor()
      expect(await page.getByLabel("Link", { exact: true }).inputValue()).toContain("#technique=1.")
    }))

  it("opens on a first visit too, and can begin a plan of its own", async () => {
    let link = ""
    await onEmptyPlan(async (page) => {
      link = await linkTo(page, "Crown halo")
    })
    const { page, problems, close } = await visit()
    await page.goto("about:blank")
    await page.goto(link)
    await dialog(page)
      .getByText(/has 12 sections already/)
      .waitFor()
    await button(page, "Place on a new plan").click()
    await dialog(page).waitFor({ state: "detached" })
    await options(page).first().waitFor()
    expect(await options(page).count()).toBe(3)
    expect(problems).toEqual([])
    await close()
  })

  it("is refused in a sentence when it was cut, altered or is newer, and nothing changes", () =>
    onEmptyPlan(async (page) => {
      const link = await linkTo(page, "Full hairline")
      for (const [bad, words] of [
        [link.slice(0, -20), /cut short or altered on its way/],
        [link.replace(/.{4}$/, "AAAA"), /cut short or altered on its way/],
        [link.replace("=1.", "=3."), /comes from a newer Partline/],
        [`${link}${"A".repeat(210_000)}`, /more than any technique needs/],
      ] as const) {
        await page.goto(bad)
        await dialog(page).getByText(words).waitFor()
        await button(page, "Close").click()
        await dialog(page).waitFor({ state: "detached" })
        expect(await page.evaluate(() => location.hash)).toBe("")
      }
      expect(await options(page).count()).toBe(0)
      expect(await page.getByText("Your own").count()).toBe(0)
    }))
})

it.each(sizes)("is clean to axe where a link opens, whole or cut, on a %s", (_, size) =>
  onEmptyPlan(async (page) => {
    const link = await linkTo(page, "Crown halo")
    for (const address of [link, link.slice(0, -20)]) {
      await page.goto(address)
      await dialog(page).waitFor()
      const other = page.getByText("See it on another head")
      if ((await other.count()) > 0) await other.click()
      expect(await faults(page)).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        size.viewport.width,
      )
      await page.keyboard.press("Escape")
      await dialog(page).waitFor({ state: "detached" })
    }
  }, size),
)

it.each([
  ["tablet", tablet],
  ["phone", phone],
] as const)("is clean to axe and no wider than the page on a %s", (_, size) =>
  onEmptyPlan(async (page) => {
    const expectClean = async () => {
      expect(await faults(page)).toEqual([])
      const [wide, seen] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth])
      expect(wide).toBeLessThanOrEqual(seen)
    }
    await expectClean()
    await readMore(page, "Partial weave")
    await page.getByText("See it on another head").click()
    await expectClean()
    await button(page, "Close").click()
    await tile(page, "Partial weave").click()
    await unfoldTechniques(page)
    await button(page, /as a technique…$/).click()
    await expectClean()
    await button(page, "Cancel").click()
    await expectClean()
  }, size),
)
