import type { Service } from "../../../core/schedule/scheduleInput"
import type { Schedule } from "../../../core/schedule/timing"
import { black } from "../../../drawing/inks"
import { useWords } from "../../../session/words"
import { type ChartScale, headHeight } from "./chartScale"

const rule = "#d9cfbf"
const soft = "#574e43"
const foot = 8

/** What the bars stand on: the minutes, breaks, heat and looks. */
export function ChartGround({
  service,
  schedule,
  scale,
}: {
  service: Service
  schedule: Schedule
  scale: ChartScale
}) {
  const w = useWords().timing.chart
  return (
    <>
      <Breaks service={service} scale={scale} />
      <Axis scale={scale} />
      {schedule.heat && (
        <Stretch
          fromMin={schedule.heat.onAtMin}
          toMin={schedule.heat.offAtMin}
          words={w.heat}
          scale={scale}
        />
      )}
      {schedule.looksAtMin.map((min) => (
        <line
          key={min}
          x1={scale.at(min)}
          x2={scale.at(min)}
          y1={headHeight - 36}
          y2={scale.height - foot}
          stroke={black}
          strokeDasharray="1 5"
        />
      ))}
    </>
  )
}

function Axis({ scale: { at, lastMin, height } }: { scale: ChartScale }) {
  const w = useWords().timing.chart
  const tens = Array.from({ length: lastMin / 10 + 1 }, (_, i) => i * 10)
  return (
    <>
      {tens.map((min) => (
        <g key={min}>
          <line x1={at(min)} x2={at(min)} y1={headHeight - 6} y2={height - foot} stroke={rule} />
          <text x={at(min)} y={22} fontSize={17} textAnchor="middle" fill={black}>
            {min}
          </text>
        </g>
      ))}
      <text x={8} y={22} fontSize={17} fill={soft}>
        {w.min}
      </text>
    </>
  )
}

function Breaks({ service: { hands }, scale }: { service: Service; scale: ChartScale }) {
  const w = useWords().timing.chart
  return restsOf(hands).map(({ fromMin, toMin, who }) => (
    <Stretch key={`${fromMin} ${who}`} fromMin={fromMin} toMin={toMin} words={w[who]} scale={scale} />
  ))
}

/** A break of both is one break; a break of one says whose. */
function restsOf(hands: Service["hands"]) {
  const same = (a: Rest, b: Rest) => a.fromMin === b.fromMin && a.toMin === b.toMin
  const all = hands.flatMap(({ breaks }, pair) => breaks.map((rest) => ({ ...rest, pair })))
  return all
    .filter((rest, at) => all.findIndex((other) => same(rest, other)) === at)
    .map((rest) => {
      const isAll = hands.every(({ breaks }) => breaks.some((other) => same(rest, other)))
      return {
        ...rest,
        who: isAll
          ? ("break" as const)
          : rest.pair === 0
            ? ("firstRests" as const)
            : ("secondRests" as const),
      }
    })
}
type Rest = { fromMin: number; toMin: number }

type StretchProps = { fromMin: number; toMin: number; words: string; scale: ChartScale }

const Stretch = ({ fromMin, toMin, words, scale: { at, span, height } }: StretchProps) => (
  <g>
    <rect
      x={at(fromMin)}
      y={headHeight - 40}
      width={span(toMin - fromMin)}
      height={height - headHeight + 40 - foot}
      fill="#f1ebdf"
    />
    <text x={at((fromMin + toMin) / 2)} y={headHeight - 44} fontSize={16} textAnchor="middle" fill={soft}>
      {words}
    </text>
  </g>
)
