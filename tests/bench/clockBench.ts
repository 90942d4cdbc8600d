import type { Page } from "playwright-core"
import { solveOrder } from "../../web/service/solveOrder"
import { planService } from "../../web/service/timing"
import { visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { openPlanText, sitDown } from "../support/chair"
import { always, foilsAlike, person, timedFoil, timedMix, timedService } from "../support/timedService"
import { median, type Row } from "./table"

const timed = (work: () => void) => {
  const start = performance.now()
  work()
  return performance.now() - start
}
const costOf = (work: () => void, runs: number) => median(Array.from({ length: runs }, () => timed(work)))

/** What planning the clock costs without a screen. */
export const clockBench = (): Row[] => [replanning(), solving()]

function replanning(): Row {
  const service = (count: number) =>
    timedService(foilsAlike(count), { wipingMin: always(0.5), hands: [person(), person()] })
  const [many, few] = [service(120), service(10)]
  return {
    what: "clock planned again, 120 foils, two pairs of hands, Node",
    value: costOf(() => planService(many), 61),
    unit: "ms",
    limit: 5,
    reference: "10 foils",
    referenceValue: costOf(() => planService(few), 61),
  }
}

/** 30 working sections of four foils, each foil with its own pace and its own time in two mixes. */
function solving(): Row {
  const foils = (sections: number) =>
    Array.from({ length: 4 * sections }, (_, at) =>
      timedFoil(`f${at}`, {
        group: `g${at >> 2}`,
        placeMin: always(1 + ((at * 5) % 7) / 4),
        readyMin: { A: always(15 + ((at * 11) % 17)), B: always(22 + ((at * 7) % 17)) },
      }),
    )
  const mixes = [timedMix("A", { onHeadPercent: 6 }), timedMix("B", { onHeadPercent: 4 })]
  const solve = (sections: number) => {
    const service = timedService(foils(sections), { mixes, partingMin: always(1) })
    return costOf(() => solveOrder(service, { reorder: true, weaken: true }), 7)
  }
  return {
    what: "order and strength solved, 120 foils in 30 working sections, Node",
    value: solve(30),
    unit: "ms",
    limit: 200,
    reference: "8 foils in 2 working sections",
    referenceValue: solve(2),
  }
}

/** Script that one second of the chair costs, with 120 foils on; every twentieth plans the rest again beside it. */
export async function chairBench(): Promise<Row> {
  const costs = await secondsOf(120)
  return {
    what: "a second at the chair, 120 foils on, median",
    value: median(costs),
    unit: "ms",
    limit: 2,
    reference: "the same with 10 foils",
    referenceValue: median(await secondsOf(10)),
  }
}

async function secondsOf(foils: number): Promise<number[]> {
  const { page, close } = await visit()
  await openPlanText(page, { ...busyPlan(foils), name: `Bench chair ${foils}` })
  await sitDown(page)
  await layAll(page, foils)
  const profiler = await page.context().newCDPSession(page)
  await profiler.send("Performance.enable")
  const scriptMs = async () => {
    const { metrics } = await profiler.send("Performance.getMetrics")
    return 1000 * (metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0)
  }
  const costs: number[] = []
  for (let second = 0; second < 40; second++) {
    const before = await scriptMs()
    await page.waitForTimeout(1000)
    costs.push((await scriptMs()) - before)
  }
  await close()
  return costs.slice(5)
}

/** Every foil tapped on, as fast as the page takes them. */
async function layAll(page: Page, foils: number) {
  const on = page.locator(".touch.giant").first()
  for (let i = 0; i < foils; i++) await on.click()
  await page.getByText("Every foil is on.").waitFor()
}
