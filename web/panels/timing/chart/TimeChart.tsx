import { useMemo, useRef } from "react"
import { coatsOf, isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { coatLetters } from "../../../core/placement/coatCodes"
import { mixPlaces } from "../../../core/placement/mixPlaces"
import type { TimedPlan } from "../../../core/schedule/timedPlan"
import type { Schedule } from "../../../core/schedule/timing"
import { accent, black, mixColors } from "../../../drawing/inks"
import { useWords } from "../../../session/words"
import { HatchPatterns } from "../../fields/HatchPatterns"
import { Scroller } from "../../fields/Scroller"
import { bowlLevels } from "./bowlLevels"
import { ChartGround } from "./ChartGround"
import { ChartRow, type RowFoil } from "./ChartRow"
import { type ChartScale, chartScale, headHeight } from "./chartScale"
import { useWidth } from "./useWidth"

type Timed = Extract<TimedPlan, { ok: true }>
type Props = { plan: Plan; timed: Timed; scrubbedMin: number; onScrub: (min: number) => void }

const usualWidth = 700

/** Foils down, minutes across: on to off, the band in which each may be ready, checks, bowls and the maximum time. */
export function TimeChart({ plan, timed: { service, schedule }, scrubbedMin, onScrub }: Props) {
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box, usualWidth)
  const scale = useMemo(() => chartScale(schedule, width), [schedule, width])
  const foils = rowFoils(plan)
  const { common, timing } = useWords()
  const w = timing.chart
  const point = ({ currentTarget, clientX }: React.PointerEvent<SVGSVGElement>) => {
    const minute = scale.minuteAt(clientX - currentTarget.getBoundingClientRect().left)
    onScrub(Math.round(Math.min(Math.max(0, minute), Math.ceil(schedule.rinseMin))))
  }
  return (
    <div ref={box}>
      <Scroller name={w.name}>
        <svg
          className="chart"
          viewBox={`0 0 ${scale.width} ${scale.height}`}
          width={scale.width}
          height={scale.height}
          aria-hidden="true"
          onPointerMove={point}
          onPointerDown={point}
        >
          <HatchPatterns />
          <ChartGround service={service} schedule={schedule} scale={scale} />
          <Bowls bowls={schedule.bowls} plan={plan} scale={scale} />
          {schedule.foils.map((times, row) => (
            <ChartRow
              key={times.id}
              times={times}
              row={row}
              foil={foils.get(times.id) ?? unknownFoil}
              scale={scale}
            />
          ))}
          <line
            x1={scale.at(scrubbedMin)}
            x2={scale.at(scrubbedMin)}
            y1={headHeight - 46}
            y2={scale.height - 4}
            stroke={black}
            strokeWidth={2}
          />
        </svg>
      </Scroller>
      <p className="aside chart-key">
        {w.key({ limit: w.limit })} {service.foils.some(({ roots }) => roots) && common.twoStrips}
      </p>
    </div>
  )
}

const unknownFoil: RowFoil = { number: 0, letters: "", mixes: [] }

const rowFoils = (plan: Plan) =>
  new Map(
    plan.sections
      .filter(isFoil)
      .map((foil): [string, RowFoil] => [
        foil.id,
        { number: foil.mapNumber, letters: coatLetters(coatsOf(foil)), mixes: mixPlaces(foil, plan) },
      ]),
  )

type BowlsProps = { bowls: Schedule["bowls"]; plan: Plan; scale: ChartScale }

const levelHeight = 15

function Bowls({ bowls, plan, scale: { at } }: BowlsProps) {
  const places = bowls.map(({ atMin }) => at(atMin))
  const levels = bowlLevels(places)
  return bowls.map(({ mix, foils }, which) => (
    <g
      key={`${mix}-${foils[0]}`}
      className="chart-bowl"
      transform={`translate(${places[which]} ${67 - levels[which] * levelHeight})`}
    >
      <path
        d="M0 0l-7 -11h14z"
        fill={mixColors[plan.mixes.findIndex(({ id }) => id === mix) % mixColors.length] ?? accent}
      />
      <text x={11} y={0} fontSize={17} fontWeight={650} fill={black}>
        {mix}
      </text>
    </g>
  ))
}
