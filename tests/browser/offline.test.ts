import { readFileSync } from "node:fs"
import type { BrowserContext, Page } from "playwright-core"
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest"
import { serve } from "../../web/host/serve"
import { closeBrowser, handsReady, newVisitor, openBrowser, openPage } from "../support/browser"
import {
  buildNamed,
  buildShown,
  openHost,
  showsBuild,
  type TestHost,
  thisBuild,
  withDamage,
} from "../support/offlineHost"
import { options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

let host: TestHost
let context: BrowserContext
beforeEach(async () => {
  host = await openHost(thisBuild())
  context = await newVisitor()
  return async () => {
    await context.close()
    await host.stop().catch(() => {})
  }
})

const words = en.offline
const caches = (page: Page) => page.evaluate(() => window.caches.keys())

/** Until the worker of this page holds every file. */
const isKept = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller) return
    await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done))
  })

/** Looks for a newer build as the page does each hour; gives what became of it. */
const look = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update().catch(() => {})
    const worker = registration.installing ?? registration.waiting
    const isDecided = () => !worker || ["installed", "redundant"].includes(worker.state)
    while (!isDecided())
      await new Promise((done) => worker?.addEventListener("statechange", done, { once: true }))
    return worker?.state ?? "none"
  })

const screen = (page: Page, place: number) => page.locator("header nav button").nth(place).click()
const isWhole = (page: Page) => page.locator("main:not([aria-busy=true])").waitFor()

async function goThroughAll(page: Page) {
  for (const place of [0, 2, 3, 4]) {
    await screen(page, place)
    await isWhole(page)
    expect((await page.locator("main").textContent())?.length).toBeGreaterThan(40)
  }
  await page.locator(".preview svg").first().waitFor()
  const saved = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save PDF" }).click()
  expect(readFileSync(await (await saved).path(), "latin1")).toMatch(/^%PDF-/)
  await screen(page, 1)
  await handsReady(page)
}

it("opens every screen, a sheet’s PDF and its licences with the host gone, in a new window too", async () => {
  const { page, problems } = await openPage(context, host.address)
  await isKept(page)
  await host.stop()
  await goThroughAll(page)
  await page.reload()
  await handsReady(page)
  const second = await openPage(context, `${host.address}?from=elsewhere#part`)
  await goThroughAll(second.page)
  const plain = await context.newPage()
  await plain.goto(`${host.address}licences.txt`)
  expect(await plain.locator("body").textContent()).toContain("SIL OPEN FONT LICENSE")
  await options(page).first().waitFor()
  expect([...problems, ...second.problems]).toEqual([])
})

it("keeps the policy’s header with the page", async () => {
  const { page } = await openPage(context, host.address)
  await isKept(page)
  await host.stop()
  const answer = await page.reload()
  expect(answer?.headers()["content-security-policy"]).toMatch(/frame-ancestors 'none'$/)
})

it("offers a newer build, changes every window only when asked, and keeps one build", async () => {
  const { page, problems } = await openPage(context, host.address)
  await isKept(page)
  const before = await caches(page)
  host.serves(buildNamed("B"))
  const other = await openPage(context, host.address)
  expect(await buildShown(other.page)).toBeNull()
  expect(await look(page)).toBe("installed")
  await page.getByText(words.update.ready).waitFor()
  await screen(page, 2)
  await isWhole(page)
  expect(await buildShown(page)).toBeNull()
  await screen(page, 1)
  await page.getByRole("button", { name: words.update.load }).click()
  for (const each of [page, other.page]) {
    await showsBuild(each, "B")
    await handsReady(each)
  }
  const after = await caches(page)
  expect(after).toHaveLength(1)
  expect(after).not.toEqual(before)
  await host.stop()
  await page.reload()
  await handsReady(page)
  expect(await buildShown(page)).toBe("B")
  expect([...problems, ...other.problems]).toEqual([])
})

it("asks nobody at the chair, and does not load anew what another window does there", async () => {
  const { page } = await openPage(context, host.address)
  await isKept(page)
  const { page: chair } = await openPage(context, host.address)
  await screen(chair, 3)
  await chair.getByRole("button", { name: "Start at the chair" }).click()
  await chair.getByRole("button", { name: /^Start/ }).waitFor()
  host.serves(buildNamed("B"))
  await look(page)
  await page.getByText(words.update.ready).waitFor()
  expect(await chair.getByText(words.update.ready).count()).toBe(0)
  await page.getByRole("button", { name: words.update.load }).click()
  await page.getByText(words.update.refused).waitFor()
  expect([await buildShown(page), await buildShown(chair)]).toEqual([null, null])
  await chair.getByRole("button", { name: /Leave/ }).click()
  await chair.getByText(words.update.ready).waitFor()
  await page.getByRole("button", { name: words.update.load }).click()
  for (const each of [page, chair]) await showsBuild(each, "B")
})

it("is put off until the next start", async () => {
  const { page } = await openPage(context, host.address)
  await isKept(page)
  host.serves(buildNamed("B"))
  await look(page)
  await page.getByRole("button", { name: words.update.later }).click()
  expect(await page.getByText(words.update.ready).count()).toBe(0)
  await page.reload()
  await handsReady(page)
  await page.getByText(words.update.ready).waitFor()
})

it("refuses a build of which one file is damaged or of another build, and goes on with its own", async () => {
  const { page } = await openPage(context, host.address)
  await isKept(page)
  const [own] = await caches(page)
  const newer = buildNamed("B")
  host.serves(withDamage(newer, "licences.txt"))
  expect(await look(page)).toBe("redundant")
  expect(await page.getByText(words.update.ready).count()).toBe(0)
  await page.reload()
  await handsReady(page)
  expect(await buildShown(page)).toBeNull()
  host.serves(newer)
  expect(await look(page)).toBe("installed")
  await page.getByText(words.update.ready).waitFor()
  expect(await caches(page)).toContain(own)
})

it("says in Plans that it could not be copied, and copies it at the next start", async () => {
  host.serves(withDamage(thisBuild(), "licences.txt"))
  const { page } = await openPage(context, host.address)
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByText(words.kept.failed).waitFor()
  host.serves(thisBuild())
  await page.reload()
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByText(words.kept.kept).waitFor()
})

it("does not show itself inside a page of someone else", async () => {
  const stranger = await serve(
    () => ({
      status: 200,
      headers: { "Content-Type": "text/html" },
      body: `<iframe src="${host.address}"></iframe>`,
    }),
    { host: "localhost", port: 0 },
  )
  const page = await context.newPage()
  const refused = page.waitForEvent("console", (message) => /frame-ancestors/.test(message.text()))
  await page.goto(`http://localhost:${stranger.port}/`)
  await refused
  await stranger.stop()
})
