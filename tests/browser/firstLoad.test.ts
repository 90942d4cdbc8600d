import { readFileSync } from "node:fs"
import { gzipSync } from "node:zlib"
import { afterAll, beforeAll, expect, it } from "vitest"
import { appAddress, closeBrowser, handsReady, newVisitorOnline, openBrowser } from "../support/browser"
import { options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const read = (file: string) => readFileSync(`dist/${file}`, "utf8")
const page = read("index.html")
const scripts = (tag: RegExp) => [...page.matchAll(tag)].map(([, file]) => file)
/** What the head waits for: named in the first page, but not as what comes after it. */
const first = scripts(
  /<(?:script|link rel="modulepreload")(?![^>]*fetchpriority)[^>]*(?:src|href)="\.\/([^"]+\.js)"/g,
)
const named = scripts(/(?:src|href)="\.\/(assets\/[^"]+)"/g)

it("draws the head with at most 200 kB of script, gzipped", () => {
  const bytes = first.reduce((sum, file) => sum + gzipSync(read(file)).length, 0)
  expect(first.length).toBeGreaterThan(0)
  expect(bytes).toBeLessThan(200_000)
})

it("has hands and list after at most 25 requests in at most three waves", async () => {
  const context = await newVisitorOnline()
  const visitor = await context.newPage()
  const asked: string[] = []
  visitor.on("request", (request) => asked.push(request.url().slice(appAddress().length)))
  await visitor.goto(appAddress())
  await handsReady(visitor)
  await options(visitor).first().waitFor()
  expect(asked.length).toBeLessThanOrEqual(25)
  // The first wave is the page, the second what it names, the third what only a file of the second can name.
  const second = named
    .filter((file) => /\.(js|css)$/.test(file))
    .map(read)
    .join("\n")
  const later = asked.filter((file) => file.startsWith("assets/") && !named.includes(file))
  expect(later.filter((file) => !second.includes(file.split("/").pop() ?? file))).toEqual([])
  await context.close()
})
