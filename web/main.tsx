import "./styles/base.css"
import "./styles/controls.css"
import "./styles/bar.css"
import "./styles/placement.css"
import "./styles/foils.css"
import "./styles/screens.css"
import { createRoot } from "react-dom/client"
import { App } from "./App"

const root = document.getElementById("root")
if (!root) throw new Error("index.html has no element with id root")
createRoot(root).render(<App />)

// The shelf is fetched beside the first drawing of the head, not before it; then a technique that came as a link.
void import("./startUp")
  .then(({ startUp }) => startUp())
  .then(() => import("./panels/placement/techniques/listenToLinks"))
  .then(({ listenToLinks }) => listenToLinks())
