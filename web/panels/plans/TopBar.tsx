import { useEffect, useState } from "react"
import { redoAloud, undoAloud } from "../../session/commit"
import { type ScreenName, sessionStore } from "../../session/sessionStore"
import { usePlan, useRedoLabel, useSession, useUndoLabel } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { Late } from "../parts/Late"
import { latePart } from "../parts/latePart"
import { listenToUndoKeys } from "./undoKeys"

const keptStatus = latePart(async () => (await import("./KeptStatus")).KeptStatus)
const clearancePill = latePart(async () => (await import("../clearance/ClearancePill")).ClearancePill)
const exampleStrip = latePart(async () => (await import("./ExampleStrip")).ExampleStrip)
const plansDialog = latePart(async () => (await import("./PlansDialog")).PlansDialog)
const none = {}

const screens = ["client", "placement", "formula", "timing", "sheets"] as const satisfies ScreenName[]

/** Which plan, which part of the service, one step back or forward. */
export function TopBar() {
  const w = useWords().plans
  const name = usePlan((plan) => plan.name).trim() || w.untitled
  const [choosing, setChoosing] = useState(false)
  const screen = useSession((session) => session.screen)
  const id = usePlan((plan) => plan.id)
  const isExample = useSession(({ exampleId }) => exampleId === id)
  const title = screen === "chair" ? name : w.bar.pageTitle(w.bar.screens[screen], name)
  useEffect(() => {
    document.title = title
  }, [title])
  return (
    <header className="bar">
      <button type="button" className="button skip" onClick={toScreen}>
        {w.bar.skip}
      </button>
      <span className="wordmark">
        Part<b>line</b>
      </span>
      <button
        type="button"
        className="button quiet plan-name"
        aria-label={w.bar.named(name)}
        onClick={() => setChoosing(true)}
      >
        <span>{name}</span>
        <span className="aside">{w.bar.plans}</span>
      </button>
      <Late part={clearancePill} shape="line" given={none} />
      <ScreenNav />
      <UndoSteps />
      <Late part={keptStatus} shape="line" given={none} />
      {isExample && <Late part={exampleStrip} shape="line" given={none} waiting={null} />}
      {choosing && <Late part={plansDialog} shape="line" given={{ onClose: () => setChoosing(false) }} />}
    </header>
  )
}

/** Past the bar, for whoever walks by keys. */
function toScreen() {
  const screen = document.querySelector("main")
  screen?.setAttribute("tabindex", "-1")
  screen?.focus()
}

function ScreenNav() {
  const w = useWords().plans.bar
  const current = useSession((session) => session.screen)
  return (
    <nav aria-label={w.visit}>
      <ol>
        {screens.map((name) => (
          <li key={name}>
            <button
              type="button"
              aria-current={name === current ? "page" : undefined}
              onClick={() => sessionStore.setState({ screen: name })}
            >
              {w.screens[name]}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  )
}

function UndoSteps() {
  const w = useWords().plans.bar
  useEffect(() => listenToUndoKeys(window), [])
  return (
    <div className="steps">
      <Step name={w.undo} arrow="↶" says={w.undoWhat} label={useUndoLabel()} onStep={undoAloud} />
      <Step name={w.redo} arrow="↷" says={w.redoWhat} label={useRedoLabel()} onStep={redoAloud} />
    </div>
  )
}

type StepProps = {
  name: string
  arrow: string
  says: (what: string) => string
  label: string | null
  onStep: () => void
}

function Step({ name, arrow, says, label, onStep }: StepProps) {
  return (
    <button
      type="button"
      className="button"
      disabled={!label}
      onClick={onStep}
      title={label ?? ""}
      aria-label={label ? says(label) : name}
    >
      <span className="arrow" aria-hidden="true">
        {arrow}
      </span>{" "}
      <span className="word">{name}</span>
    </button>
  )
}
