import { useId, useMemo } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { type FoilAt, foilsAt } from "../../../core/schedule/foilsAt"
import { minuteOf } from "../../../core/schedule/minuteCode"
import { minutesTone } from "../../../core/schedule/minutesTone"
import type { Schedule } from "../../../core/schedule/timing"
import { black } from "../../../drawing/inks"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { FoilHeads, type FoilPaint } from "../../heads/FoilHeads"
import { foilViews } from "../../heads/foilViews"

type Minute = { schedule: Schedule; atMin: number }

/** The head at a minute of the visit, each foil shaded by the minutes it has been on, never by what it will be. */
export function HeadAtMinute({ plan, schedule, atMin }: Minute & { plan: Plan }) {
  const id = useId()
  const views = useMemo(() => foilViews(plan), [plan])
  const foils = foilsAt(schedule, atMin)
  const w = useWords().timing.head
  return (
    <section className="head-at-minute" aria-labelledby={id}>
      <h2 id={id} className="unseen">
        {w.title}
      </h2>
      <FoilHeads views={views} paintOf={(foil) => paintAt(foils.get(foil))} />
      <p className="aside">{w.key}</p>
    </section>
  )
}

/** Which minute the head is shown at: by hand here, by the pointer on the chart above. */
export function MinuteSlider({ schedule, atMin, onScrub }: Minute & { onScrub: (min: number) => void }) {
  const { timing, common } = useWords()
  const w = timing.head
  const piece = usePlan(({ sections }) => pieceOf(sections.filter(isFoil)))
  const words = common.minute({ ...minuteOf(atMin, foilsAt(schedule, atMin)), piece })
  return (
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
      <button
        type="button"
        className="button"
        onClick={() => sessionStore.setState({ screen: "placement", mapMin: atMin, selectedIds: [] })}
      >
        {w.onMap}
      </button>
    </div>
  )
}

function paintAt(foil: FoilAt | undefined): FoilPaint {
  const { inkShare, weightPx, dashPx } = minutesTone(foil)
  return {
    fill: black,
    fillOpacity: inkShare,
    stroke: black,
    strokeWidth: weightPx,
    strokeDasharray: dashPx.join(" "),
  }
}
