import { useEffect, useMemo, useState } from "react"
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore"
import { useSession } from "../session/usePlan"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"

type Shade = typeof import("./paint/minutesShade")

let fetched: Shade | null = null

/** The map at a minute of the visit, while one is looked at; the clock is fetched when the first one is. */
export function MinutesLayer({ pane }: { pane: PaneState }) {
  const atMin = useSession(({ mapMin }) => mapMin)
  const shade = useShade()
  const { plan, picture, camera } = pane
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new function is what makes Konva draw again
  const scene = useMemo(
    () => shade && atMin !== null && sceneOf((context) => shade.drawMinutes(context, pane, atMin)),
    [shade, atMin, plan, picture, camera],
  )
  if (!scene) return null
  return (
    <Layer listening={false}>
      <Shape listening={false} perfectDrawEnabled={false} sceneFunc={scene} />
    </Layer>
  )
}

function useShade(): Shade | null {
  const [shade, setShade] = useState(fetched)
  useEffect(() => {
    if (shade) return
    void import("./paint/minutesShade").then((module) => {
      fetched = module
      setShade(module)
    })
  }, [shade])
  return shade
}
