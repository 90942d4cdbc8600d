import { type ComponentType, lazy, Suspense } from "react"
import { useStore } from "zustand"
import { HeadMap } from "./canvas/HeadMap"
import { LiveRegion } from "./panels/fields/LiveRegion"
import { MapFooter } from "./panels/placement/foot/MapFooter"
import { ToolRail } from "./panels/placement/ToolRail"
import { TopBar } from "./panels/plans/TopBar"
import type { ScreenName } from "./session/sessionStore"
import { stackStore } from "./session/stackStore"
import { useSession } from "./session/usePlan"

/** Places the parts of the visit; does nothing else. Only the map is loaded before the head is drawn. */
export function App() {
  const screen = useSession((session) => session.screen)
  const leftHanded = useSession((session) => session.leftHanded)
  const Screen = screens[screen]
  const atChair = screen === "chair"
  return (
    <div className={["app", leftHanded && "left-handed", atChair && "at-chair"].filter(Boolean).join(" ")}>
      {!atChair && <TopBar />}
      <Suspense fallback={<main aria-busy="true" />}>
        <Screen />
      </Suspense>
      <Suspense>
        <ServiceBar />
      </Suspense>
      <LiveRegion />
    </div>
  )
}

const screens: Record<ScreenName, ComponentType> = {
  client: lazy(async () => ({ default: (await import("./panels/client/ClientScreen")).ClientScreen })),
  placement: PlacementScreen,
  mixture: lazy(async () => ({ default: (await import("./panels/formula/FormulaScreen")).FormulaScreen })),
  timing: lazy(async () => ({ default: (await import("./panels/timing/TimingScreen")).TimingScreen })),
  chair: lazy(async () => ({ default: (await import("./panels/chair/ChairScreen")).ChairScreen })),
  sheets: () => <SheetsScreen Note={NextTime} />,
}

const SheetsScreen = lazy(async () => ({ default: (await import("./sheets/SheetsScreen")).SheetsScreen }))

const NextTime = lazy(async () => ({ default: (await import("./panels/timing/NextTime")).NextTime }))

const ServiceBar = lazy(async () => ({ default: (await import("./panels/chair/ServiceBar")).ServiceBar }))

const FoilPanel = lazy(async () => ({ default: (await import("./panels/placement/FoilPanel")).FoilPanel }))

const HairlineOverlay = lazy(async () => ({
  default: (await import("./panels/placement/hairline/HairlineOverlay")).HairlineOverlay,
}))

const StackOverlay = lazy(async () => ({
  default: (await import("./panels/placement/stack/StackOverlay")).StackOverlay,
}))

function PlacementScreen() {
  const shapesHairline = useSession(({ tool }) => tool === "hairline")
  const stacks = useStore(stackStore, ({ stack }) => stack !== null)
  return (
    <main className="placement">
      <h1 className="unseen">Placement</h1>
      <ToolRail />
      <HeadMap Overlay={stacks ? StackOverlay : shapesHairline ? HairlineOverlay : null} />
      <MapFooter />
      <Suspense fallback={<aside className="list" aria-busy="true" />}>
        <FoilPanel />
      </Suspense>
    </main>
  )
}
