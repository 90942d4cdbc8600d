import type { Piece } from "../../core/kinds/kindRecord"
import type { Step } from "../../core/schedule/scheduleFinish"
import type { Schedule } from "../../core/schedule/timing"
import { useWords } from "../../session/words"
import type { TimingWords } from "../../words/en/timing/timing"

/** What follows the last foil, to the end of the visit; the toners of several zones are rinsed together. */
export function AfterFoils({ schedule: { steps }, piece }: { schedule: Schedule; piece: Piece }) {
  const w = useWords().timing.after
  return (
    <section aria-labelledby="after-title">
      <h2 id="after-title">{w.title(piece)}</h2>
      <ol className="after-foils">
        {steps.map((step) => {
          const what = stepWords(step, w)
          return <li key={what}>{w.line({ what, from: step.fromMin, to: step.toMin })}</li>
        })}
      </ol>
    </section>
  )
}

const stepWords = (step: Step, w: TimingWords["after"]) =>
  step.kind === "toner" ? w.toners[step.zone] : w[step.kind]
