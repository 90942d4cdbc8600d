import { type ReactNode, Suspense } from "react"
import { useStore } from "zustand"
import { HeadMap } from "./canvas/HeadMap"
import type { Plan } from "./core/document/schema"
import type { OverlaidPane } from "./drawing/paneOverlay"
import { LiveRegion } from "./panels/fields/LiveRegion"
import { Late } from "./panels/parts/Late"
import { latePart } from "./panels/parts/latePart"
import { PartBoundary } from "./panels/parts/PartBoundary"
import { MapFooter } from "./panels/placement/foot/MapFooter"
import { ToolRail } from "./panels/placement/ToolRail"
import { TopBar } from "./panels/plans/TopBar"
import { offlineStore } from "./session/offline/offlineStore"
import type { ScreenName } from "./session/sessionStore"
import { stackStore } from "./session/stackStore"
import { useSession } from "./session/usePlan"
import { useWords } from "./session/words"
import type { Words } from "./words/en/words"

/** Places the parts of the service, each within a boundary of its own; only the map is loaded before the head is drawn. */
export function App() {
  const screen = useSession((session) => session.screen)
  const leftHanded = useSession((session) => session.leftHanded)
  const isNewerReady = useStore(offlineStore, ({ update }) => update !== null)
  const atChair = screen === "chair"
  return (
    <div className={["app", leftHanded && "left-handed", atChair && "at-chair"].filter(Boolean).join(" ")}>
      {!atChair && (
        <Part fallback={<header className="bar" aria-busy="true" />}>
          <TopBar />
        </Part>
      )}
      <PartBoundary key={screen} shape="screen" onRetry={nothing}>
        {screens[screen]}
      </PartBoundary>
      <Late part={serviceBar} shape="line" given={none} waiting={null} />
      {isNewerReady && <Late part={updateOffer} shape="line" given={none} waiting={null} />}
      <LiveRegion />
    </div>
  )
}

const nothing = () => {}

/** A part of the first script: its words may still be on their way. */
const Part = ({ fallback, children }: { fallback?: ReactNode; children: ReactNode }) => (
  <PartBoundary shape="line" onRetry={nothing}>
    <Suspense fallback={fallback}>{children}</Suspense>
  </PartBoundary>
)

const none = {}

const clientScreen = latePart(async () => (await import("./panels/client/ClientScreen")).ClientScreen)
const formulaScreen = latePart(async () => (await import("./panels/formula/FormulaScreen")).FormulaScreen)
const timingScreen = latePart(async () => (await import("./panels/timing/TimingScreen")).TimingScreen)
const chairScreen = latePart(async () => (await import("./panels/chair/ChairScreen")).ChairScreen)
const sheetsScreen = latePart(async () => (await import("./sheets/SheetsScreen")).SheetsScreen)
const lessonText = latePart(async () => (await import("./panels/teaching/LessonText")).LessonText)
const nextTime = latePart(async () => (await import("./panels/timing/NextTime")).NextTime)
/** The chair's keeper is in it: it stays whatever screen is shown, or fails. */
const serviceBar = latePart(async () => (await import("./panels/chair/ServiceBar")).ServiceBar)
const updateOffer = latePart(async () => (await import("./panels/plans/UpdateOffer")).UpdateOffer)
const foilPanel = latePart(async () => (await import("./panels/placement/FoilPanel")).FoilPanel)
const hairlineOverlay = latePart(
  async () => (await import("./panels/placement/hairline/HairlineOverlay")).HairlineOverlay,
)
const stackOverlay = latePart(
  async () => (await import("./panels/placement/stack/StackOverlay")).StackOverlay,
)

const screens: Record<ScreenName, ReactNode> = {
  client: <Late part={clientScreen} shape="screen" given={none} />,
  placement: <PlacementScreen />,
  formula: <Late part={formulaScreen} shape="screen" given={none} />,
  timing: <Late part={timingScreen} shape="screen" given={none} />,
  chair: <Late part={chairScreen} shape="screen" given={none} />,
  sheets: <Late part={sheetsScreen} shape="screen" given={{ Note: NextTime, Lesson: LessonText }} />,
}

function LessonText(given: { plan: Plan; words: Words }) {
  return <Late part={lessonText} shape="line" given={given} />
}

function NextTime(given: { plan: Plan }) {
  return <Late part={nextTime} shape="line" given={given} />
}

function HairlineOverlay(given: { pane: OverlaidPane }) {
  return <Late part={hairlineOverlay} shape="line" given={given} waiting={null} />
}

function StackOverlay(given: { pane: OverlaidPane }) {
  return <Late part={stackOverlay} shape="line" given={given} waiting={null} />
}

function PlacementScreen() {
  const shapesHairline = useSession(({ tool }) => tool === "hairline")
  const stacks = useStore(stackStore, ({ stack }) => stack !== null)
  return (
    <main className="placement">
      <Part>
        <Title />
      </Part>
      <Part fallback={<aside className="rail" aria-busy="true" />}>
        <ToolRail />
      </Part>
      <HeadMap Overlay={stacks ? StackOverlay : shapesHairline ? HairlineOverlay : null} />
      <Part>
        <MapFooter />
      </Part>
      <Late part={foilPanel} shape="aside" given={none} />
    </main>
  )
}

const Title = () => <h1 className="unseen">{useWords().plans.bar.screens.placement}</h1>
