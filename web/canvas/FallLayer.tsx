import { useMemo } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { useStore } from "zustand"
import { useSession } from "../plan/usePlan"
import { fallStore } from "../service/fallStore"
import { drawFall } from "./drawFall"
import type { PaneState } from "./drawPane"
import { restingPicture } from "./headPicture"
import { sceneOf } from "./nativeContext"
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
