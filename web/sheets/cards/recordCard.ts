import { isFoil } from "../../../geometry/section/section"
import { alarmsOfPlan } from "../../core/chair/alarmsOfPlan"
import type { Plan } from "../../core/document/schema"
import { type RecordFoil, recordFoils } from "../../core/record/recordFoils"
import { clientLines } from "../../core/record/recordWords"
import { mixesUsed } from "../../core/schedule/mixesUsed"
import { clockIn } from "../../core/text/zonedTime"
import { mixBlocks } from "../map/mixBlock"
import { tonerBlocks } from "../map/tonerBlock"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import { toPrintable, toPrintablePlan } from "../pens/printable"
import type { Block } from "../setting/block"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { labelledRow, writingLines, writingMm } from "../setting/labelledRow"
import { underTitle } from "../setting/paragraph"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, stack, sumMm } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { recordRow, recordTableHead } from "./recordTable"

const columnGapMm = 6
const swatchScale = 0.42
const nextTimeLines = 4
const keepApart = "Health answers are on this card: keep it where only the salon reads it."

/** The salon's own record of a service: the hair, what was asked, mixed, planned and done, and what to do next time. */
export function recordCard(unchecked: Plan, { paper, zone }: SheetOptions, fonts: Fonts): Page[] {
  const { plan } = toPrintablePlan(unchecked, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const row = (label: string | null, text: string) =>
    labelledRow(label, toPrintable(text, fonts), width, fonts)
  const client = clientLines(unchecked, zone).map(({ label, text }) => row(label, text))
  const alarms = alarmsOfPlan(unchecked).map(({ wallAt, what, undone }) =>
    row(clockIn(zone, Date.parse(wallAt)).replace("T", " "), undone ? `${what} (taken back)` : what),
  )
  const note = unchecked.note.split("\n").map((line) => row(null, line))
  const blocks: Flowing[] = [
    ...(plan.consultation ? [{ heightMm: 6.4, items: [letters(keepApart, [0, 4], type.strong)] }] : []),
    ...titled("Hair and wishes", client),
    ...titled("Mixed", mixed(plan, width, fonts)),
    ...foilTable(recordFoils(plan), width, fonts),
    ...titled("The red button", alarms),
    ...titled("Next time", unchecked.note.trim() ? note : [writingLines(nextTimeLines, width)]),
  ]
  const bodies = flow(blocks, bodyMm(paper))
  if (unchecked.note.trim()) bodies.push(withLines(bodies.pop() ?? [], bodyMm(paper), width))
  return headedPages(bodies, { plan, paper, fonts, about: "Record card" })
}

/** Rules to write on under a note, as many as its page has room for: they never begin one of their own. */
const withLines = (body: readonly Block[], highMm: number, width: number): Block[] => {
  const count = Math.floor((highMm - sumMm(body)) / writingMm)
  return [...body, writingLines(Math.min(nextTimeLines, count), width)]
}

const titled = (title: string, blocks: readonly Block[]) =>
  underTitle([letters(title, [0, 4.4], type.heading)], blocks)

/** The mixes beside the toners, each bowl with its grams. */
function mixed(plan: Plan, width: number, fonts: Fonts): Block[] {
  const half = (width - columnGapMm) / 2
  const mixes = mixBlocks(plan, { width: half, scale: swatchScale, fonts })
  const toners = tonerBlocks(plan, { width: half, fonts })
  if (mixes.length + toners.length === 0) return []
  const bowls = mixesUsed(plan.mixes, plan.sections.filter(isFoil))
  const weighed = [...bowls.map(({ id }) => `mix ${id}`), ...(toners.length > 0 ? ["toner"] : [])]
  return [
    beside({ block: stack(mixes), leftMm: 0 }, { block: stack(toners), leftMm: half + columnGapMm }),
    labelledRow("Weighed", weighed.map((name) => `${name} ________ g`).join(", "), width, fonts),
  ]
}

function foilTable(foils: readonly RecordFoil[], width: number, fonts: Fonts): Flowing[] {
  const again = recordTableHead(width)
  const [first, ...rest] = foils.map((foil) => recordRow(foil, width, fonts))
  if (!first) return []
  const [top] = titled("Planned and real, minutes from the first parting", [stack([again, first])])
  return [top, ...rest.map((block) => ({ ...block, again }))]
}
