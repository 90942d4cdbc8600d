import { useState } from "react"
import type { SurfacePoint } from "../../../geometry/frames"
import { toView } from "../../../geometry/views"
import { act } from "../../plan/act"
import { announceRefusal } from "../../plan/announcements"
import { setHead } from "../../plan/edits/setHead"
import { isInReach } from "../../plan/landmarkPlaces"
import { headOf } from "../../plan/measured"
import type { OverlaidPane } from "../../plan/paneOverlay"
import { planStore } from "../../plan/planStore"
import { usePlan } from "../../plan/usePlan"
import { Handle } from "./Handle"

/** The middle of the crown whorl, where there is one. */
export function WhorlHandle({ pane }: { pane: OverlaidPane }) {
  const whorl = usePlan(({ head }) => head.whorl)
  const [inHand, setInHand] = useState<SurfacePoint | null>(null)
  const at = inHand ?? whorl?.at
  if (!whorl || whorl.turns === "none" || !at || !isInReach(at, pane.scene)) return null
  const drop = (place: SurfacePoint | null) => {
    setInHand(null)
    if (place) moveWhorl(place)
  }
  return (
    <Handle
      pane={pane}
      page={toView(pane.scene.view, pane.scene.head.surface, at)}
      at={at}
      label="crown whorl"
      name="whorl"
      isChosen={inHand !== null}
      onChoose={() => {}}
      onNudge={(place) => moveWhorl(place, "nudge whorl")}
      drag={{ move: setInHand, drop, cancel: () => setInHand(null) }}
    />
  )
}

function moveWhorl(at: SurfacePoint, key?: string) {
  const plan = planStore.getState().present
  const { whorl } = plan.head
  if (!whorl) return
  if (headOf(plan).hairline.contains(at))
    act("Move the crown whorl", setHead({ whorl: { ...whorl, at } }), key)
  else announceRefusal("The crown whorl lies in the hair: it stays where it was.")
}
