import { readFileSync } from "node:fs"
import { jsPDF } from "jspdf"
import { measureSection } from "../../geometry/section/measureSection"
import type { Section } from "../../geometry/section/section"
import { tradeFigures } from "../../presets/formula/tradeFigures"
import type { Technique } from "../../presets/techniques/technique"
import { isRefusal } from "../../web/core/document/edit"
import type { Plan } from "../../web/core/document/schema"
import { techniqueSections } from "../../web/core/edits/lay/layTechnique"
import { stackRows } from "../../web/core/edits/lay/stackBehind"
import { moveSections } from "../../web/core/edits/parting/moveSections"
import { headOf, measured } from "../../web/core/figures/measured"
import { examplePlan } from "../../web/core/file/examplePlan"
import { captureSections } from "../../web/core/technique/captureTechnique"
import { fontFiles } from "../../web/sheets/pens/loadFonts"
import { printPlan } from "../../web/sheets/printPlan"
import { busyPlan } from "../support/busyPlan"
import { usualTechnique, usualTechniques } from "../support/techniques"
import { median, type Row } from "./table"

/** What the figures and the paper cost without a screen. */
export async function nodeBench(): Promise<Row[]> {
  return [throughput(), growth(), overlap(), fitting(), stacking(), await paper()]
}

const timed = (work: () => void) => {
  const start = performance.now()
  work()
  return performance.now() - start
}

/** New objects, so that nothing is remembered. */
const fresh = (sections: readonly Section[]) => sections.map((section) => ({ ...section }))

function throughput(): Row {
  const plan = busyPlan(120)
  const head = headOf(plan)
  const measureAll = () => {
    for (const section of fresh(plan.sections)) measureSection(section, head, plan.hair, tradeFigures)
  }
  measureAll()
  const ms = median(Array.from({ length: 15 }, () => timed(measureAll))) / 120
  const again = median(Array.from({ length: 15 }, () => timed(() => measured({ ...plan })))) / 120
  return {
    what: "`measureSection`, one of 120 sections",
    value: ms,
    unit: "ms",
    limit: 0.25,
    reference: "the same section measured before",
    referenceValue: again,
  }
}

function growth(): Row {
  const cost = (count: number) => {
    const plan = busyPlan(count)
    const run = () => measured({ ...plan, sections: fresh(plan.sections) } as Plan)
    run()
    return median(Array.from({ length: 9 }, () => timed(run)))
  }
  const few = cost(50)
  return {
    what: "figures of a plan of 500 sections",
    value: cost(500),
    unit: "ms",
    limit: 12 * few,
    reference: "of 50 sections",
    referenceValue: few,
  }
}

/** All figures and overlaps after one of 120 sections was moved, against all of them from nothing. */
function overlap(): Row {
  const plan = busyPlan(120)
  const whole = () => timed(() => measured({ ...plan, sections: fresh(plan.sections) }))
  whole()
  measured(plan)
  const costs = plan.sections.flatMap(({ id }) => {
    const next = moveSections([id], { alongMm: 0, behindMm: 2 })(plan)
    return isRefusal(next) ? [] : [timed(() => measured(next))]
  })
  return {
    what: "overlap and totals of 120 sections after one moved",
    value: median(costs),
    unit: "ms",
    limit: 10,
    reference: "of all of them from nothing",
    referenceValue: median(Array.from({ length: 9 }, whole)),
  }
}

/** Told by spots one by one, as the salon's own techniques are: the example's twelve sections. */
function ownTechnique() {
  const plan = examplePlan()
  return { sections: captureSections(plan.sections, headOf(plan)) }
}

function fitting(): Row {
  const plan = busyPlan(0)
  const cost = (technique: Pick<Technique, "sections">) => {
    const lay = () => techniqueSections(technique, plan)
    lay()
    return median(Array.from({ length: 15 }, () => timed(lay)))
  }
  const all = [...usualTechniques, ownTechnique()]
  const { sections } = usualTechnique("bright-frame")
  return {
    what: "fitting a technique, the slowest of thirteen",
    value: Math.max(...all.map(cost)),
    unit: "ms",
    limit: 20,
    reference: "one slice along the hairline",
    referenceValue: cost({ sections: sections.slice(0, 1) }),
  }
}

function stacking(): Row {
  const plan = busyPlan(1)
  const [first] = plan.sections
  const wish = {
    follow: "hairline",
    gapMm: 1,
    shiftMm: 0,
    depthMm: { start: 1, end: 1 },
    second: null,
  } as const
  const costOf = (count: number) => {
    const work = () => {
      stackRows(first, plan, wish)(count)
    }
    work()
    return median(Array.from({ length: 15 }, () => timed(work)))
  }
  return {
    what: "a stack of 40 sections worked out anew",
    value: costOf(40),
    unit: "ms",
    limit: 40,
    reference: "one section",
    referenceValue: costOf(1),
  }
}

async function paper(): Promise<Row> {
  const readFont = async (weight: keyof typeof fontFiles) =>
    new Uint8Array(readFileSync(`web/sheets/pens/fonts/${fontFiles[weight]}`))
  const plan = examplePlan()
  const print = async () => {
    const start = performance.now()
    await printPlan(plan, { sheet: "placement", paper: "a4", mirror: false, language: "en-GB" }, readFont)
    return performance.now() - start
  }
  await print()
  const runs = [await print(), await print(), await print(), await print(), await print()]
  const bare = () => new jsPDF({ compress: true }).output("arraybuffer")
  bare()
  return {
    what: "placement map of the example, Node",
    value: median(runs),
    unit: "ms",
    limit: 300,
    reference: "a bare jsPDF page",
    referenceValue: median(Array.from({ length: 9 }, () => timed(bare))),
  }
}
