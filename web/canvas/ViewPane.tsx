import type { Layer as KonvaLayer } from "konva/lib/Layer"
import {
  type ComponentType,
  lazy,
  type RefObject,
  Suspense,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react"
import { Layer, Shape, Stage } from "react-konva/lib/ReactKonvaCore"
import type { ViewName } from "../../geometry/views"
import { draftStore } from "../plan/draftStore"
import { viewFrame } from "../plan/labelRings"
import { headOf } from "../plan/measured"
import type { OverlaidPane } from "../plan/paneOverlay"
import { dividerInHand, isHairShown } from "../plan/sessionStore"
import { usePlan, useSession } from "../plan/usePlan"
import { type Camera, fitCamera, fromScreen, toScreen } from "./camera"
import { drawInHand, drawSettled, type PaneState } from "./drawPane"
import { pictureOf } from "./headPicture"
import { MinutesLayer } from "./MinutesLayer"
import { sceneOf } from "./nativeContext"
import { onceHere } from "./onceHere"
import { TintLayer } from "./TintLayer"
import { TwiceLayer } from "./TwiceLayer"
import { useWorkingMarks } from "./workingMarks"

const FallLayer = lazy(async () => ({ default: (await import("./FallLayer")).FallLayer }))

type Props = {
  name: ViewName
  enlarged: boolean
  /** What lies over the drawing for hands to take hold of. */
  Overlay: ComponentType<{ pane: OverlaidPane }> | null
}

/** One view of the head: a settled layer under a draft layer, and the hands on them. */
export function ViewPane({ name, enlarged, Overlay }: Props) {
  const container = useRef<HTMLDivElement>(null)
  const draftLayer = useRef<KonvaLayer>(null)
  const { width, height } = useSize(container)
  const plan = usePlan((open) => open)
  const selectedIds = useSession((state) => state.selectedIds)
  const dividerId = useSession(dividerInHand)
  const isInTime = useSession(({ mapMin }) => mapMin !== null)
  const isFalling = useSession(isHairShown) && enlarged && name !== "unrolled"
  const working = useWorkingMarks(plan.workingSections !== undefined)
  const yaw = useSession((state) => (name === "turned" ? state.yaw : 0))
  const pitch = useSession((state) => (name === "turned" ? state.pitch : 0))
  const [moved, setMoved] = useState<Camera | null>(null)

  const head = headOf(plan)
  const picture = useMemo(() => pictureOf(head, name, yaw, pitch), [head, name, yaw, pitch])
  const camera = useMemo(
    () =>
      moved
        ? { ...moved, width, height }
        : fitCamera(viewFrame(name, head.axes, isFalling ? plan.hair : undefined), width, height),
    [moved, name, head, width, height, isFalling, plan.hair],
  )
  const pane: PaneState = {
    name,
    enlarged,
    plan,
    head,
    picture,
    camera,
    selectedIds,
    dividerId,
    isInTime,
    working,
  }
  const latest = useRef(pane)
  latest.current = pane

  useEffect(() => draftStore.subscribe(() => draftLayer.current?.draw()), [])
  useEffect(() => {
    const paper = container.current
    if (!paper) return
    return onceHere(import("./paneGestures"), ({ listenToPane }) => {
      const stop = listenToPane(paper, latest, setMoved)
      paper.dataset.hands = "ready"
      return stop
    })
  }, [])

  const settledKey = [plan, picture, camera, enlarged, working, isInTime] as const
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new function is what makes Konva draw again
  const settledScene = useMemo(() => sceneOf((context) => drawSettled(context, latest.current)), settledKey)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new function is what makes Konva draw again
  const draftScene = useMemo(
    () => sceneOf((context) => drawInHand(context, latest.current, draftStore.getState())),
    [...settledKey, selectedIds, dividerId],
  )

  return (
    <div className="pane-paper" ref={container}>
      {width > 0 && (
        <Stage width={width} height={height} listening={false} aria-hidden="true">
          {plan.workingSections && <TintLayer pane={pane} />}
          <Layer listening={false}>
            <Shape listening={false} perfectDrawEnabled={false} sceneFunc={settledScene} />
          </Layer>
          {isInTime ? <MinutesLayer pane={pane} /> : <TwiceLayer pane={pane} />}
          {isFalling && (
            <Suspense>
              <FallLayer pane={pane} />
            </Suspense>
          )}
          <Layer listening={false} ref={draftLayer}>
            <Shape listening={false} perfectDrawEnabled={false} sceneFunc={draftScene} />
          </Layer>
        </Stage>
      )}
      {Overlay && width > 0 && (
        <Suspense>
          <Overlay
            pane={{
              ...{ enlarged, width, height, scene: picture.scene },
              toPane: (at) => toScreen(camera, at),
              fromPane: (at) => fromScreen(camera, at),
            }}
          />
        </Suspense>
      )}
      {moved && (
        <button type="button" className="pane-fit" onClick={() => setMoved(null)}>
          Whole head
        </button>
      )}
    </div>
  )
}

function useSize(element: RefObject<HTMLElement | null>) {
  const [size, setSize] = useState({ width: 0, height: 0 })
  useEffect(() => {
    if (!element.current) return
    const observer = new ResizeObserver(([{ contentRect }]) =>
      setSize({ width: Math.round(contentRect.width), height: Math.round(contentRect.height) }),
    )
    observer.observe(element.current)
    return () => observer.disconnect()
  }, [element])
  return size
}
