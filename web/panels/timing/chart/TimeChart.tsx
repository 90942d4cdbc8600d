import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import type { TimedPlan } from "../../../core/schedule/timedPlan"
import type { Schedule } from "../../../core/schedule/timing"
import { accent, black, mixColors } from "../../../drawing/inks"
import { HatchPatterns } from "../../fields/HatchPatterns"
import { Scroller } from "../../fields/Scroller"
import { ChartGround } from "./ChartGround"
import { ChartRow, type RowFoil } from "./ChartRow"
import { at, chartSize, headHeight } from "./chartScale"

type Timed = Extract<TimedPlan, { ok: true }>
type Props = { plan: Plan; timed: Timed; scrubbedMin: number }

/** Foils down, minutes across: on to off, the band in which each may be ready, looks, bowls and the longest time. */
export function TimeChart({ plan, timed: { service, schedule }, scrubbedMin }: Props) {
  const { width, height } = chartSize(schedule)
  const foils = rowFoils(plan)
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
          <HatchPatterns />
          <ChartGround service={service} schedule={schedule} height={height} />
          <Bowls bowls={schedule.bowls} plan={plan} />
          {schedule.foils.map((times, row) => (
            <ChartRow key={times.id} times={times} row={row} foil={foils.get(times.id) ?? unknownFoil} />
          ))}
          <line
            x1={at(scrubbedMin)}
            x2={at(scrubbedMin)}
            y1={headHeight - 46}
            y2={height - 4}
            stroke={black}
            strokeWidth={2}
          />
        </svg>
      </Scroller>
      <p className="aside chart-key">
        Bar: on to off. Outlined: may be ready. <b className="never">Red stroke</b>: never past. Dotted: a
        look. Triangle: mix that bowl. Black line: the minute shown on the map above.
      </p>
    </>
  )
}

const unknownFoil: RowFoil = { number: 0, letter: "", mix: 0 }

const rowFoils = ({ sections, mixes }: Plan) =>
  new Map(
    sections
      .filter(isFoil)
      .map(({ id, mapNumber, mix }): [string, RowFoil] => [
        id,
        { number: mapNumber, letter: mix, mix: mixes.findIndex((each) => each.id === mix) },
      ]),
  )

const Bowls = ({ bowls, plan }: { bowls: Schedule["bowls"]; plan: Plan }) =>
  bowls.map(({ mix, atMin, foils }) => (
    <g key={`${mix}-${foils[0]}`}>
      <path
        d={`M${at(atMin)} 66l-7 -11h14z`}
        fill={mixColors[plan.mixes.findIndex(({ id }) => id === mix) % mixColors.length] ?? accent}
      />
      <text x={at(atMin) + 11} y={66} fontSize={17} fontWeight={650} fill={black}>
        {mix}
      </text>
    </g>
  ))
