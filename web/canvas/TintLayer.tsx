import { useMemo } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { drawMarks } from "./paint/drawMarks"
import { penOf } from "./paint/drawPane"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"
import { useIsAtRest } from "./useIsAtRest"

/** The wash of each working section, under all that is drawn; not while the head turns, when it would hold up the hand. */
export function TintLayer({ pane }: { pane: PaneState }) {
  const { plan, picture, camera, working } = pane
  const isAtRest = useIsAtRest(picture)
  const { workingSections } = plan
  // biome-ignore lint/correctness/useExhaustiveDependencies: the plan's head and its dividing are all of it that is drawn
  const scene = useMemo(
    () =>
      sceneOf((context) => {
        if (working) drawMarks(context, working.workingTintMarks(plan, picture.scene), penOf(pane))
      }),
    [workingSections, picture, camera, working],
  )
  return (
    <Layer listening={false}>
      {isAtRest && working && <Shape listening={false} perfectDrawEnabled={false} sceneFunc={scene} />}
    </Layer>
  )
}
