import type { Pair } from "../../../geometry/surface/frames"
import type { FoilTimes } from "../../core/schedule/timing"
import { mixColors } from "../../drawing/inks"
import { hatchSlants } from "../../drawing/sectionMarks"
import type { Words } from "../../words/en/words"
import { type Item, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import { capMm, letters, rectangle, rule, rulePt, strokes, type, white } from "../setting/typesetting"

/** One foil of the clock; `mixes` are the places of what is on it in the plan's list, from the roots to the ends. */
export type ClockRow = { times: FoilTimes; number: number; mixes: readonly number[] }
export type ClockScale = {
  width: number
  at: (min: number) => number
  looksAtMin: readonly number[]
  words: Words
}

export const clockRowMm = 6.4
const insetMm = 1.2
const readyInsetMm = 2.1
const hatchGapMm = 1.6

/** The columns of numbers, each ending at its right edge, mm. */
export const clockColumns = [
  { head: "number", rightMm: 7 },
  { head: "on", rightMm: 16 },
  { head: "ready", rightMm: 32 },
  { head: "off", rightMm: 46 },
] as const

/** A foil in numbers, and as a bar over the minutes. */
export function clockRow(
  { times, number, mixes }: ClockRow,
  { width, at, looksAtMin, words }: ClockScale,
): Block {
  const { onAtMin, offAtMin, readyAtMin, limitAtMin, rootsOnAtMin = onAtMin } = times
  const y = clockRowMm / 2 + capMm(type.body) / 2
  const texts = [String(number), minute(onAtMin), readyWords(times, words), minute(limitAtMin)]
  const readyTo = Math.min(readyAtMin.high, limitAtMin)
  return {
    heightMm: clockRowMm,
    items: tagged(
      [
        ...texts.map((text, i) =>
          letters(text, [clockColumns[i].rightMm, y], i === 0 ? type.strong : type.body, "right"),
        ),
        ...looksAtMin.map((min) => look(at(min))),
        ...bars({ from: at(onAtMin), roots: at(rootsOnAtMin), to: at(offAtMin) }, mixes),
        ...(readyTo > readyAtMin.low ? readyBox(at(readyAtMin.low), at(readyTo)) : []),
        rule([at(limitAtMin), 0.5], [at(limitAtMin), clockRowMm - 0.5], 2.4),
        rule([0, clockRowMm], [width, clockRowMm], rulePt.hair),
      ],
      "P",
    ),
  }
}

const minute = (min: number) => String(Math.round(min))

const readyWords = ({ readyAtMin: { low, high }, limitAtMin }: FoilTimes, { sheets }: Words) => {
  if (low > limitAtMin) return "–"
  return high > limitAtMin ? sheets.map.clock.readyOpen(low) : `${minute(low)}–${minute(high)}`
}

const look = (x: number): Item => ({
  kind: "lines",
  paths: [
    [
      [x, 0],
      [x, clockRowMm],
    ],
  ],
  closed: false,
  weightPt: 0.6,
  ink: "#6b5f50",
  dashPt: [0.8, 2],
})

/** One bar, or a strip of it for each of two mixes: that on the roots, the first, may go on later. */
function bars(
  { from: endsFrom, roots, to }: Record<"from" | "roots" | "to", number>,
  mixes: readonly number[],
): Item[] {
  const heightMm = (clockRowMm - 2 * insetMm) / mixes.length
  return mixes.flatMap((mix, i) => {
    const from = i === 0 ? roots : endsFrom
    const box = rectangle(from, insetMm + i * heightMm, to - from, heightMm)
    return bar(box, hatch(from, to, mix % mixColors.length), mixColors[mix % mixColors.length])
  })
}

function bar(box: readonly Pair[], segments: ReturnType<typeof hatch>, color: string): Item[] {
  return [
    { kind: "area", path: box, ink: white },
    {
      kind: "clipped",
      path: box,
      items: [{ kind: "hatch", segments, weightPt: 0.7, ink: color, dashPt: [] }],
    },
    { kind: "lines", paths: [box], closed: true, weightPt: 1, ink: color, dashPt: [] },
  ]
}

/** Strokes that lean as those of the mix do on the map, from above to below the bar. */
const hatch = (from: number, to: number, mix: number): (readonly [Pair, Pair])[] =>
  hatchSlants[mix].flatMap((slant) => {
    const lean = slant * clockRowMm
    const count = Math.ceil((to - from + 2 * Math.abs(lean)) / hatchGapMm)
    return Array.from({ length: count }, (_, i): readonly [Pair, Pair] => {
      const x = from - Math.abs(lean) + i * hatchGapMm
      return [
        [x, 0],
        [x + lean, clockRowMm],
      ]
    })
  })

function readyBox(from: number, to: number): Item[] {
  const box = rectangle(from, readyInsetMm, to - from, clockRowMm - 2 * readyInsetMm)
  return [{ kind: "area", path: box, ink: white }, strokes([box], rulePt.medium, true)]
}
