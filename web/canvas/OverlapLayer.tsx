import { useMemo } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { measured } from "../core/figures/measured"
import { overlapMarks } from "../drawing/overlapMarks"
import { drawMarks } from "./paint/drawMarks"
import { penOf } from "./paint/drawPane"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"
import { useIsAtRest } from "./useIsAtRest"

/** Hair that two sections take, over all that is drawn; not while the head turns, when it would hold up the hand. */
export function OverlapLayer({ pane }: { pane: PaneState }) {
  const { plan, picture, camera, enlarged } = pane
  const isAtRest = useIsAtRest(picture)
  const { overlaps } = measured(plan)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the camera and the size of the pane are the pen
  const scene = useMemo(
    () => sceneOf((context) => drawMarks(context, overlapMarks(overlaps, picture.scene), penOf(pane))),
    [overlaps, picture, camera, enlarged],
  )
  return (
    <Layer listening={false}>
      {isAtRest && <Shape listening={false} perfectDrawEnabled={false} sceneFunc={scene} />}
    </Layer>
  )
}
