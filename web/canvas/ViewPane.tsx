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
import type { ViewName } from "../../geometry/surface/views"
import { headOf, measured } from "../core/figures/measured"
import { viewFrame } from "../drawing/labelRings"
import type { OverlaidPane } from "../drawing/paneOverlay"
import { draftStore } from "../session/draftStore"
import { dividerInHand, isHairShown, sessionStore } from "../session/sessionStore"
import { usePlan, useSession } from "../session/usePlan"
import { useWords } from "../session/words"
import { MinutesLayer } from "./MinutesLayer"
import { onceHere } from "./onceHere"
import { type Camera, fitCamera, fromScreen, shareAboveHairline, toScreen } from "./paint/camera"
import { drawInHand, drawSettled } from "./paint/drawPane"
import { pictureOf } from "./paint/headPicture"
import { sceneOf } from "./paint/nativeContext"
import type { PaneState } from "./paint/paneState"
import { useWorkingMarks } from "./paint/workingMarks"
import { type Framing, useFraming } from "./useFraming"

/** Comes with the first head that is divided. */
const TintLayer = lazy(async () => ({ default: (await import("./TintLayer")).TintLayer }))

/** Comes with the first hair that two sections take. */
const OverlapLayer = lazy(async () => ({ default: (await import("./OverlapLayer")).OverlapLayer }))

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
  const hasOverlaps = measured(plan).overlaps.length > 0
  const working = useWorkingMarks(plan.workingSections !== undefined)
  const yaw = useSession((state) => (name === "turned" ? state.yaw : 0))
  const pitch = useSession((state) => (name === "turned" ? state.pitch : 0))
  const [moved, setMoved] = useState<Camera | null>(null)

  const head = headOf(plan)
  const picture = useMemo(() => pictureOf(head, name, yaw, pitch), [head, name, yaw, pitch])
  const framing = useFraming(plan, name, picture.scene, enlarged)
  const camera = useMemo(
    () =>
      moved
        ? { ...moved, width, height }
        : isFalling || framing.shown === "whole"
          ? fitCamera(viewFrame(name, head.axes, isFalling ? plan.hair : undefined), width, height)
          : fitCamera(framing.frame, width, height, shareAboveHairline),
    [moved, name, head, width, height, isFalling, plan.hair, framing],
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
    return onceHere(import("./hand/paneGestures"), ({ listenToPane }) => {
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
          {plan.workingSections && (
            <Suspense>
              <TintLayer pane={pane} />
            </Suspense>
          )}
          <Layer listening={false}>
            <Shape listening={false} perfectDrawEnabled={false} sceneFunc={settledScene} />
          </Layer>
          {isInTime ? (
            <MinutesLayer pane={pane} />
          ) : (
            hasOverlaps && (
              <Suspense>
                <OverlapLayer pane={pane} />
              </Suspense>
            )
          )}
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
      {(moved || (framing.canChange && !isFalling)) && (
        <Suspense>
          <FrameButton framing={framing} isMoved={moved !== null} onBack={() => setMoved(null)} />
        </Suspense>
      )}
    </div>
  )
}

type FrameButtonProps = { framing: Framing; isMoved: boolean; onBack: () => void }

/** Back to the frame from wherever the page was moved to, or from one frame to the other. */
function FrameButton({ framing: { shown }, isMoved, onBack }: FrameButtonProps) {
  const w = useWords().placement.map.framings
  const next = isMoved ? shown : shown === "hairline" ? "whole" : "hairline"
  const go = () => (isMoved ? onBack() : sessionStore.setState({ framing: next }))
  return (
    <button type="button" className="button pane-fit" onClick={go}>
      {w[next]}
    </button>
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
