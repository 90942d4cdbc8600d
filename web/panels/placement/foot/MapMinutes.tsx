import "./mapFoot.css"
import "./mapMinutes.css"
import { useEffect, useRef } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { type FoilAt, foilsAt } from "../../../core/schedule/foilsAt"
import { minutesTone } from "../../../core/schedule/minutesTone"
import { foilAtWords, minutesWords } from "../../../core/schedule/minutesWords"
import { timedPlan } from "../../../core/schedule/timedPlan"
import { black } from "../../../drawing/inks"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan, useSession } from "../../../session/usePlan"

const scrubTo = (mapMin: number | null) => sessionStore.setState({ mapMin })

/** At the foot of the map while it shows a minute of the visit: the minute to choose, what the shades say, and the way back. */
export function MapMinutes() {
  const plan = usePlan((open) => open)
  const mapMin = useSession((session) => session.mapMin) ?? 0
  const timed = timedPlan(plan)
  const slider = useRef<HTMLInputElement>(null)
  useEffect(() => slider.current?.focus(), [])
  const lastMin = timed.ok ? Math.ceil(timed.schedule.rinseMin) : 0
  const atMin = Math.min(mapMin, lastMin)
  const foils = timed.ok ? foilsAt(timed.schedule, atMin) : new Map<string, FoilAt>()
  const words = timed.ok ? minutesWords(atMin, foils) : timed.problems.join(" ")
  return (
    <section
      className="map-foot map-minutes"
      aria-label="The map minute by minute"
      onKeyDown={({ key }) => key === "Escape" && scrubTo(null)}
    >
      {timed.ok && (
        <input
          ref={slider}
          type="range"
          aria-label="Minute shown on the map"
          aria-valuetext={words}
          min={0}
          max={lastMin}
          value={atMin}
          onChange={(event) => scrubTo(Number(event.target.value))}
        />
      )}
      <button type="button" className="button" onClick={() => scrubTo(null)}>
        Back to the drawing
      </button>
      <p className="minute-words">{words}</p>
      <Key />
      <FoilsAtMinute plan={plan} foils={foils} atMin={atMin} />
    </section>
  )
}

/** The same in words, for who cannot see the shades. */
const FoilsAtMinute = ({
  plan,
  foils,
  atMin,
}: {
  plan: Plan
  foils: ReadonlyMap<string, FoilAt>
  atMin: number
}) => (
  <ol className="unseen" aria-label={`Foils at minute ${atMin}`}>
    {plan.sections.filter(isFoil).map(({ id, mapNumber }) => {
      const foil = foils.get(id)
      return foil && <li key={id}>{`Foil ${mapNumber}: ${foilAtWords(foil)}`}</li>
    })}
  </ol>
)

const keys: readonly { words: string; foil: FoilAt }[] = [
  { words: "not on yet", foil: { state: "waiting", onMin: 0, limitShare: 0 } },
  { words: "just on", foil: { state: "on", onMin: 0, limitShare: 0 } },
  { words: "half its longest time", foil: { state: "on", onMin: 0, limitShare: 0.5 } },
  { words: "all of it", foil: { state: "on", onMin: 0, limitShare: 1 } },
  { words: "off", foil: { state: "off", onMin: 0, limitShare: 0 } },
]

const Key = () => (
  <ul className="minute-key" aria-label="What the shades say: minutes on, not a result">
    {keys.map(({ words, foil }) => {
      const { inkShare, weightPx, dashPx } = minutesTone(foil)
      return (
        <li key={words}>
          <svg width={26} height={18} aria-hidden="true">
            <rect
              x={1}
              y={1}
              width={24}
              height={16}
              fill={black}
              fillOpacity={inkShare}
              stroke={black}
              strokeWidth={weightPx}
              strokeDasharray={dashPx.join(" ")}
            />
          </svg>
          {words}
        </li>
      )
    })}
  </ul>
)
