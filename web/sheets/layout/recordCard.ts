import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../plan/schema"
import { alarmsOfPlan } from "../../service/alarmsOfPlan"
import { clockIn } from "../../service/clock"
import { type RecordFoil, recordFoils } from "../../service/recordFoils"
import { clientLines } from "../../service/recordWords"
import type { Fonts } from "../fontFile"
import { toPrintable, toPrintablePlan } from "../printable"
import type { Block } from "./block"
import { type Flowing, flow } from "./flow"
import { heading, headingMm } from "./heading"
import { labelledRow, writingLines, writingMm } from "./labelledRow"
import { mixBlocks } from "./mixBlock"
import type { Page } from "./page"
import { moved } from "./page"
import { recordRow, recordTableHead } from "./recordTable"
import type { SheetOptions } from "./sheetOptions"
import { beside, lowered, stack, sumMm } from "./stack"
import { tonerBlocks } from "./tonerBlock"
import { letters, type } from "./typesetting"

const titleMm = 7.4
const gapMm = 4
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
  const roomMm = paper.heightMm - 2 * paper.marginMm - headingMm
  const bodies = flow(blocks, roomMm)
  if (unchecked.note.trim()) bodies.push(withLines(bodies.pop() ?? [], roomMm, width))
  return bodies.map((body, i) => ({
    paper,
    items: [
      ...heading(plan, { paper, fonts, about: "Record card", number: i + 1, count: bodies.length }),
      ...moved(stack(body).items, paper.marginMm, paper.marginMm + headingMm),
    ],
  }))
}

/** Rules to write on under a note, as many as its page has room for: they never begin one of their own. */
const withLines = (body: readonly Block[], roomMm: number, width: number): Block[] => {
  const count = Math.floor((roomMm - sumMm(body)) / writingMm)
  return [...body, writingLines(Math.min(nextTimeLines, count), width)]
}

/** Blocks under a title that never stands alone at the foot of a page; nothing where there are none. */
function titled(title: string, [first, ...rest]: readonly Block[]): Block[] {
  if (!first) return []
  const head: Block = { heightMm: titleMm, items: [letters(title, [0, 4.4], type.heading)] }
  return [lowered(stack([head, first]), gapMm), ...rest]
}

/** The mixes beside the toners, each bowl with its grams. */
function mixed(plan: Plan, width: number, fonts: Fonts): Block[] {
  const half = (width - columnGapMm) / 2
  const mixes = mixBlocks(plan, { width: half, scale: swatchScale, fonts })
  const toners = tonerBlocks(plan, { width: half, fonts })
  if (mixes.length + toners.length === 0) return []
  const bowls = plan.mixes.filter(({ id }) =>
    plan.sections.some((section) => isFoil(section) && section.mix === id),
  )
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
