import { dragDownMm } from "../../../presets/tones"
import { act } from "../../plan/act"
import { newConsultation } from "../../plan/consultation"
import { setConsultation } from "../../plan/edits/setConsultation"
import { usePlan } from "../../plan/usePlan"
import type { ToneZone } from "../../service/tone"
import { tonesOfPlan } from "../../service/tonesOfPlan"
import { Choices } from "../Choices"
import { ToneWheel } from "./ToneWheel"

const zoneWords: Record<ToneZone["zone"], string> = {
  "root-melt": "Root melt",
  mids: "Mid-lengths",
  hairline: "Hairline",
}
const melts = [
  { value: "0", label: "None" },
  ...[dragDownMm.low, dragDownMm.mid, dragDownMm.high].map((mm) => ({
    value: String(mm),
    label: `Drawn down ${mm} mm`,
  })),
]

/** What to tone with after rinsing, a mix a zone: the pigment that shows and the tone across from it. */
export function TonePanel() {
  const consultation = usePlan((plan) => plan.consultation)
  const { liftToLevel, rootMeltMm } = consultation ?? newConsultation()
  return (
    <section aria-labelledby="tone-title">
      <h2 id="tone-title">Tone, after rinsing</h2>
      <Choices
        legend="Root melt"
        options={melts}
        value={String(rootMeltMm ?? 0)}
        onChange={(mm) =>
          act("Change the root melt", setConsultation({ rootMeltMm: Number(mm) > 0 ? Number(mm) : null }))
        }
      />
      <div className="tone">
        <ul className="cautions">
          {tonesOfPlan({ consultation }).map(({ zone, words, strength, minutes }) => (
            <li key={zone}>
              <b>{zoneWords[zone]}.</b> {words} {strength[0].toUpperCase() + strength.slice(1)}; look from
              minute {minutes.low}, off by {minutes.high}.
            </li>
          ))}
        </ul>
        {liftToLevel !== null && <ToneWheel level={liftToLevel} />}
      </div>
      <p className="aside">
        The wheel is a picture of the words, not a measured colour. A toner is an oxidative colour too: its
        alert test and its maker’s directions come first.
      </p>
    </section>
  )
}
