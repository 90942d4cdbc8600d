import "./styles/base.css"
import "./styles/controls.css"
import "./styles/bar.css"
import "./styles/placement.css"
import "./styles/foils.css"
import "./styles/screens.css"
import { createRoot } from "react-dom/client"
import { App } from "./App"
import { PartBoundary } from "./panels/parts/PartBoundary"
import { askBeforeLeaving } from "./session/leaving"
import { saveStatus } from "./session/saveStatus"
import { followAddress } from "./session/screenAddress"

const root = document.getElementById("root")
if (!root) throw new Error("index.html has no element with id root")
createRoot(root).render(
  <PartBoundary shape="page" onRetry={() => {}}>
    <App />
  </PartBoundary>,
)
askBeforeLeaving()
followAddress(window)

// The shelf is fetched beside the first drawing of the head, not before it; then a technique that came as a link.
void import("./startUp")
  .then(({ startUp }) => startUp())
  .catch(() => saveStatus.setState({ state: "not-saved", why: { code: "keeper-missing" } }, true))
  .then(() => import("./panels/placement/techniques/listenToLinks"))
  .then(({ listenToLinks }) => listenToLinks())
  // The hands have come by then, or never will.
  .then(() => import("./canvas/hand/paneGestures"))
  .then(() => import("./afterHands"))
  .then(({ afterHands }) => afterHands())
  // What did not come says so in its own place.
  .catch(() => {})
