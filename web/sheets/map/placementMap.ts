import type { Plan } from "../../core/document/schema"
import { measured } from "../../core/figures/measured"
import type { Fonts } from "../pens/fontFile"
import { inRuns } from "../pens/inRuns"
import { moved, type Page } from "../pens/page"
import { isWholeOnPaper } from "../pens/printable"
import type { Block } from "../setting/block"
import { cautionBlock } from "../setting/cautions"
import { bodyMm } from "../setting/headedPages"
import { alertBlock, heading, headingMm } from "../setting/heading"
import { pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, lowered, split, stack, sumMm } from "../setting/stack"
import { type FoilTable, foilTable } from "../table/foilTable"
import { chooseViews, nameSections } from "./chooseViews"
import { type Clock, clockChart } from "./clockChart"
import { gutterMm, halfMm, innerMm, type MapSetting } from "./mapSetting"
import { sideColumn } from "./sideColumn"
import { frontRow, rowHeightMm, rowsOf, viewRow } from "./viewRows"

/** What is printed on one page under its heading: from the top, and at the foot. */
type Body = { blocks: readonly Block[]; foot?: Block }

/** Scales to try, mm of paper for a mm of head; under the last the numbers crowd the drawing. */
const scales = Array.from({ length: 15 }, (_, i) => 0.42 - 0.01 * i)
/** Tried after them on a map of several pages: two rings of numbers round a drawing need most of the room there is. */
const crowdedScales = [...scales, 0.27, 0.26, 0.25, 0.24, 0.23, 0.22]
const gapMm = 4
const clockGapMm = 9
const rowMm = { least: 6.4, most: 9 }
/** Fewer rows than this are not begun at the foot of a page. */
const fewestRows = 3

/** The placement and formula map as pages: one where all fits, else the views first and the table on pages after. */
export function placementMap(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper, mirror, stops, alert = "" } = options
  const press = pressOf(options, fonts)
  const figures = measured(plan)
  const views = chooseViews(plan.sections, figures.head)
  const named = nameSections(views, plan, figures.head)
  const setting: MapSetting = { plan, figures, paper, press, mirror, named, alert: alertBlock(alert) }
  const { tests } = press.words.sheets.map
  const fills = [tests.strand, tests.patch]
  const cautions = cautionBlock(
    innerMm(setting),
    { stops, lettersMissing: !isWholeOnPaper(plan, fonts), fills },
    press,
  )
  const table = foilTable(figures, innerMm(setting), press)
  const clock = clockChart(plan, innerMm(setting), press)
  const bodies =
    onOnePage(setting, table, cautions, clock) ??
    withClock(
      onOnePage(setting, table, cautions, null) ?? onSeveralPages(setting, table, cautions, clock),
      clock,
      roomMm(setting),
    )
  return bodies.map((body, i) => setPage(body, setting, { number: i + 1, count: bodies.length }))
}

/** The height below the heading of a page and what it says in its head, mm. */
const roomMm = ({ paper, alert }: MapSetting) => bodyMm(paper) - alert.heightMm

function setPage({ blocks, foot }: Body, setting: MapSetting, page: { number: number; count: number }): Page {
  const { plan, paper, mirror, press } = setting
  const said = press.words.sheets.map
  const about = [mirror ? said.aboutMirror : said.about, said.worn(plan.head)].filter(Boolean).join(", ")
  const footTop = paper.heightMm - paper.marginMm - (foot?.heightMm ?? 0)
  const items = [
    ...heading(plan, { paper, about, press, ...page }),
    ...moved(stack([setting.alert, ...blocks]).items, paper.marginMm, paper.marginMm + headingMm),
    ...moved(foot?.items ?? [], paper.marginMm, footTop),
  ]
  return { paper, items: inRuns(items, press.fonts) }
}

function onOnePage(
  setting: MapSetting,
  table: FoilTable,
  cautions: Block,
  clock: Clock | null,
): Body[] | null {
  const rows = table.rows(rowMm.least)
  const after = clock ? wholeClock(clock) : []
  const tableMm = sumMm([table.head, ...rows, table.total, ...after])
  const map = mapOf(setting, rowsOf(setting), roomMm(setting) - tableMm - cautions.heightMm - 2 * gapMm)
  if (!map || map.left.length > 0) return null
  return [
    { blocks: [...map.blocks, lowered(table.head, gapMm), ...rows, table.total, ...after], foot: cautions },
  ]
}

function onSeveralPages(setting: MapSetting, table: FoilTable, cautions: Block, clock: Clock | null): Body[] {
  const [front, sides, ...extra] = rowsOf(setting)
  const highMm = roomMm(setting) - cautions.heightMm - gapMm
  const map = mapOf(setting, [front, sides], highMm, crowdedScales)
  if (!map) throw new Error(`the paper ${setting.paper.name} is too small for two rows of views`)
  const more = extra.map((row) => lowered(viewRow(row, map.scale, setting), gapMm))
  return [
    { blocks: map.blocks, foot: cautions },
    ...closeRows(table, [...more, ...map.left], { roomMm: roomMm(setting), clock }),
  ]
}

