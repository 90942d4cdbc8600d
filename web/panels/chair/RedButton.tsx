import { useEffect, useRef, useState } from "react"
import { type EmergencyName, emergencies } from "../../../presets/chair/emergencies"
import { foilNumbers } from "../../core/chair/alarmsOfPlan"
import { contactOf } from "../../core/document/salon"
import type { Plan } from "../../core/document/schema"
import { pieceOf } from "../../core/kinds/kindRecords"
import { useService } from "../../session/chair/useChair"
import { useSalon } from "../../session/salon/useSalon"
import { useWords } from "../../session/words"
import { AlarmTimes } from "./AlarmTimes"
import { Initials, Said } from "./ChairBar"
import { logAlarm } from "./chairActions"

type Props = {
  plan: Plan
  /** What was tapped already, and the foils it is about: its steps open at once. */
  about: { what: EmergencyName; foils: readonly string[] } | null
  onBack: () => void
  /** Holds back a second tap on the spot of the first. */
  guard: React.MouseEventHandler
}

/** One red button: what is wrong, the steps for it, and a log of the time of each. The clocks of the foils go on. */
export function RedButton({ plan, about, onBack, guard }: Props) {
  const [chosen, choose] = useState<EmergencyName | null>(about?.what ?? null)
  const heading = useRef<HTMLHeadingElement>(null)
  const w = useWords().chair.emergencies
  const foils = useService((chair) => (about ? foilNumbers(about, chair.foils) : [])) ?? []
  const piece =
    useService((chair) => pieceOf(chair.foils.filter(({ id }) => about?.foils.includes(id)))) ?? "foil"
  // biome-ignore lint/correctness/useExhaustiveDependencies: each page of steps begins at its heading
  useEffect(() => heading.current?.focus(), [chosen])
  const start = (what: EmergencyName) => {
    void logAlarm({ what })
    choose(what)
  }
  return (
    <main className="chair alarm" onClickCapture={guard}>
      <header className="chair-bar">
        <button type="button" className="touch" onClick={chosen ? () => choose(null) : onBack}>
          {chosen ? w.somethingElse : w.backToClock}
        </button>
        {chosen && (
          <button type="button" className="touch" onClick={onBack}>
            {w.backToClock}
          </button>
        )}
        <Initials />
      </header>
      <Said />
      <h1 ref={heading} tabIndex={-1}>
        {chosen ? w.names[chosen] : w.whatIsWrong}
      </h1>
      <Numbers plan={plan} />
      {foils.length > 0 && <p className="large">{w.about(foils, piece)}</p>}
      {chosen ? <Steps what={chosen} foils={about?.foils ?? []} /> : <Kinds onChoose={start} />}
      <AlarmTimes plan={plan} />
    </main>
  )
}

/** The local emergency number, and for whoever calls the salon’s name and its own phone. */
function Numbers({ plan }: { plan: Plan }) {
  const w = useWords().chair.emergencies
  const { salon } = useSalon()
  const { name, phone, emergency } = contactOf(plan, salon.contact)
  return (
    <div className="large">
      <p>
        <strong>{emergency ? w.number(emergency) : w.numberUnknown}</strong>
      </p>
      {(name || phone) && <p>{w.salon(name, phone)}</p>}
    </div>
  )
}

function Kinds({ onChoose }: { onChoose: (what: EmergencyName) => void }) {
  const { names } = useWords().chair.emergencies
  return (
    <ul className="alarm-kinds">
      {emergencies.map(({ name }) => (
        <li key={name}>
          <button type="button" className="touch red" onClick={() => onChoose(name)}>
            {names[name]}
          </button>
        </li>
      ))}
    </ul>
  )
}

function Steps({ what, foils }: { what: EmergencyName; foils: readonly string[] }) {
  const [done, setDone] = useState<readonly string[]>([])
  const w = useWords().chair.emergencies
  const steps = Object.entries(w.steps[what])
  return (
    <>
      <p className="large">{w.first}</p>
      <ol className="alarm-steps">
        {steps.map(([step, words]) => (
          <li key={step}>
            <p className="large">{words}</p>
            <button
              type="button"
              className="touch"
              disabled={done.includes(step)}
              aria-label={w.stepDone(words)}
              onClick={() => {
                void logAlarm({ what, step, ...(foils.length > 0 && { foils }) })
                setDone([...done, step])
              }}
            >
              {w.done}
            </button>
          </li>
        ))}
      </ol>
    </>
  )
}
