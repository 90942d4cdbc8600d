import "./styles/base.css"
import "./styles/controls.css"
import "./styles/bar.css"
import "./styles/placement.css"
import "./styles/foils.css"
import "./panels/screens.css"
import { createRoot } from "react-dom/client"
import { App } from "./App"
import { startUp } from "./startUp"

const root = document.getElementById("root")
if (!root) throw new Error("index.html has no element with id root")
startUp()
createRoot(root).render(<App />)