/** The table with its rows close enough that the clock still fits under it, where that spares a page. */
function closeRows(
  table: FoilTable,
  before: readonly Block[],
  { roomMm, clock }: { roomMm: number; clock: Clock | null },
): Body[] {
  const clockMm = clock ? sumMm(wholeClock(clock)) : 0
  const closeMm = sumMm([...before, table.head, ...table.rows(rowMm.least), table.total]) + gapMm
  return tablePages(table, before, closeMm + clockMm <= roomMm ? roomMm - clockMm : roomMm)
}

/** The clock under all else: on the last page where it fits whole, else on pages of its own. */
function withClock(bodies: readonly Body[], clock: Clock | null, roomMm: number): readonly Body[] {
  if (!clock) return bodies
  const last = bodies[bodies.length - 1]
  const whole = wholeClock(clock)
  const leftMm = roomMm - sumMm(last.blocks) - (last.foot?.heightMm ?? 0)
  if (sumMm(whole) <= leftMm) return [...bodies.slice(0, -1), { ...last, blocks: [...last.blocks, ...whole] }]
  return [...bodies, ...clockPages(clock, clock.rows, roomMm)]
}

const wholeClock = ({ head, rows, key }: Clock) => [lowered(head, clockGapMm), ...rows, key]

function clockPages(clock: Clock, rows: readonly Block[], roomMm: number): Body[] {
  const { head, key } = clock
  const [fitting, rest] = split(rows, roomMm - gapMm - head.heightMm - key.heightMm)
  const body = { blocks: [lowered(head, gapMm), ...fitting, key] }
  return rest.length === 0 ? [body] : [body, ...clockPages(clock, rest, roomMm)]
}

/**
 * Rows of views at the largest scale that fits into a height, spread over it. What the side column cannot hold stands
 * under them while there is room, and is left over after that.
 */
function mapOf(setting: MapSetting, rows: ReturnType<typeof rowsOf>, heightMm: number, tried = scales) {
  const usedMm = (scale: number) =>
    rows.reduce((sum, row) => sum + rowHeightMm(row, scale, setting), gapMm * (rows.length - 1))
  const scale = tried.find((each) => usedMm(each) <= heightMm)
  if (!scale) return null
  const width = halfMm(setting)
  const side = sideColumn(setting.plan, { width, scale, press: setting.press })
  const [front, left] = frontRow(scale, side, setting)
  const spareMm = left.length > 0 ? 0 : Math.min(6, (heightMm - usedMm(scale)) / rows.length)
  const views = [front, ...rows.slice(1).map((row) => lowered(viewRow(row, scale, setting), gapMm + spareMm))]
  const roomMm = heightMm - sumMm(views)
  const [under, later] = split(twoAbreast(left, width + gutterMm), roomMm)
  const downMm = Math.min(gapMm, roomMm - sumMm(under))
  return {
    scale,
    blocks: [...views, ...under.map((block, i) => lowered(block, i === 0 ? downMm : 0))],
    left: later,
  }
}

/** What stands for itself in half the page, two in a row. */
function twoAbreast(blocks: readonly Block[], columnMm: number): Block[] {
  if (!blocks.every(({ startsGroup }) => startsGroup)) return [...blocks]
  const rows = blocks.flatMap((_, i) => (i % 2 === 0 ? [blocks.slice(i, i + 2)] : []))
  return rows.map((row) => beside(...row.map((block, i) => ({ block, leftMm: i * columnMm }))))
}

/** The table under the blocks that come before it, its head set again on each page. */
function tablePages(table: FoilTable, before: readonly Block[], roomMm: number): Body[] {
  const { head, total, count } = table
  const fixedMm = gapMm + head.heightMm + total.heightMm
  const [above, later] = split(before, roomMm - fixedMm - fewestRows * rowMm.least)
  if (later.length > 0) return [{ blocks: above }, ...tablePages(table, later, roomMm)]
  const evenMm = (roomMm - sumMm(above) - fixedMm) / Math.max(count, 1)
  const rows = table.rows(Math.min(rowMm.most, Math.max(rowMm.least, evenMm)))
  return rowPages(rows, above)

  function rowPages(left: readonly Block[], top: readonly Block[]): Body[] {
    const [fitting, rest] = split(left, roomMm - sumMm(top) - fixedMm)
    const blocks = [...top, lowered(head, gapMm), ...fitting]
    return rest.length === 0 ? [{ blocks: [...blocks, total] }] : [{ blocks }, ...rowPages(rest, [])]
  }
}
