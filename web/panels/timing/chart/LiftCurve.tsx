import { useMemo } from "react"
import { levelScale, levelSeenSd } from "../../../../presets/timing/lift"
import { looks } from "../../../../presets/timing/pace"
import { sheetOf } from "../../../core/document/salon"
import type { Mix, Plan } from "../../../core/document/schema"
import type { StrandTest } from "../../../core/document/timingChoices"
import { goalOfPlan, liftKnown } from "../../../core/lift/liftOfPlan"
import { type LiftOutlook, liftOutlook } from "../../../core/lift/liftOutlook"
import { isFine } from "../../../core/lift/liftsFirst"
import { accent, black } from "../../../drawing/inks"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Scroller } from "../../fields/Scroller"

type Props = { plan: Plan; mix: Mix; test: StrandTest | null }

/** What the strand says of this mix: the middle curve, its band, the goal, and when to look. */
export function LiftCurve({ plan, mix, test }: Props) {
  const { client, timing } = useWords()
  const { strandFaults, lookWindow } = client
  const w = timing.strand
  const goal = goalOfPlan(plan)
  const isOwn = test?.product === mix.product && test.developerVolume === mix.developerVolume
  const startLevel = isOwn ? test.startLevel : (goal?.fromLevel ?? test?.startLevel)
  const outlook = useMemo(() => outlookOf(plan, mix, test, startLevel), [plan, mix, test, startLevel])
  if (startLevel === undefined) return null
  const name = w.mix({ mix: mix.id, volume: mix.developerVolume })
  if (!outlook) return <p>{w.noCurve(name)}</p>
  const { problem, window, misfitLevels, darker, isBorrowed } = outlook
  return (
    <div className="lift">
      <h3>{name}</h3>
      {problem && (
        <p className="fault" role="alert">
          {w.untilThen(say(strandFaults, problem))}
        </p>
      )}
      {isOwn &&
        darker.map((row) => (
          <p key={row.row} className="aside" role="status">
            {say(strandFaults, row)}
          </p>
        ))}
      <p className="window">{window ? lookWindow(window) : w.noGoal}</p>
      <details open={isOwn}>
        <summary>{w.curve}</summary>
        <Scroller name={w.curveName(name)}>
          <Curve
            outlook={outlook}
            startLevel={startLevel}
            rows={isOwn ? test.rows : []}
            goalLevel={goal?.toLevel ?? null}
          />
        </Scroller>
      </details>
      <p className="aside">
        {[
          w.key,
          ...(isOwn ? [w.dots] : []),
          ...(isBorrowed ? [w.borrowed] : []),
          ...(misfitLevels !== null && misfitLevels > levelSeenSd ? [w.misfit] : []),
        ].join(" ")}
      </p>
    </div>
  )
}

function outlookOf(plan: Plan, mix: Mix, test: StrandTest | null, startLevel: number | undefined) {
  const sheet = (product: string) => sheetOf(product, plan) ?? undefined
  const known = liftKnown(mix, sheet(mix.product), test, {
    testedSheet: test ? sheet(test.product) : undefined,
    start: plan.salon?.start,
  })
  if (!known || startLevel === undefined) return null
  const firstLookMin = isFine(plan) ? looks.firstDelicateMin : looks.firstMin
  return liftOutlook(known, { startLevel, goal: goalOfPlan(plan), firstLookMin })
}

const [left, top, width, height] = [56, 14, 660, 250]

type CurveProps = {
  outlook: LiftOutlook
  startLevel: number
  rows: StrandTest["rows"]
  goalLevel: number | null
}

function Curve({ outlook: { curve, longestMin }, startLevel, rows, goalLevel }: CurveProps) {
  const w = useWords().timing.strand
  const lowest = Math.max(levelScale.darkest, Math.floor(startLevel) - 1)
  const x = (minutes: number) => left + (minutes / (longestMin + 5)) * width
  const y = (level: number) => top + (1 - (level - lowest) / (levelScale.lightest - lowest)) * height
  const points = (end: "low" | "mid" | "high") =>
    curve.map(({ minutes, level }) => `${x(minutes)},${y(Math.min(levelScale.lightest, level[end]))}`)
  const levels = range(lowest, levelScale.lightest, 1)
  return (
    <svg
      className="chart"
      viewBox={`0 0 ${left + width + 20} ${top + height + 44}`}
      width={left + width + 20}
      height={top + height + 44}
      aria-hidden="true"
    >
      {levels.map((level) => (
        <g key={level}>
          <line x1={left} x2={left + width} y1={y(level)} y2={y(level)} stroke="#d9cfbf" />
          <text x={left - 10} y={y(level) + 6} fontSize={17} textAnchor="end" fill={black}>
            {level}
          </text>
        </g>
      ))}
      {range(0, longestMin, 10).map((minutes) => (
        <text
          key={minutes}
          x={x(minutes)}
          y={top + height + 26}
          fontSize={17}
          textAnchor="middle"
          fill={black}
        >
          {minutes}
        </text>
      ))}
      <text x={left + width} y={top + height + 26} fontSize={17} textAnchor="end" fill="#574e43">
        {w.minutesOn}
      </text>
      <polygon
        points={[...points("low"), ...points("high").reverse()].join(" ")}
        fill={black}
        fillOpacity={0.14}
      />
      <polyline points={points("mid").join(" ")} fill="none" stroke={black} strokeWidth={2.4} />
      {goalLevel !== null && (
        <line
          x1={left}
          x2={left + width}
          y1={y(goalLevel)}
          y2={y(goalLevel)}
          stroke={black}
          strokeWidth={1.6}
          strokeDasharray="8 5"
        />
      )}
      <line
        x1={x(longestMin)}
        x2={x(longestMin)}
        y1={top}
        y2={top + height}
        stroke={accent}
        strokeWidth={3}
      />
      <path
        d={[{ minutes: 0, level: startLevel }, ...rows]
          .map(({ minutes, level }) => `M${x(minutes) - 6} ${y(level)}${ring}`)
          .join("")}
        fill="#fffdf9"
        stroke={black}
        strokeWidth={2.4}
      />
    </svg>
  )
}

/** A ring of radius 6 as path data, from its left edge. */
const ring = "a6 6 0 1 0 12 0a6 6 0 1 0 -12 0"

const range = (from: number, to: number, step: number) =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step)
