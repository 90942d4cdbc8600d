import { lazy, Suspense, useEffect, useState } from "react"
import { redoAloud, undoAloud } from "../../session/commit"
import { type ScreenName, sessionStore } from "../../session/sessionStore"
import { usePlan, useRedoLabel, useSession, useUndoLabel } from "../../session/usePlan"
import { listenToUndoKeys } from "./undoKeys"

const KeptStatus = lazy(async () => ({ default: (await import("./KeptStatus")).KeptStatus }))
const PlansDialog = lazy(async () => ({ default: (await import("./PlansDialog")).PlansDialog }))

const screens: readonly { name: ScreenName; label: string }[] = [
  { name: "client", label: "Client" },
  { name: "placement", label: "Placement" },
  { name: "mixture", label: "Mixture" },
  { name: "timing", label: "Timing" },
  { name: "sheets", label: "Sheets" },
]

/** Which plan, which part of the visit, one step back or forward. */
export function TopBar() {
  const planName = usePlan((plan) => plan.name)
  const [choosing, setChoosing] = useState(false)
  return (
    <header className="bar">
      <span className="wordmark">
        Part<b>line</b>
      </span>
      <button
        type="button"
        className="button quiet plan-name"
        aria-label={`${planName || "Plan without a name"}: Plans…`}
        onClick={() => setChoosing(true)}
      >
        <span>{planName || "Plan without a name"}</span>
        <span className="aside">Plans…</span>
      </button>
      <ScreenNav />
      <UndoSteps />
      <Suspense fallback={<span className="kept" />}>
        <KeptStatus />
      </Suspense>
      <Suspense>{choosing && <PlansDialog onClose={() => setChoosing(false)} />}</Suspense>
    </header>
  )
}

function ScreenNav() {
  const current = useSession((session) => session.screen)
  return (
    <nav aria-label="The visit">
      <ol>
        {screens.map(({ name, label }) => (
          <li key={name}>
            <button
              type="button"
              aria-current={name === current ? "page" : undefined}
              onClick={() => sessionStore.setState({ screen: name })}
            >
              {label}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  )
}

function UndoSteps() {
  useEffect(() => listenToUndoKeys(window), [])
  return (
    <div className="steps">
      <Step name="Undo" arrow="↶" label={useUndoLabel()} onStep={undoAloud} />
      <Step name="Redo" arrow="↷" label={useRedoLabel()} onStep={redoAloud} />
    </div>
  )
}

type StepProps = { name: string; arrow: string; label: string | null; onStep: () => void }

function Step({ name, arrow, label, onStep }: StepProps) {
  return (
    <button
      type="button"
      className="button"
      disabled={!label}
      onClick={onStep}
      title={label ?? ""}
      aria-label={label ? `${name}: ${label}` : name}
    >
      <span className="arrow" aria-hidden="true">
        {arrow}
      </span>{" "}
      {name}
    </button>
  )
}
