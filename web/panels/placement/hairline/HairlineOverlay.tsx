import { useStore } from "zustand"
import type { ViewPoint } from "../../../../geometry/surface/frames"
import { inks } from "../../../drawing/inks"
import { hairlineMarks } from "../../../drawing/marks"
import type { OverlaidPane } from "../../../drawing/paneOverlay"
import { hairlineStore } from "../../../session/hairlineStore"
import { LandmarkHandles } from "./LandmarkHandles"
import { WhorlHandle } from "./WhorlHandle"
import "./overlay.css"

/** What lies over a page of the map while the hairline is the tool: the line in hand, and in the large view its handles. */
export function HairlineOverlay({ pane }: { pane: OverlaidPane }) {
  const draft = useStore(hairlineStore, (state) => state.draft)
  return (
    <div className="pane-overlay" data-enlarged={pane.enlarged}>
      {draft && <LineInHand pane={{ ...pane, scene: { ...pane.scene, head: draft.head } }} />}
      {pane.enlarged && (
        <>
          <LandmarkHandles pane={pane} />
          <WhorlHandle pane={pane} />
          {draft?.refused && <p className="overlay-refusal">{draft.refused}</p>}
        </>
      )}
    </div>
  )
}

const pxPerPt = 96 / 72

function LineInHand({ pane }: { pane: OverlaidPane }) {
  const { color, weightPt } = inks.selected
  const paths = hairlineMarks(pane.scene).map((mark) => (mark.kind === "line" ? pathOn(pane, mark.path) : ""))
  return (
    <svg width={pane.width} height={pane.height} aria-hidden="true">
      <path
        d={paths.join("")}
        fill="none"
        stroke={color}
        strokeWidth={weightPt * pxPerPt * (pane.enlarged ? 1 : 0.5)}
        strokeLinecap="round"
      />
    </svg>
  )
}

const pathOn = ({ toPane }: OverlaidPane, path: readonly ViewPoint[]) =>
  `M${path
    .map((at) =>
      toPane(at)
        .map((px) => px.toFixed(1))
        .join(" "),
    )
    .join("L")}`
