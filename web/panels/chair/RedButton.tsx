import { useEffect, useRef, useState } from "react"
import { type Emergency, emergencies } from "../../../presets/emergencies"
import { clockText } from "../../service/dueCalls"
import { tap } from "./chairStore"
import { useService } from "./useChair"

/** One red button: what is wrong, the steps for it, and a log of the time of each. The clocks of the foils go on. */
export function RedButton({ onBack }: { onBack: () => void }) {
  const [chosen, choose] = useState<Emergency | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each page of steps begins at its heading
  useEffect(() => heading.current?.focus(), [chosen])
  const start = (emergency: Emergency) => {
    tap({ kind: "alarm", what: emergency.what })
    choose(emergency)
  }
  return (
    <main className="chair alarm">
      <header className="chair-bar">
        <button type="button" className="touch" onClick={chosen ? () => choose(null) : onBack}>
          {chosen ? "Something else" : "Back to the clock"}
        </button>
        {chosen && (
          <button type="button" className="touch" onClick={onBack}>
            Back to the clock
          </button>
        )}
      </header>
      <h1 ref={heading} tabIndex={-1}>
        {chosen?.what ?? "What is wrong?"}
      </h1>
      {chosen ? <Steps emergency={chosen} /> : <Kinds onChoose={start} />}
      <TimeLog />
    </main>
  )
}

const Kinds = ({ onChoose }: { onChoose: (emergency: Emergency) => void }) => (
  <ul className="alarm-kinds">
    {emergencies.map((emergency) => (
      <li key={emergency.what}>
        <button type="button" className="touch red" onClick={() => onChoose(emergency)}>
          {emergency.what}
        </button>
      </li>
    ))}
  </ul>
)

function Steps({ emergency: { what, steps, source } }: { emergency: Emergency }) {
  const [done, setDone] = useState<readonly string[]>([])
  return (
    <>
      <p className="large">The local emergency number and the maker’s directions come before this list.</p>
      <ol className="alarm-steps">
        {steps.map((step) => (
          <li key={step}>
            <p className="large">{step}</p>
            <button
              type="button"
              className="touch"
              disabled={done.includes(step)}
              aria-label={`Done: ${step}`}
              onClick={() => {
                tap({ kind: "alarm", what: `${what}: ${step}` })
                setDone([...done, step])
              }}
            >
              Done
            </button>
          </li>
        ))}
      </ol>
      <p className="aside">Where this is from: {source}.</p>
    </>
  )
}

/** When each was tapped, by the service’s clock and the wall’s. */
function TimeLog() {
  const lines =
    useService(({ log }) =>
      log.flatMap(({ tap: { kind, ...rest }, atMs, wallMs }) =>
        kind === "alarm" && "what" in rest
          ? [`${new Date(wallMs).toLocaleTimeString("en-GB")} (minute ${clockText(atMs)}): ${rest.what}`]
          : [],
      ),
    ) ?? []
  if (lines.length === 0) return null
  return (
    <section aria-label="Time log">
      <h2>Time log</h2>
      <ol className="time-log">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </section>
  )
}
