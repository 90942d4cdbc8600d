import { type ComponentType, type Ref, Suspense, useEffect, useRef } from "react"
import { flushSync } from "react-dom"
import { type ViewName, viewNames } from "../../geometry/surface/views"
import { foilKinds } from "../core/kinds/kindRecords"
import { foilsFacing } from "../drawing/foilsFacing"
import type { OverlaidPane } from "../drawing/paneOverlay"
import { sessionStore } from "../session/sessionStore"
import { usePlan, useSession } from "../session/usePlan"
import { useWords } from "../session/words"
import { turnBy } from "./hand/turn"
import { onceHere } from "./onceHere"
import { ViewPane } from "./ViewPane"

/**
 * The head from all sides: one view large, the others beside it; each can be drawn on, each can be made the large one.
 * The head is drawn before any word is here; each name comes to its place by itself.
 */
export function HeadMap({ Overlay }: { Overlay: ComponentType<{ pane: OverlaidPane }> | null }) {
  const enlarged = useSession((session) => session.enlarged) ?? "front"
  const title = useRef<HTMLHeadingElement>(null)
  // The button goes with its small view: the focus goes on to the view it made large.
  const enlarge = (name: ViewName) => {
    flushSync(() => sessionStore.setState({ enlarged: name }))
    title.current?.focus()
  }
  useEffect(() => onceHere(import("./hand/keyboard"), ({ listenToKeys }) => listenToKeys(window)), [])
  return (
    <section className="map" aria-labelledby="map-title">
      <div className="pane large">
        <Suspense>
          <LargeWords name={enlarged} title={title} />
        </Suspense>
        <ViewPane key={enlarged} name={enlarged} enlarged Overlay={Overlay} />
      </div>
      <div className="strip">
        {viewNames
          .filter((name) => name !== enlarged)
          .map((name) => (
            <div className="pane" key={name}>
              <Suspense>
                <EnlargeButton name={name} onEnlarge={enlarge} />
              </Suspense>
              <ViewPane name={name} enlarged={false} Overlay={Overlay} />
            </div>
          ))}
      </div>
    </section>
  )
}

/** What is written on the large view: its name, its edges or how to turn it, and what to do while nothing is drawn. */
function LargeWords({ name, title }: { name: ViewName; title: Ref<HTMLHeadingElement> }) {
  const w = useWords().placement.map
  return (
    <>
      <h2 id="map-title" ref={title} className="pane-name" tabIndex={-1}>
        {w.views[name]}
      </h2>
      <Summary name={name} />
      <FirstStroke />
      {name === "turned" ? <TurnButtons /> : <EdgeWords edges={w.edges[name]} />}
    </>
  )
}

/** The view in words, for whoever does not see it. */
function Summary({ name }: { name: ViewName }) {
  const plan = usePlan((open) => open)
  return <p className="unseen">{useWords().placement.map.summary(foilsFacing(plan, name))}</p>
}

type EnlargeProps = { name: ViewName; onEnlarge: (name: ViewName) => void }

function EnlargeButton({ name, onEnlarge }: EnlargeProps) {
  const w = useWords().placement.map
  return (
    <button
      type="button"
      className="button pane-name"
      aria-label={w.enlarge(name)}
      onClick={() => onEnlarge(name)}
    >
      {w.views[name]}
    </button>
  )
}

/** Goes with the first foil, and comes only where a drag along the hairline would make one. */
function FirstStroke() {
  const isEmpty = usePlan(({ sections }) => sections.length === 0)
  const draws = useSession(({ tool, way }) => foilKinds.some((kind) => kind === tool) && way === "hairline")
  const w = useWords().placement.map
  return isEmpty && draws ? <p className="first-stroke">{w.firstStroke}</p> : null
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
