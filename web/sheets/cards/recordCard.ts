import { isFoil } from "../../../geometry/section/section"
import { alarmsOfPlan, foilNumbers, pieceOfAlarm } from "../../core/chair/alarmsOfPlan"
import type { Plan } from "../../core/document/schema"
import { isMixed, leftOf, mixesMixed, tonerBowlsMixed } from "../../core/record/asMixed"
import { type RecordFoil, recordFoils } from "../../core/record/recordFoils"
import { clientLines, peopleLines, type RecordLine } from "../../core/record/recordLines"
import { mixesUsed } from "../../core/schedule/mixesUsed"
import { clockIn } from "../../core/text/zonedTime"
import { alarmWords } from "../../words/en/chair/alarmWords"
import { say } from "../../words/say"
import { mixBlocks } from "../map/mixBlock"
import { tonerBlocks } from "../map/tonerBlock"
import type { Fonts } from "../pens/fontFile"
import type { Page } from "../pens/page"
import type { Block } from "../setting/block"
import { type Flowing, flow } from "../setting/flow"
import { bodyMm, headedPages } from "../setting/headedPages"
import { alertBlock } from "../setting/heading"
import { labelledRow, writingLines, writingMm } from "../setting/labelledRow"
import { paragraph, underTitle } from "../setting/paragraph"
import { type Press, pressOf } from "../setting/press"
import type { SheetOptions } from "../setting/sheetOptions"
import { beside, stack, sumMm } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { recordRow, recordTableHead } from "./recordTable"

const columnGapMm = 6
const swatchScale = 0.42
const nextTimeLines = 4

/** The salon's own record of a service: the hair, what was asked, mixed, planned and done, and what to do next time. */
export function recordCard(plan: Plan, options: SheetOptions, fonts: Fonts): Page[] {
  const { paper, zone, stops, alert: held = "" } = options
  const press = pressOf(options, fonts)
  const width = paper.widthMm - 2 * paper.marginMm
  const row = (label: string | null, text: string) => labelledRow(label, text, width, press)
  const said = press.words.sheets.cards.record
  const told = (line: RecordLine) =>
    row(line.code === "hair" ? "" : press.words.record.labels[line.code], say(press.words.record.lines, line))
  const alarms = alarmsOfPlan(plan).map(({ wallAt, undone, ...alarm }) => {
    const foils = plan.service?.foils ?? []
    const [numbers, piece] = [foilNumbers(alarm, foils), pieceOfAlarm(alarm, foils)]
    const what = alarmWords(alarm, numbers, press.words.chair.emergencies, piece)
    return row(clockIn(zone, Date.parse(wallAt)).replace("T", " "), undone ? said.takenBack(what) : what)
  })
  const note = plan.note.split("\n").map((line) => row(null, line))
  const blocks: Flowing[] = [
    ...(plan.consultation ? [paragraph(said.private, width, press, type.strong)] : []),
    paragraph(said.defers, width, press, type.small),
    ...(stops ? [paragraph(stops, width, press, type.smallStrong)] : []),
    ...titled(said.hair, clientLines(plan, zone).map(told)),
    ...titled(isMixed(plan) ? said.mixed : said.planned, [
      ...mixed(plan, width, press),
      ...peopleLines(plan).map(told),
    ]),
    ...foilTable(recordFoils(plan), width, press),
    ...titled(said.alarms, alarms),
    ...titled(said.next, plan.note.trim() ? note : [writingLines(nextTimeLines, width)]),
  ]
  const alert = alertBlock(held)
  const roomMm = bodyMm(paper) - alert.heightMm
  const bodies = flow(blocks, roomMm)
  if (plan.note.trim()) bodies.push(withLines(bodies.pop() ?? [], roomMm, width))
  return headedPages(
    bodies.map((body) => (held ? [alert, ...body] : body)),
    { plan, paper, press, about: said.about },
  )
}

/** Rules to write on under a note, as many as its page has room for: they never begin one of their own. */
const withLines = (body: readonly Block[], highMm: number, width: number): Block[] => {
  const count = Math.floor((highMm - sumMm(body)) / writingMm)
  return [...body, writingLines(Math.min(nextTimeLines, count), width)]
}

const titled = (title: string, blocks: readonly Block[]) =>
  underTitle([letters(title, [0, 4.4], type.heading)], blocks)

/** The mixes beside the toners, each bowl with its grams. */
function mixed(plan: Plan, width: number, press: Press): Block[] {
  const half = (width - columnGapMm) / 2
  const mixes = mixBlocks(plan, { width: half, scale: swatchScale, press })
  const toners = tonerBlocks(plan, { width: half, press })
  if (mixes.length + toners.length === 0) return []
  const used = mixesUsed(plan.mixes, plan.sections.filter(isFoil)).map(({ id }) => id)
  const bowls = [...new Set([...used, ...mixesMixed(plan)])]
  const said = press.words.sheets.cards.record
  const weighed = [
    ...bowls.map((id) => ({ name: said.mix(id), leftG: leftOf(plan, id) })),
    ...tonersLeft(plan, toners.length > 0 ? said.toner : null),
  ]
  return [
    beside({ block: stack(mixes), leftMm: 0 }, { block: stack(toners), leftMm: half + columnGapMm }),
    labelledRow(said.weighed, said.weigh(weighed), width, press),
  ]
}

/** Of a service that was done each bowl of toner by its product; else a blank for all of it. */
function tonersLeft({ service }: Plan, planned: string | null): { name: string; leftG: number | null }[] {
  if (service?.endedAt && service.toners)
    return tonerBowlsMixed(service).map(({ product, leftG }) => ({ name: product, leftG }))
  return planned === null ? [] : [{ name: planned, leftG: null }]
}

function foilTable(foils: readonly RecordFoil[], width: number, press: Press): Flowing[] {
  const again = recordTableHead(width, press)
  const [first, ...rest] = foils.map((foil) => recordRow(foil, width, press))
  if (!first) return []
  const [top] = titled(press.words.sheets.cards.record.times, [stack([again, first])])
  return [top, ...rest.map((block) => ({ ...block, again }))]
}
