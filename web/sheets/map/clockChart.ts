import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { mixPlaces } from "../../core/placement/mixPlaces"
import { type TimedPlan, timedPlan } from "../../core/schedule/timedPlan"
import type { Words } from "../../words/en/words"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { ink, letters, rule, rulePt, type, wrap } from "../setting/typesetting"
import { type ClockRow, clockColumns, clockRow } from "./clockRow"

/** The clock of a plan in pieces that a page may break between; the head is set again on each page. */
export type Clock = { head: Block; rows: readonly Block[]; key: Block }

const columnsMm = 52
const headMm = 17
const rightRoomMm = 4
const lineMm = 4.2

type Timed = Extract<TimedPlan, { ok: true }>

/** When each foil goes on, may be ready and comes off, in numbers and as bars over the minutes; null where nothing can be timed. */
export function clockChart(plan: Plan, width: number, press: Press): Clock | null {
  const timed = timedPlan(plan)
  if (!timed.ok) return null
  const { schedule } = timed
  const lastMin =
    Math.ceil(
      Math.max(...schedule.foils.map(({ limitAtMin, offAtMin }) => Math.max(limitAtMin, offAtMin))) / 10,
    ) * 10
  const at = (min: number) => columnsMm + (min / lastMin) * (width - columnsMm - rightRoomMm)
  const foils = new Map(plan.sections.filter(isFoil).map((foil) => [foil.id, foil]))
  const rows = schedule.foils.map((times): ClockRow => {
    const foil = foils.get(times.id)
    return { times, number: foil?.mapNumber ?? 0, mixes: foil ? mixPlaces(foil, plan) : [] }
  })
  return {
    head: clockHead(timed, { width, lastMin, at }, press.words),
    rows: rows.map((row) =>
      clockRow(row, { width, at, looksAtMin: schedule.looksAtMin, words: press.words }),
    ),
    key: clockKey(timed, width, press),
  }
}

type Scale = { width: number; lastMin: number; at: (min: number) => number }

function clockHead({ schedule }: Timed, { width, lastMin, at }: Scale, { sheets }: Words): Block {
  const tens = Array.from({ length: lastMin / 10 + 1 }, (_, i) => i * 10)
  const bowls = bowlsByMinute(schedule).flatMap(({ mixes, atMin }): Item[] => [
    {
      kind: "area",
      path: [
        [at(atMin), 15.4],
        [at(atMin) - 1.3, 13.2],
        [at(atMin) + 1.3, 13.2],
      ],
      ink,
    },
    letters(mixes.join(" + "), [at(atMin) + 2, 15.4], type.strong),
  ])
  return {
    heightMm: headMm,
    startsGroup: true,
    items: [
      letters(sheets.map.clock.title, [0, 4], type.heading),
      ...clockColumns.map(({ head, rightMm }) =>
        letters(sheets.map.clock.heads[head], [rightMm, 15.4], type.strong, "right"),
      ),
      ...tens.map((min) => letters(String(min), [at(min), 10.4], type.body, "center")),
      ...bowls,
      rule([0, headMm], [width, headMm], rulePt.medium),
    ],
  }
}

/** Bowls that are mixed one after the other, as for two mixes along a strand, share a triangle. */
function bowlsByMinute({ bowls }: Timed["schedule"]): { atMin: number; mixes: string[] }[] {
  const minutes = new Map<number, string[]>()
  for (const { mix, atMin } of bowls) minutes.set(atMin, [...(minutes.get(atMin) ?? []), mix])
  return Array.from(minutes, ([atMin, mixes]) => ({ atMin, mixes }))
}

function clockKey(timed: Timed, width: number, press: Press): Block {
  const { common, sheets } = press.words
  const strips = timed.service.foils.some(({ roots }) => roots) ? [common.twoStrips] : []
  const lines = [sheets.map.clock.key, ...strips, ...restsAndHeat(timed, press)].flatMap((sentence) =>
    wrap(sentence, width, type.small, press),
  )
  return {
    heightMm: 3 + lines.length * lineMm,
    items: lines.map((text, line) => letters(text, [0, 4.4 + line * lineMm], type.small)),
  }
}

/** What no bar shows: when nobody places, and when the heat is on. */
function restsAndHeat({ service: { hands }, schedule: { heat } }: Timed, { words }: Press): string[] {
  const said = words.sheets.map.clock
  const rests = hands.flatMap(({ breaks }, pair) =>
    breaks.map(({ fromMin, toMin }) => {
      const who = hands.length === 1 ? "all" : pair === 0 ? "colourist" : "assistant"
      return said.rest({ who, fromMin, toMin })
    }),
  )
  return [...rests, ...(heat ? [said.heat({ fromMin: heat.onAtMin, toMin: heat.offAtMin })] : [])]
}
