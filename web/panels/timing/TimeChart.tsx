import { isFoil } from "../../../geometry/section/section"
import { accent, black, mixColors } from "../../plan/inks"
import type { Plan } from "../../plan/schema"
import type { TimedPlan } from "../../service/timedPlan"
import type { FoilTimes, Schedule } from "../../service/timing"
import { Scroller } from "../Scroller"

type Timed = Extract<TimedPlan, { ok: true }>

const rowHeight = 30
const headHeight = 76
const labelWidth = 64
const minuteWidth = 11

/** Foils down, minutes across: on to off, the band in which each may be ready, looks, bowls and the longest time. */
export function TimeChart({ plan, timed: { schedule } }: { plan: Plan; timed: Timed }) {
  const foils = plan.sections.filter(isFoil)
  const numberOf = new Map(foils.map(({ id, mapNumber }) => [id, mapNumber]))
  const mixOf = new Map(foils.map(({ id, mix }) => [id, mix]))
  const colorOf = (mix: string | undefined) =>
    mixColors[
      Math.max(
        0,
        plan.mixes.findIndex(({ id }) => id === mix),
      ) % mixColors.length
    ]
  const lastMin =
    Math.ceil(
      (Math.max(...schedule.foils.map(({ limitAtMin, offAtMin }) => Math.max(limitAtMin, offAtMin))) + 4) /
        10,
    ) * 10
  const width = labelWidth + lastMin * minuteWidth + 16
  const height = headHeight + schedule.foils.length * rowHeight + 8
  return (
    <>
      <Scroller name="Chart of the visit; the table below says the same">
        <svg
          className="chart"
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
          aria-hidden="true"
        >
          <Axis lastMin={lastMin} height={height} />
          <Bowls bowls={schedule.bowls} colorOf={colorOf} />
          <Looks looksAtMin={schedule.looksAtMin} height={height} />
          {schedule.foils.map((times, row) => (
            <Row
              key={times.id}
              times={times}
              row={row}
              number={numberOf.get(times.id) ?? 0}
              mix={mixOf.get(times.id) ?? ""}
              color={colorOf(mixOf.get(times.id))}
            />
          ))}
        </svg>
      </Scroller>
      <p className="aside chart-key">
        Bar: on to off. Outlined: may be ready. Upright stroke: never past. Dotted: a look. Letter: mix that
        bowl.
      </p>
    </>
  )
}

const at = (min: number) => labelWidth + min * minuteWidth

function Axis({ lastMin, height }: { lastMin: number; height: number }) {
  const tens = Array.from({ length: lastMin / 10 + 1 }, (_, i) => i * 10)
  return (
    <>
      {tens.map((min) => (
        <g key={min}>
          <line x1={at(min)} x2={at(min)} y1={headHeight - 6} y2={height - 8} stroke="#d9cfbf" />
          <text x={at(min)} y={22} fontSize={17} textAnchor="middle" fill={black}>
            {min}
          </text>
        </g>
      ))}
      <text x={8} y={22} fontSize={17} fill="#574e43">
        min
      </text>
    </>
  )
}

function Bowls({ bowls, colorOf }: { bowls: Schedule["bowls"]; colorOf: (mix: string) => string }) {
  return bowls.map(({ mix, atMin, foils }) => (
    <g key={`${mix}-${foils[0]}`}>
      <path d={`M${at(atMin)} 66l-7 -11h14z`} fill={colorOf(mix)} />
      <text x={at(atMin) + 11} y={66} fontSize={17} fontWeight={650} fill={black}>
        {mix}
      </text>
    </g>
  ))
}

const Looks = ({ looksAtMin, height }: { looksAtMin: readonly number[]; height: number }) =>
  looksAtMin.map((min) => (
    <line
      key={min}
      x1={at(min)}
      x2={at(min)}
      y1={headHeight - 36}
      y2={height - 8}
      stroke={black}
      strokeDasharray="1 5"
    />
  ))

type RowProps = { times: FoilTimes; row: number; number: number; mix: string; color: string }

function Row({ times: { onAtMin, offAtMin, readyAtMin, limitAtMin }, row, number, mix, color }: RowProps) {
  const top = headHeight + row * rowHeight
  const middle = top + rowHeight / 2
  const readyTo = Math.min(Number.isFinite(readyAtMin.high) ? readyAtMin.high : limitAtMin, limitAtMin)
  const readyWidth = (readyTo - readyAtMin.low) * minuteWidth
  return (
    <g>
      <text x={34} y={middle + 6} fontSize={18} fontWeight={650} textAnchor="end" fill={black}>
        {number}
      </text>
      <text x={42} y={middle + 6} fontSize={16} fill="#574e43">
        {mix}
      </text>
      <rect
        x={at(onAtMin)}
        y={top + 5}
        width={(offAtMin - onAtMin) * minuteWidth}
        height={rowHeight - 10}
        fill={color}
        fillOpacity={0.3}
        stroke={color}
        strokeWidth={1.5}
      />
      {readyWidth > 0 && (
        <rect
          x={at(readyAtMin.low)}
          y={top + 9}
          width={readyWidth}
          height={rowHeight - 18}
          fill="none"
          stroke={black}
          strokeWidth={1.2}
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
