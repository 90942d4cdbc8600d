import { useStore } from "zustand"
import { isOnMidline } from "../../../../geometry/scalp/landmarkMoves"
import { type LandmarkPlace, landmarksSeen } from "../../../drawing/landmarkPlaces"
import type { OverlaidPane } from "../../../drawing/paneOverlay"
import { chooseLandmark, hairlineStore } from "../../../session/hairlineStore"
import { useWords } from "../../../session/words"
import { Handle } from "./Handle"
import { dropLandmark, forgetLandmark, nudgeLandmark, showLandmarkAt } from "./landmarkHand"

/** The landmarks of the hairline on a page, each with its name, to be dragged or moved by the arrow keys. */
export function LandmarkHandles({ pane }: { pane: OverlaidPane }) {
  const { common, placement } = useWords()
  const { draft, selected, together } = useStore(hairlineStore)
  const scene = draft ? { ...pane.scene, head: draft.head } : pane.scene
  const isChosen = ({ name, side }: LandmarkPlace) =>
    name === selected.name && (together || isOnMidline(name) || side === selected.side)
  return landmarksSeen(scene, draft ? selected : null).map((place) => {
    const { name, side, page } = place
    const landmark = { name, side }
    const isHeld = name === selected.name && (side === selected.side || isOnMidline(name))
    return (
      <Handle
        key={`${side} ${name}`}
        pane={pane}
        page={page}
        at={place.at}
        label={common.landmarkOf(name, side)}
        name={
          draft?.move && isHeld
            ? placement.hairline.inHand({ name, move: draft.move })
            : common.landmarks[name]
        }
        isChosen={isChosen(place)}
        isNamed={isHeld}
        onChoose={() => chooseLandmark(landmark)}
        onNudge={(at) => nudgeLandmark(landmark, at)}
        drag={{
          move: (at) => showLandmarkAt(landmark, at),
          drop: (at) => dropLandmark(landmark, at),
          cancel: forgetLandmark,
        }}
      />
    )
  })
}
