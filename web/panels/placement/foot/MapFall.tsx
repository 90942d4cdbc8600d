import "./mapFoot.css"
import "./mapFall.css"
import { useEffect, useRef } from "react"
import { useStore } from "zustand"
import type { Range } from "../../../../geometry/hair/tradeFigures"
import { headsGrown, strandFigures } from "../../../../presets/placement/strands"
import { fallStore, letFall } from "../../../session/fall/fallStore"
import { pictureStore } from "../../../session/fall/pictureStore"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { PictureColours } from "./PictureColours"
import { PictureControls } from "./PictureControls"

const backToDrawing = () => sessionStore.setState({ isFalling: false })
const backToFigures = () => pictureStore.setState({ isAlone: false })

/** At the foot of the map while the hair lies over it: what is drawn, how much round the face is lightened, and the way back. */
export function MapFall() {
  const w = useWords().placement.foot
  const { head, hair, sections } = usePlan((open) => open)
  const isAlone = useStore(pictureStore, (look) => look.isAlone)
  const front = useStore(pictureStore, (look) => look.front)
  useEffect(() => letFall({ head, hair, sections, front }), [head, hair, sections, front])
  useEffect(() => backToFigures, [])
  return (
    <section
      className={isAlone ? "map-foot map-fall alone" : "map-foot map-fall"}
      aria-label={w.fall.label}
      onKeyDown={({ key }) => key === "Escape" && (isAlone ? backToFigures() : backToDrawing())}
    >
      {isAlone ? <ForClient /> : <ForColourist />}
    </section>
  )
}

/** What the client reads beside the picture: no figure, nothing of health. */
function ForClient() {
  const w = useWords().placement.foot
  const initials = usePlan(({ client }) => client.initials)
  const back = useFocus()
  return (
    <>
      <p className="fall-client">
        {initials && <b>{initials}</b>} {w.fall.clientSentence}
      </p>
      <button ref={back} type="button" className="button" onClick={backToFigures}>
        {w.fall.backToFigures}
      </button>
    </>
  )
}

function ForColourist() {
  const w = useWords().placement.foot
  const kind = usePlan(({ head }) => head.wornParting?.kind ?? "unknown")
  const { fall, isOfPlan } = useStore(fallStore)
  const front = useStore(pictureStore, (look) => look.front)
  const back = useFocus()
  return (
    <>
      <h3>{w.fall.title}</h3>
      <button ref={back} type="button" className="button" onClick={backToDrawing}>
        {w.backToDrawing}
      </button>
      <p className="fall-shares" role="status">
        {fall && isOfPlan && fall.heads > 1 ? <Shares {...fall.share} /> : w.fall.calculating}
      </p>
      <div className="fall-words">
        <p>
          {w.fall.told({ withinCm: strandFigures.roundFaceMm / 10, heads: headsGrown.value, kind, front })}
        </p>
        <PictureControls />
        <PictureColours />
      </div>
    </>
  )
}

function useFocus() {
  const button = useRef<HTMLButtonElement>(null)
  useEffect(() => button.current?.focus(), [])
  return button
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
