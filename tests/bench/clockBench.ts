import type { Page } from "playwright-core"
import { solveOrder } from "../../web/core/schedule/solveOrder"
import { planService } from "../../web/core/schedule/timing"
import { visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, sitDown } from "../support/chair"
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

/** Script that one second of the chair costs, with 120 foils at the chair, bowls to mix and foils to come. */
export async function chairBench(): Promise<Row[]> {
  const [many, few] = [await secondsOf(120), await secondsOf(10)]
  const row = { unit: "ms", limit: 2, reference: "the same with 10 foils" }
  return [
    {
      what: "a second at the chair, 120 foils, median",
      value: median(many.usual),
      referenceValue: median(few.usual),
      ...row,
    },
    {
      what: "the second in which the rest is planned again, 120 foils, median",
      value: median(many.replanned),
      referenceValue: median(few.replanned),
      ...row,
    },
  ]
}

const replannedEverySeconds = 20

async function secondsOf(foils: number): Promise<{ usual: number[]; replanned: number[] }> {
  const { page, close } = await visit()
  await openPlanText(page, {
    ...busyPlan(foils),
    name: `Bench chair ${foils}`,
    consultation: askedToday(),
  })
  await sitDown(page)
  await lay(page, (2 * foils) / 3)
  const profiler = await page.context().newCDPSession(page)
  await profiler.send("Performance.enable")
  const scriptMs = async () => {
    const { metrics } = await profiler.send("Performance.getMetrics")
    return 1000 * (metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0)
  }
  const second = async () => {
    const text = (await page.locator(".elapsed").textContent()) ?? ""
    const [minutes, seconds] = (text.match(/(\d+):(\d\d)/) ?? []).slice(1).map(Number)
    return 60 * minutes + seconds
  }
  const usual: number[] = []
  const replanned: number[] = []
  await page.waitForTimeout(5000)
  while (replanned.length < 5) {
    const from = await second()
    const before = await scriptMs()
    await page.waitForTimeout(1000)
    const cost = (await scriptMs()) - before
    const isReplanned =
      Math.floor((await second()) / replannedEverySeconds) > Math.floor(from / replannedEverySeconds)
    if (isReplanned) replanned.push(cost)
    else usual.push(cost)
  }
  await close()
  return { usual, replanned }
}

/** So many foils tapped on, a little over a quarter of a minute apart: both clocks of the device are put ahead between taps. */
async function lay(page: Page, foils: number) {
  await page.evaluate(() => {
    const [monotonic, wall] = [performance.now.bind(performance), Date.now.bind(Date)]
    let aheadMs = 0
    performance.now = () => monotonic() + aheadMs
    Date.now = () => wall() + aheadMs
    addEventListener("go-ahead", () => {
      aheadMs += 17_300
    })
  })
  const on = page.locator(".touch.giant").first()
  for (let i = 0; i < Math.floor(foils); i++) {
    await page.evaluate(() => dispatchEvent(new Event("go-ahead")))
    await on.click()
  }
}
