import { useEffect, useRef, useState } from "react"
import { type Emergency, emergencies } from "../../../presets/chair/emergencies"
import { clockText } from "../../core/chair/callWords"
import type { Plan } from "../../core/document/schema"
import { useService } from "../../session/chair/useChair"
import { logAlarm } from "./chairActions"

/** One red button: what is wrong, the steps for it, and a log of the time of each. The clocks of the foils go on. */
export function RedButton({ plan, onBack }: { plan: Plan; onBack: () => void }) {
  const [chosen, choose] = useState<Emergency | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each page of steps begins at its heading
  useEffect(() => heading.current?.focus(), [chosen])
  const start = (emergency: Emergency) => {
    void logAlarm(emergency.what)
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
      <TimeLog plan={plan} />
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
                void logAlarm(`${what}: ${step}`)
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

/** When each was tapped: by the service's clock and the wall's while one goes on, by the wall's alone otherwise. */
function TimeLog({ plan: { alarms = [] } }: { plan: Plan }) {
  const lines =
    useService(({ log }) =>
      log.flatMap(({ tap: { kind, ...rest }, atMs, wallMs }) =>
        kind === "alarm" && "what" in rest
          ? [`${wallTime(wallMs)} (minute ${clockText(atMs)}): ${rest.what}`]
          : [],
      ),
    ) ?? []
  const outside = alarms.map(
    ({ wallAt, what }) => `${wallDay(wallAt)}, ${wallTime(Date.parse(wallAt))}: ${what}`,
  )
  const all = [...outside, ...lines]
  if (all.length === 0) return null
  return (
    <section aria-label="Time log">
      <h2>Time log</h2>
      <ol className="time-log">
        {all.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </section>
  )
}

const wallTime = (wallMs: number) => new Date(wallMs).toLocaleTimeString("en-GB")
const wallDay = (wallAt: string) =>
  new Intl.DateTimeFormat("en-GB", { dateStyle: "medium" }).format(new Date(wallAt))
