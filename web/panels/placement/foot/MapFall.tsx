import "./mapFoot.css"
import "./mapFall.css"
import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import type { Range } from "../../../../geometry/hair/tradeFigures"
import { headsGrown, strandFigures } from "../../../../presets/placement/strands"
import { fallStore, letFall } from "../../../session/fall/fallStore"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

const backToDrawing = () => sessionStore.setState({ isFalling: false })

/** At the foot of the map while the hair lies over it: how much of what is seen round the face is lightened, and the way back. */
export function MapFall() {
  const w = useWords().placement.foot
  const { head, hair, sections } = usePlan((open) => open)
  const { fall, isOfPlan } = useStore(fallStore)
  const back = useRef<HTMLButtonElement>(null)
  useEffect(() => back.current?.focus(), [])
  useEffect(() => letFall({ head, hair, sections }), [head, hair, sections])
  return (
    <section
      className="map-foot map-fall"
      aria-label={w.fall.label}
      onKeyDown={({ key }) => key === "Escape" && backToDrawing()}
    >
      <h3>{w.fall.title}</h3>
      <button ref={back} type="button" className="button" onClick={backToDrawing}>
        {w.backToDrawing}
      </button>
      <p className="fall-shares" role="status">
        {fall && isOfPlan && fall.heads > 1 ? <Shares {...fall.share} /> : w.fall.calculating}
      </p>
      <p className="fall-words">
        {w.fall.told({
          withinCm: strandFigures.roundFaceMm / 10,
          heads: headsGrown.value,
          kind: head.wornParting?.kind ?? "unknown",
        })}
      </p>
    </section>
  )
}

const Shares = ({ left, right }: Record<"left" | "right", Range>) => (
  <>
    <Share side="right" share={right} />
    <Share side="left" share={left} />
  </>
)

function Share({ side, share: { low, mid, high } }: { side: "left" | "right"; share: Range }) {
  const { common, placement } = useWords()
  const { fall } = placement.foot
  return (
    <span className="figure">
      {fall.side(side)} <b>{common.figures.percent(mid)}</b>
      {high > 0 && ` ${fall.range(low, high)}`}
    </span>
  )
}
