import { type ComponentType, useEffect } from "react"
import { type ViewName, viewNames } from "../../geometry/surface/views"
import type { OverlaidPane } from "../drawing/paneOverlay"
import { sessionStore } from "../session/sessionStore"
import { useSession } from "../session/usePlan"
import { turnBy } from "./hand/turn"
import { onceHere } from "./onceHere"
import { ViewPane } from "./ViewPane"

/** The words for each view, and which of the client's sides its page edges show. */
const views: Record<ViewName, { name: string; edges: readonly [string, string] | null }> = {
  front: { name: "Front", edges: ["Client’s right", "Client’s left"] },
  left: { name: "Client’s left", edges: ["Face", "Back"] },
  right: { name: "Client’s right", edges: ["Back", "Face"] },
  back: { name: "Back", edges: ["Client’s left", "Client’s right"] },
  top: { name: "Top", edges: ["Client’s left", "Client’s right"] },
  turned: { name: "Turntable", edges: null },
  unrolled: { name: "Scalp laid flat", edges: ["Client’s left", "Client’s right"] },
}

/** The head from all sides: one view large, the others beside it; each can be drawn on, each can be made the large one. */
export function HeadMap({ Overlay }: { Overlay: ComponentType<{ pane: OverlaidPane }> | null }) {
  const enlarged = useSession((session) => session.enlarged) ?? "front"
  useEffect(() => onceHere(import("./hand/keyboard"), ({ listenToKeys }) => listenToKeys(window)), [])
  const enlarge = (name: ViewName) => sessionStore.setState({ enlarged: name })
  return (
    <section className="map" aria-label="Head map">
      <div className="pane large">
        <h2 className="pane-name">{views[enlarged].name}</h2>
        <ViewPane key={enlarged} name={enlarged} enlarged Overlay={Overlay} />
        {enlarged === "turned" ? <TurnButtons /> : <EdgeWords edges={views[enlarged].edges} />}
      </div>
      <div className="strip">
        {viewNames
          .filter((name) => name !== enlarged)
          .map((name) => (
            <div className="pane" key={name}>
              <button type="button" className="button pane-name" onClick={() => enlarge(name)}>
                {views[name].name}
                <span className="unseen">: make it the large view</span>
              </button>
              <ViewPane name={name} enlarged={false} Overlay={Overlay} />
            </div>
          ))}
      </div>
    </section>
  )
}

function EdgeWords({ edges }: { edges: readonly [string, string] | null }) {
  return (
    edges && (
      <div className="side-words">
        {edges.map((words) => (
          <span key={words}>{words}</span>
        ))}
      </div>
    )
  )
}

const turnStep = Math.PI / 12

function TurnButtons() {
  return (
    <fieldset className="turn-buttons">
      <legend className="unseen">Turn the head</legend>
      <button type="button" className="button" onClick={() => turnBy(-turnStep, 0)}>
        ← Left
      </button>
      <button type="button" className="button" onClick={() => turnBy(turnStep, 0)}>
        Right →
      </button>
      <button type="button" className="button" onClick={() => turnBy(0, turnStep)}>
        ↑ Higher
      </button>
      <button type="button" className="button" onClick={() => turnBy(0, -turnStep)}>
        ↓ Lower
      </button>
    </fieldset>
  )
}
