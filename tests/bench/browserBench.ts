import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import type { CDPSession, Page } from "playwright-core"
import { newPlan } from "../../web/core/document/newPlan"
import type { Plan } from "../../web/core/document/schema"
import { savePlan } from "../../web/core/file/planFile"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { openPlanFile } from "../support/screen"
import { chairBench } from "./clockBench"
import { startBench } from "./startBench"
import { median, percentile, type Row } from "./table"

const moves = 150

/** What a moving hand, a turning head and a large plan cost in a real Chromium: script time, by its own profiler. */
export async function browserBench(): Promise<Row[]> {
  await openBrowser()
  try {
    return [
      ...(await stroke()),
      ...(await turn()),
      await stackSteps(),
      await heap(),
      ...(await chairBench()),
      ...(await startBench()),
      firstLoad(),
    ]
  } finally {
    await closeBrowser()
  }
}

async function withPlan<T>(plan: Plan, work: (page: Page, profiler: CDPSession) => Promise<T>): Promise<T> {
  const { page, close } = await visit()
  const file = join(mkdtempSync(join(tmpdir(), "partline-bench-")), "plan.json")
  writeFileSync(file, savePlan(plan))
  await openPlanFile(page, file)
  const profiler = await page.context().newCDPSession(page)
  await profiler.send("Performance.enable")
  const result = await work(page, profiler)
  await close()
  return result
}

const emptyPlan = () => ({ ...newPlan(new Date("2026-03-09T12:00:00Z")), name: "Bench empty" })

async function scriptMs(profiler: CDPSession) {
  const { metrics } = await profiler.send("Performance.getMetrics")
  return 1000 * (metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0)
}

/** Script time of each move, from the input to the frame after it. */
async function costOfMoves(page: Page, profiler: CDPSession, place: (i: number) => [number, number]) {
  const costs: number[] = []
  for (let i = 0; i < moves; i++) {
    const before = await scriptMs(profiler)
    await page.mouse.move(...place(i))
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))))
    costs.push((await scriptMs(profiler)) - before)
  }
  return costs.slice(20)
}

async function centreOf(page: Page): Promise<[number, number, number]> {
  const box = await page.locator(".pane.large .pane-paper").boundingBox()
  if (!box) throw new Error("the large view is not on the screen")
  return [box.x + box.width / 2, box.y + box.height / 2, Math.min(box.width, box.height)]
}

async function stroke(): Promise<Row[]> {
  const draw = (plan: Plan) =>
    withPlan(plan, async (page, profiler) => {
      const [x, y, size] = await centreOf(page)
      await page.getByRole("radio", { name: "Weave", exact: true }).first().check()
      await page.mouse.move(x - 0.06 * size, y - 0.28 * size)
      await page.mouse.down()
      const costs = await costOfMoves(page, profiler, (i) => [
        x - (0.08 + 0.1 * Math.abs(Math.sin(i / 20))) * size,
        y - (0.3 - 0.05 * Math.sin(i / 15)) * size,
      ])
      await page.mouse.up()
      return costs
    })
  const reference = await draw(emptyPlan())
  const costs = await draw(busyPlan(120))
  const row = { unit: "ms", reference: "the same move on an empty plan" }
  return [
    {
      what: "pointer move to draft and figures, 120 sections, 7 views, median",
      value: median(costs),
      limit: 4,
      referenceValue: median(reference),
      ...row,
    },
    {
      what: "the same, 95th percentile",
      value: percentile(costs, 0.95),
      limit: 8,
      referenceValue: percentile(reference, 0.95),
      ...row,
    },
  ]
}

async function turn(): Promise<Row[]> {
  const spin = (plan: Plan) =>
    withPlan(plan, async (page, profiler) => {
      await page.getByRole("button", { name: /^Turntable/ }).click()
      const [x, y] = await centreOf(page)
      await page.mouse.move(x, y)
      await page.mouse.down()
      const costs = await costOfMoves(page, profiler, (i) => [x + 3 * i, y + 20 * Math.sin(i / 12)])
      await page.mouse.up()
      return costs
    })
  const reference = await spin(emptyPlan())
  const costs = await spin(busyPlan(120))
  return [
    {
      what: "turntable, 120 sections, a frame, median",
      value: median(costs),
      unit: "ms",
      limit: 8,
      reference: "the bare head",
      referenceValue: median(reference),
    },
  ]
}

/** A stack stepped between 39 and 40 sections, all of them on seven views; the reference steps between 1 and 2. */
async function stackSteps(): Promise<Row> {
  const steps = (most: number) =>
    withPlan(oneSlice(), async (page, profiler) => {
      await page.getByRole("option").first().click()
      await page.getByRole("button", { name: "Stack behind…" }).click()
      const many = page.getByLabel("How many more", { exact: true })
      for (const [name, value] of [
        ["Gap", 1],
        ["Depth of each", 1],
      ] as const) {
        await page.getByLabel(name).fill(String(value))
        await page.getByLabel(name).press("Enter")
      }
      await many.fill(String(most))
      await many.press("Enter")
      await page.getByText(`All ${most} fit.`).waitFor()
      const costs: number[] = []
      for (let i = 0; i < 60; i++) {
        const before = await scriptMs(profiler)
        await page.keyboard.press(i % 2 === 0 ? "ArrowDown" : "ArrowUp")
        await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))))
        costs.push((await scriptMs(profiler)) - before)
      }
      return median(costs.slice(10))
    })
  const referenceValue = await steps(2)
  return {
    what: "stack preview of 40 sections, a step, 7 views, median",
    value: await steps(40),
    unit: "ms",
    limit: 8,
    reference: "a stack of 2",
    referenceValue,
  }
}

/** One fine slice behind the hairline of an empty plan. */
const oneSlice = (): Plan => {
  const plan = busyPlan(1)
  const [first] = plan.sections
  return { ...plan, sections: [{ ...first, depthMm: { start: 1, end: 1 } }] }
}

async function heap(): Promise<Row> {
  const used = (plan: Plan) =>
    withPlan(plan, async (page, profiler) => {
      await page.waitForTimeout(500)
      await profiler.send("HeapProfiler.collectGarbage")
      const { usedSize } = await profiler.send("Runtime.getHeapUsage")
      return usedSize / 1e6
    })
  const referenceValue = await used(emptyPlan())
  return {
    what: "heap with 500 sections",
    value: await used(busyPlan(500)),
    unit: "MB",
    limit: 120,
    reference: "an empty plan",
    referenceValue,
  }
}

/** Gzipped script that the map waits for: what the page names, but for what comes right after it. */
function firstLoad(): Row {
  const html = readFileSync("dist/index.html", "utf8").replace(/<link[^>]*fetchpriority="low"[^>]*>/g, "")
  const named = readdirSync("dist/assets").filter((name) => name.endsWith(".js") && html.includes(name))
  const sizes = named.map((name) => ({
    name,
    size: gzipSync(readFileSync(`dist/assets/${name}`)).length / 1000,
  }))
  const total = sizes.reduce((sum, { size }) => sum + size, 0)
  return {
    what: "script before the head is drawn, gzipped",
    value: total,
    unit: "kB",
    limit: 200,
    reference: "–",
    referenceValue: 0,
  }
}
