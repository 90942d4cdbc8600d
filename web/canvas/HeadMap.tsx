import { type ComponentType, useEffect } from "react"
import { type ViewName, viewNames } from "../../geometry/surface/views"
import type { OverlaidPane } from "../drawing/paneOverlay"
import { sessionStore } from "../session/sessionStore"
import { useSession } from "../session/usePlan"
import { useWords } from "../session/words"
import { turnBy } from "./hand/turn"
import { onceHere } from "./onceHere"
import { ViewPane } from "./ViewPane"

/** The head from all sides: one view large, the others beside it; each can be drawn on, each can be made the large one. */
export function HeadMap({ Overlay }: { Overlay: ComponentType<{ pane: OverlaidPane }> | null }) {
  const w = useWords().placement.map
  const enlarged = useSession((session) => session.enlarged) ?? "front"
  useEffect(() => onceHere(import("./hand/keyboard"), ({ listenToKeys }) => listenToKeys(window)), [])
  const enlarge = (name: ViewName) => sessionStore.setState({ enlarged: name })
  return (
    <section className="map" aria-label={w.title}>
      <div className="pane large">
        <h2 className="pane-name">{w.views[enlarged]}</h2>
        <ViewPane key={enlarged} name={enlarged} enlarged Overlay={Overlay} />
        {enlarged === "turned" ? <TurnButtons /> : <EdgeWords edges={w.edges[enlarged]} />}
      </div>
      <div className="strip">
        {viewNames
          .filter((name) => name !== enlarged)
          .map((name) => (
            <div className="pane" key={name}>
              <button
                type="button"
                className="button pane-name"
                aria-label={w.enlarge(name)}
                onClick={() => enlarge(name)}
              >
                {w.views[name]}
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
  const w = useWords().placement.map
  return (
    <fieldset className="turn-buttons">
      <legend className="unseen">{w.turn}</legend>
      <button type="button" className="button" onClick={() => turnBy(-turnStep, 0)}>
        {w.turns.left}
      </button>
      <button type="button" className="button" onClick={() => turnBy(turnStep, 0)}>
        {w.turns.right}
      </button>
      <button type="button" className="button" onClick={() => turnBy(0, turnStep)}>
        {w.turns.higher}
      </button>
      <button type="button" className="button" onClick={() => turnBy(0, -turnStep)}>
        {w.turns.lower}
      </button>
    </fieldset>
  )
}
