import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core"
import { type PreviewServer, preview } from "vite"

/** The built app in a real Chromium: a page that fails the test on any console error or request to elsewhere. */
export type Visit = { page: Page; problems: string[]; close(): Promise<void> }

let server: PreviewServer | null = null
let browser: Browser | null = null

/** Serve the build and start the browser: once for a test file. */
export async function openBrowser() {
  server = await preview({
    root: "web",
    configFile: "vite.config.ts",
    logLevel: "warn",
    preview: { port: 0 },
  })
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
  await server?.close()
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
  if (!browser || !server?.resolvedUrls) throw new Error("openBrowser() must come first")
  const context = await browser.newContext({
    timezoneId: "Europe/London",
    locale: "en-GB",
    deviceScaleFactor: 1,
    acceptDownloads: true,
    ...options,
  })
  const page = await context.newPage()
  const problems: string[] = []
  const address = server.resolvedUrls.local[0]
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") problems.push(message.text())
  })
  page.on("pageerror", (error) => problems.push(String(error)))
  page.on("request", (request) => {
    const url = request.url()
    if (!url.startsWith(address) && !url.startsWith("blob:") && !url.startsWith("data:"))
      problems.push(`request to ${url}`)
  })
  await page.goto(address)
  await page.locator(".pane.large [data-hands=ready]").waitFor()
  return { page, problems, close: () => context.close() }
}
