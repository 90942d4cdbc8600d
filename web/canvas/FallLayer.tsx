import { useMemo } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { useStore } from "zustand"
import { fallStore } from "../session/fall/fallStore"
import { useSession } from "../session/usePlan"
import { drawFall } from "./paint/drawFall"
import { restingPicture } from "./paint/headPicture"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"
import { useIsAtRest } from "./useIsAtRest"

/** The hair over the head, as it falls; waits until the head stands still. */
export function FallLayer({ pane }: { pane: PaneState }) {
  const { picture, camera, name } = pane
  const fall = useStore(fallStore, (state) => state.fall)
  const yaw = useSession((session) => session.yaw)
  const pitch = useSession((session) => session.pitch)
  const isAtRest = useIsAtRest(picture)
  const still = useMemo(
    () => (name === "turned" && isAtRest ? restingPicture(pane.head, yaw, pitch) : picture),
    [name, isAtRest, pane.head, yaw, pitch, picture],
  )
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new function is what makes Konva draw again
  const scene = useMemo(
    () => fall && isAtRest && sceneOf((context) => drawFall(context, { ...pane, picture: still }, fall)),
    [fall, isAtRest, still, camera],
  )
  return (
    <Layer listening={false}>
      {scene && <Shape listening={false} perfectDrawEnabled={false} sceneFunc={scene} />}
    </Layer>
  )
}
