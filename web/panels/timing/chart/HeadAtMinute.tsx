import { useId, useMemo } from "react"
import type { Plan } from "../../../core/document/schema"
import { type FoilAt, foilsAt } from "../../../core/schedule/foilsAt"
import { minuteOf } from "../../../core/schedule/minuteCode"
import { minutesTone } from "../../../core/schedule/minutesTone"
import type { Schedule } from "../../../core/schedule/timing"
import { black, paper } from "../../../drawing/inks"
import { sessionStore } from "../../../session/sessionStore"
import { useWords } from "../../../session/words"
import { HeadFigure } from "../../fields/HeadFigure"
import { type FoilView, foilViews } from "./foilShapes"

type Props = { plan: Plan; schedule: Schedule; atMin: number; onScrub: (min: number) => void }

/** The head at a minute of the visit, each foil shaded by the minutes it has been on, never by what it will be. */
export function HeadAtMinute({ plan, schedule, atMin, onScrub }: Props) {
  const id = useId()
  const views = useMemo(() => foilViews(plan), [plan])
  const foils = foilsAt(schedule, atMin)
  const { timing, common } = useWords()
  const w = timing.head
  const words = common.minute(minuteOf(atMin, foils))
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{w.title}</h2>
      <div className="scrub">
        <input
          type="range"
          aria-label={w.slider}
          aria-valuetext={words}
          min={0}
          max={Math.ceil(schedule.rinseMin)}
          value={atMin}
          onChange={(event) => onScrub(Number(event.target.value))}
        />
        <p>{words}</p>
      </div>
      <div className="heads-in-time">
        <div>
          {views.map((view) => (
            <figure key={view.name}>
              <FoilFigure view={view} foils={foils} />
              <figcaption>{w.views[view.name]}</figcaption>
            </figure>
          ))}
        </div>
      </div>
      <p className="aside">{w.key}</p>
      <button
        type="button"
        className="button"
        onClick={() => sessionStore.setState({ screen: "placement", mapMin: atMin, selectedIds: [] })}
      >
        {w.onMap}
      </button>
    </section>
  )
}

function FoilFigure({ view, foils }: { view: FoilView; foils: ReadonlyMap<string, FoilAt> }) {
  return (
    <HeadFigure name={view.name} picture={view.picture}>
      {view.shapes.map(({ id, path }) => (
        <path key={id} d={path} {...toneOf(foils.get(id))} vectorEffect="non-scaling-stroke" />
      ))}
      {view.labels.map(({ text, x, y, leader }) => (
        <g key={text}>
          <path d={leader} stroke="#4a443c" strokeWidth={0.6} vectorEffect="non-scaling-stroke" />
          <circle cx={x} cy={y} r={8} fill={paper} />
          <text x={x} y={y + 4.6} fontSize={13} fontWeight={650} textAnchor="middle" fill={black}>
            {text}
          </text>
        </g>
      ))}
    </HeadFigure>
  )
}

function toneOf(foil: FoilAt | undefined) {
  const { inkShare, weightPx, dashPx } = minutesTone(foil)
  return {
    fill: black,
    fillOpacity: inkShare,
    stroke: black,
    strokeWidth: weightPx,
    strokeDasharray: dashPx.join(" "),
  }
}
