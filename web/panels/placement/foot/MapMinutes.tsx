import "./mapFoot.css"
import "./mapMinutes.css"
import { useEffect, useRef } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { type FoilAt, foilsAt } from "../../../core/schedule/foilsAt"
import { minuteOf } from "../../../core/schedule/minuteCode"
import { minutesTone } from "../../../core/schedule/minutesTone"
import { timedPlan } from "../../../core/schedule/timedPlan"
import { black } from "../../../drawing/inks"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan, useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"

const scrubTo = (mapMin: number | null) => sessionStore.setState({ mapMin })

/** At the foot of the map while it shows a minute of the visit: the minute to choose, what the shades say, and the way back. */
export function MapMinutes() {
  const { common, placement } = useWords()
  const w = placement.foot
  const plan = usePlan((open) => open)
  const mapMin = useSession((session) => session.mapMin) ?? 0
  const timed = timedPlan(plan)
  const slider = useRef<HTMLInputElement>(null)
  useEffect(() => slider.current?.focus(), [])
  useEffect(() => leaveByEscape(() => scrubTo(null)), [])
  const lastMin = timed.ok ? Math.ceil(timed.schedule.rinseMin) : 0
  const atMin = Math.min(mapMin, lastMin)
  const foils = timed.ok ? foilsAt(timed.schedule, atMin) : new Map<string, FoilAt>()
  const { problems } = useWords().timing
  const words = timed.ok
    ? common.minute({ ...minuteOf(atMin, foils), piece: pieceOf(plan.sections.filter(isFoil)) })
    : timed.problems.map((problem) => say(problems, problem)).join(" ")
  return (
    <section className="map-foot map-minutes" aria-label={w.minutes.label}>
      {timed.ok && (
        <input
          ref={slider}
          type="range"
          aria-label={w.minutes.slider}
          aria-valuetext={words}
          min={0}
          max={lastMin}
          value={atMin}
          onChange={(event) => scrubTo(Number(event.target.value))}
        />
      )}
      <button type="button" className="button" onClick={() => scrubTo(null)}>
        {w.backToDrawing}
      </button>
      <p className="minute-words">{words}</p>
      <Key />
      <FoilsAtMinute plan={plan} foils={foils} atMin={atMin} />
    </section>
  )
}

/** Escape leads back wherever the focus is, save in a dialog, which it closes. Returns how to stop listening. */
function leaveByEscape(leave: () => void): () => void {
  const onKey = ({ key }: KeyboardEvent) => {
    if (key === "Escape" && !document.querySelector("dialog[open]")) leave()
  }
  window.addEventListener("keydown", onKey)
  return () => window.removeEventListener("keydown", onKey)
}

/** The same in words, for who cannot see the shades. */
function FoilsAtMinute({ plan, foils, atMin }: AtMinute) {
  const w = useWords().placement.foot.minutes
  return (
    <ol className="unseen" aria-label={w.listLabel(atMin)}>
      {plan.sections.filter(isFoil).map(({ id, kind, mapNumber }) => {
        const foil = foils.get(id)
        return foil && <li key={id}>{w.foil({ number: mapNumber, piece: pieceOf([{ kind }]), ...foil })}</li>
      })}
    </ol>
  )
}

type AtMinute = { plan: Plan; foils: ReadonlyMap<string, FoilAt>; atMin: number }

const keys = {
  waiting: { state: "waiting", onMin: 0, limitShare: 0 },
  justOn: { state: "on", onMin: 0, limitShare: 0 },
  half: { state: "on", onMin: 0, limitShare: 0.5 },
  all: { state: "on", onMin: 0, limitShare: 1 },
  off: { state: "off", onMin: 0, limitShare: 0 },
} satisfies Record<string, FoilAt>
const keyNames = Object.keys(keys) as (keyof typeof keys)[]

function Key() {
  const w = useWords().placement.foot.minutes
  return (
    <ul className="minute-key" aria-label={w.keyLabel}>
      {keyNames.map((name) => {
        const { inkShare, weightPx, dashPx } = minutesTone(keys[name])
        return (
          <li key={name}>
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
            {w.keys[name]}
          </li>
        )
      })}
    </ul>
  )
}
