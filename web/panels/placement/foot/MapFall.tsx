import "./mapFoot.css"
import "./mapFall.css"
import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import type { Range } from "../../../../geometry/hair/tradeFigures"
import { strandFigures } from "../../../../presets/placement/strands"
import { fallStore, letFall } from "../../../session/fall/fallStore"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"

const backToDrawing = () => sessionStore.setState({ isFalling: false })

/** At the foot of the map while the hair lies over it: how much of what is seen round the face is lightened, and the way back. */
export function MapFall() {
  const { head, hair, sections } = usePlan((open) => open)
  const { fall, isOfPlan } = useStore(fallStore)
  const back = useRef<HTMLButtonElement>(null)
  useEffect(() => back.current?.focus(), [])
  useEffect(() => letFall({ head, hair, sections }), [head, hair, sections])
  return (
    <section
      className="map-foot map-fall"
      aria-label="Where light falls"
      onKeyDown={({ key }) => key === "Escape" && backToDrawing()}
    >
      <h3>Where light falls, not the colour</h3>
      <button ref={back} type="button" className="button" onClick={backToDrawing}>
        Back to the drawing
      </button>
      <p className="fall-shares" role="status">
        {fall && isOfPlan && fall.heads > 1 ? <Shares {...fall.share} /> : "Working out how it falls…"}
      </p>
      <p className="fall-words">
        lightened of the hair seen from the front within {strandFigures.roundFaceMm / 10} cm of the hairline
        round the face; the range is that of several heads of hair alike. A sketch of where, not of a colour:
        light strands are lightened, dark ones are not. Dry and straight,{" "}
        {wornWords[head.wornParting?.kind ?? "unknown"]}.
      </p>
    </section>
  )
}

const wornWords = {
  centre: "parted in the middle",
  side: "parted at the side",
  zigzag: "parted in a zigzag",
  none: "combed back",
  unknown: "parted in the middle for want of her own parting",
} as const

const Shares = ({ left, right }: Record<"left" | "right", Range>) => (
  <>
    <Share side="Client’s right" share={right} />
    <Share side="Client’s left" share={left} />
  </>
)

const percent = (share: number) => Math.round(100 * share)

const Share = ({ side, share: { low, mid, high } }: { side: string; share: Range }) => (
  <span className="figure">
    {side} <b>{percent(mid)} %</b>
    {high > 0 && ` (${percent(low)} to ${percent(high)} %)`}
  </span>
)
