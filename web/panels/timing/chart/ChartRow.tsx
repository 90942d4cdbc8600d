import type { FoilTimes } from "../../../core/schedule/timing"
import { accent, black, mixColors } from "../../../drawing/inks"
import { hatchFill } from "../../fields/HatchPatterns"
import { type ChartScale, headHeight, rowHeight } from "./chartScale"

/** `mixes` are the places of what is on it in the plan's list, from the roots to the ends. */
export type RowFoil = { number: number; letters: string; mixes: readonly number[] }

type Props = { times: FoilTimes; row: number; foil: RowFoil; scale: ChartScale }

/** One foil: on to off in the hatch of its mix, or a strip for each of two, when it may be ready, and the minute it never passes. */
export function ChartRow({ times, row, foil, scale: { at, span } }: Props) {
  const { onAtMin, offAtMin, readyAtMin, limitAtMin, rootsOnAtMin } = times
  // What is on the roots comes first of two, and may go on later.
  const startOf = (strip: number) => (strip === 0 ? (rootsOnAtMin ?? onAtMin) : onAtMin)
  const top = headHeight + row * rowHeight
  const middle = top + rowHeight / 2
  const readyTo = Math.min(readyAtMin.high, limitAtMin)
  const readyWidth = span(readyTo - readyAtMin.low)
  const stripHeight = (rowHeight - 10) / Math.max(1, foil.mixes.length)
  return (
    <g>
      <text x={34} y={middle + 6} fontSize={18} fontWeight={650} textAnchor="end" fill={black}>
        {foil.number}
      </text>
      <text x={42} y={middle + 6} fontSize={16} fill="#574e43">
        {foil.letters}
      </text>
      {/* The hatch runs from the top of its own row, so that all rows show the same strokes. */}
      <g transform={`translate(${at(onAtMin)} ${top + 5})`}>
        {foil.mixes.map((mix, strip) => (
          <rect
            key={mix}
            x={span(startOf(strip) - onAtMin)}
            y={strip * stripHeight}
            width={span(offAtMin - startOf(strip))}
            height={stripHeight}
            fill={hatchFill(mix)}
            stroke={mixColors[mix % mixColors.length]}
            strokeWidth={1.5}
          />
        ))}
      </g>
      {readyWidth > 0 && (
        <rect
          x={at(readyAtMin.low)}
          y={top + 9}
          width={readyWidth}
          height={rowHeight - 18}
          fill="#fffdf9"
          fillOpacity={0.55}
          stroke={black}
          strokeWidth={1.4}
        />
      )}
      <line
        x1={at(limitAtMin)}
        x2={at(limitAtMin)}
        y1={top + 2}
        y2={top + rowHeight - 2}
        stroke={accent}
        strokeWidth={3}
      />
    </g>
  )
}
