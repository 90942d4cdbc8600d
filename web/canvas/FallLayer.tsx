import { useMemo } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { useStore } from "zustand"
import type { Fall } from "../core/fall/fall"
import type { Shown } from "../core/fall/strandColours"
import { shadesOfPlan } from "../core/pigment/shadesOfPlan"
import { growthIn } from "../core/regrowth/growth"
import { fallStore } from "../session/fall/fallStore"
import { pictureStore } from "../session/fall/pictureStore"
import { useSession } from "../session/usePlan"
import { hairPicture } from "./hair/hairPicture"
import { drawFall } from "./paint/drawFall"
import { restingPicture } from "./paint/headPicture"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"
import { useIsAtRest } from "./useIsAtRest"

/** The hair over the head, as it falls; where the device has no graphics for it, it waits until the head stands still. */
export function FallLayer({ pane }: { pane: PaneState }) {
  const { picture, camera, name, plan } = pane
  const fall = useStore(fallStore, (state) => state.fall)
  const weeksOn = useStore(pictureStore, (state) => state.weeksOn)
  const isToned = useStore(pictureStore, (state) => state.isToned)
  const yaw = useSession((session) => session.yaw)
  const pitch = useSession((session) => session.pitch)
  const isAtRest = useIsAtRest(picture)
  const still = useMemo(
    () => (name === "turned" && isAtRest ? restingPicture(pane.head, yaw, pitch) : picture),
    [name, isAtRest, pane.head, yaw, pitch, picture],
  )
  const shown = useMemo((): Shown => {
    const shades = shadesOfPlan({ consultation: plan.consultation })
    return { shades: isToned ? shades : { ...shades, finish: null }, grownMm: growthIn(weeksOn).midMm }
  }, [plan.consultation, isToned, weeksOn])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new function is what makes Konva draw again
  const scene = useMemo(
    () =>
      fall && sceneOf((context) => drawHair(context, { ...pane, picture: still }, { fall, shown, isAtRest })),
    [fall, isAtRest, still, camera, shown],
  )
  return (
    <Layer listening={false}>
      {scene && <Shape listening={false} perfectDrawEnabled={false} sceneFunc={scene} />}
    </Layer>
  )
}

type Hair = { fall: Fall; shown: Shown; isAtRest: boolean }

function drawHair(context: CanvasRenderingContext2D, pane: PaneState, { fall, shown, isAtRest }: Hair) {
  const { width, height } = pane.camera
  const made = hairPicture(pane, fall, { shown, isAtRest, pxRatio: window.devicePixelRatio })
  if (made) context.drawImage(made, 0, 0, width, height)
  else if (isAtRest) drawFall(context, pane, fall, shown)
}
