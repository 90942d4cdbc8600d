import type { BrowserContext, Page } from "playwright-core"
import { appAddress, handsReady, newVisitor, newVisitorOnline } from "../support/browser"
import { openHost, thisBuild } from "../support/offlineHost"
import { options } from "../support/screen"
import { median, type Row } from "./table"

const runs = 5

/** How soon the app stands: on the line of a salon, and from what the device keeps. */
export async function startBench(): Promise<Row[]> {
  const line = await several(onALine)
  const warm = await several(warmOffline)
  const row = { unit: "ms", reference: "the head, on the same line" }
  const referenceValue = median(line.map(({ head }) => head))
  return [
    {
      what: "hands on a line of 100 ms and 5 Mbit",
      value: median(line.map(({ hands }) => hands)),
      limit: 2500,
      referenceValue,
      ...row,
    },
    {
      what: "the list on the same line",
      value: median(line.map(({ list }) => list)),
      limit: 2500,
      referenceValue,
      ...row,
    },
    {
      what: "warm start offline, hands",
      value: median(warm.map(({ hands }) => hands)),
      limit: 1000,
      unit: "ms",
      reference: "the head of that start",
      referenceValue: median(warm.map(({ head }) => head)),
    },
  ]
}

type Start = { head: number; hands: number; list: number }

async function several(start: () => Promise<Start>): Promise<Start[]> {
  const starts: Start[] = []
  for (let i = 0; i < runs; i++) starts.push(await start())
  return starts
}

async function onALine(): Promise<Start> {
  const context = await newVisitorOnline()
  const page = await context.newPage()
  const line = await context.newCDPSession(page)
  const bytesASecond = 5_000_000 / 8
  await line.send("Network.enable")
  await line.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: 100,
    downloadThroughput: bytesASecond,
    uploadThroughput: bytesASecond,
  })
  return timed(page, context, () => page.goto(appAddress(), { waitUntil: "commit" }))
}

async function warmOffline(): Promise<Start> {
  const host = await openHost(thisBuild())
  const context = await newVisitor()
  const page = await context.newPage()
  await page.goto(host.address)
  await handsReady(page)
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller) return
    await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done))
  })
  await host.stop()
  return timed(page, context, () => page.reload({ waitUntil: "commit" }))
}

async function timed(page: Page, context: BrowserContext, start: () => Promise<unknown>): Promise<Start> {
  const from = performance.now()
  const passed = () => performance.now() - from
  await start()
  await page.locator(".pane.large canvas").first().waitFor()
  const head = passed()
  await handsReady(page)
  const hands = passed()
  await options(page).first().waitFor()
  const list = passed()
  await context.close()
  return { head, hands, list }
}
