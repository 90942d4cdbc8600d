import { useState } from "react"
import type { SurfacePoint } from "../../../../geometry/surface/frames"
import { toView } from "../../../../geometry/surface/views"
import { setHead } from "../../../core/edits/plan/setHead"
import { headOf } from "../../../core/figures/measured"
import { isInReach } from "../../../drawing/landmarkPlaces"
import type { OverlaidPane } from "../../../drawing/paneOverlay"
import { announceRefusal } from "../../../session/announcements"
import { commit } from "../../../session/commit"
import { planStore } from "../../../session/planStore"
import { usePlan } from "../../../session/usePlan"
import { useWords, words } from "../../../session/words"
import { Handle } from "./Handle"

/** The middle of the crown whorl, where there is one. */
export function WhorlHandle({ pane }: { pane: OverlaidPane }) {
  const w = useWords().placement.hairline
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
      label={w.whorlHandle}
      name={w.whorlName}
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
    commit({ chapter: "placement", code: "move-whorl" }, setHead({ whorl: { ...whorl, at } }), key)
  else announceRefusal(words().placement.hairline.whorlRefused)
}
