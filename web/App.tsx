import { HeadMap } from "./canvas/HeadMap"
import { ClientScreen } from "./panels/ClientScreen"
import { FoilPanel } from "./panels/FoilPanel"
import { Foot } from "./panels/Foot"
import { LiveRegion } from "./panels/LiveRegion"
import { MixtureScreen } from "./panels/MixtureScreen"
import { ToolRail } from "./panels/ToolRail"
import { TopBar } from "./panels/TopBar"
import type { ScreenName } from "./plan/sessionStore"
import { useSession } from "./plan/usePlan"
import { SheetsScreen } from "./sheets/SheetsScreen"

/** Places the parts of the visit; does nothing else. */
export function App() {
  const screen = useSession((session) => session.screen)
  const leftHanded = useSession((session) => session.leftHanded)
  const Screen = screens[screen]
  return (
    <div className={leftHanded ? "app left-handed" : "app"}>
      <TopBar />
      <Screen />
      <LiveRegion />
    </div>
  )
}

const screens: Record<ScreenName, () => React.JSX.Element> = {
  client: ClientScreen,
  placement: PlacementScreen,
  mixture: MixtureScreen,
  sheets: SheetsScreen,
}

function PlacementScreen() {
  return (
    <main className="placement">
      <h1 className="unseen">Placement</h1>
      <ToolRail />
      <HeadMap />
      <Foot />
      <FoilPanel />
    </main>
  )
}
