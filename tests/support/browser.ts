import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core"
import { readBuild } from "../../web/host/readBuild"
import { type Serving, serveBuild } from "../../web/host/serve"

/** The built app in a real Chromium: a page that fails the test on any console error or request to elsewhere. */
export type Visit = { page: Page; problems: string[]; close(): Promise<void> }

let server: Serving | null = null
let browser: Browser | null = null

/** Serve the build and start the browser: once for a test file. */
export async function openBrowser() {
  const build = readBuild("dist")
  server = await serveBuild(() => build, { host: "localhost", port: 0 })
  browser = await chromium.launch({
    executablePath: process.env.CHROME_PATH ?? "/usr/bin/chromium",
    args: [
      ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  })
}

export async function closeBrowser() {
  await browser?.close()
  await server?.stop()
}

export const tablet = { viewport: { width: 1366, height: 1024 } }
export const portrait = { viewport: { width: 834, height: 1194 } }
export const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }

/** The three sizes that every screen is looked at, by name. */
export const sizes = [
  ["tablet", tablet],
  ["portrait", portrait],
  ["phone", phone],
] as const

/** A fresh visitor: an empty database, a fixed clock zone and language. */
export async function visit(options: BrowserContextOptions = tablet): Promise<Visit> {
  const context = await newVisitorOnline(options)
  const { page, problems } = await openPage(context, appAddress())
  return { page, problems, close: () => context.close() }
}

/** Where the build is served. */
export function appAddress(): string {
  if (!server) throw new Error("openBrowser() must come first")
  return `http://localhost:${server.port}/`
}

/** A visitor whose browser keeps no build: its worker would fetch the whole app for each one. */
export async function newVisitorOnline(options: BrowserContextOptions = tablet): Promise<BrowserContext> {
  const context = await newVisitor(options)
  await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"))
  return context
}

export function newVisitor(options: BrowserContextOptions = tablet): Promise<BrowserContext> {
  if (!browser) throw new Error("openBrowser() must come first")
  return browser.newContext({
    timezoneId: "Europe/London",
    locale: "en-GB",
    deviceScaleFactor: 1,
    acceptDownloads: true,
    ...options,
  })
}

/** The app in a new window of a visitor, with hands ready. */
export async function openPage(
  context: BrowserContext,
  address: string,
): Promise<{ page: Page; problems: string[] }> {
  const page = await context.newPage()
  const problems: string[] = []
  const { origin } = new URL(address)
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning")
      problems.push(`${message.text()} ${message.location().url}`.trim())
  })
  page.on("pageerror", (error) => problems.push(String(error)))
  page.on("request", (request) => {
    const url = request.url()
    if (!url.startsWith(`${origin}/`) && !url.startsWith("blob:") && !url.startsWith("data:"))
      problems.push(`request to ${url}`)
  })
  await page.goto(address)
  await handsReady(page)
  return { page, problems }
}

export const handsReady = (page: Page) => page.locator(".pane.large [data-hands=ready]").waitFor()
