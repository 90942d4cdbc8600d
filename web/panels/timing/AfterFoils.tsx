import type { Step } from "../../core/schedule/scheduleFinish"
import type { Schedule } from "../../core/schedule/timing"

/** What follows the last foil, to the end of the visit; the toners of several zones are rinsed together. */
export function AfterFoils({ schedule: { steps } }: { schedule: Schedule }) {
  return (
    <section aria-labelledby="after-title">
      <h2 id="after-title">After the last foil</h2>
      <ol className="after-foils">
        {steps.map((step) => (
          <li key={wordsOf(step)}>
            {wordsOf(step)}: minute {Math.round(step.fromMin)} to {Math.round(step.toMin)}
          </li>
        ))}
      </ol>
    </section>
  )
}

const words = {
  rinse: "Rinse",
  detangle: "Detangle the backcomb, wet, from the ends up",
  dry: "Dry",
} as const
const toneZoneWords = { "root-melt": "Root melt", mids: "Toner, mid-lengths", hairline: "Toner, hairline" }

const wordsOf = (step: Step) => (step.kind === "toner" ? toneZoneWords[step.zone] : words[step.kind])
