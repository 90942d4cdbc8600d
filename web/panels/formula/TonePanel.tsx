import { dragDownMm } from "../../../presets/formula/tones"
import { tonerBowlWords } from "../../core/bowls/tonerBowlWords"
import { type TonerInPlan, tonersOfPlan } from "../../core/bowls/toners"
import { tonerIds } from "../../core/cautions/rules/rule"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import { newConsultation } from "../../core/document/consultation"
import { setConsultation } from "../../core/edits/plan/setConsultation"
import { type ToneZone, tonerWords } from "../../core/tone/tone"
import { commit } from "../../session/commit"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { TonerFields } from "./TonerFields"
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

/** What to tone with after rinsing, a mix a zone: the pigment that shows, the tone across from it, and its bowl. */
export function TonePanel() {
  const plan = usePlan((open) => open)
  const { liftToLevel, rootMeltMm } = plan.consultation ?? newConsultation()
  const { stops } = checkPlan(plan, nowHere())
  const isHeld = Object.values(tonerIds).some((id) => stops.some(({ mixes }) => mixes?.includes(id)))
  return (
    <section aria-labelledby="tone-title">
      <h2 id="tone-title">Tone, after rinsing</h2>
      <Choices
        legend="Root melt"
        options={melts}
        value={String(rootMeltMm ?? 0)}
        onChange={(mm) =>
          commit("Change the root melt", setConsultation({ rootMeltMm: Number(mm) > 0 ? Number(mm) : null }))
        }
      />
      <TonerFields which="toner" legend="Toner" kinds={["oxidative-toner", "direct-toner"]} />
      {rootMeltMm !== null && (
        <TonerFields which="rootShade" legend="Root shade" kinds={["root-shade", "oxidative-toner"]} />
      )}
      {isHeld && <p className="fault">Held: do not mix it. A stop above has to be answered first.</p>}
      <div className="tone">
        <ul className="cautions">
          {tonersOfPlan(plan).map((toner) => (
            <ToneLine key={toner.tone.zone} toner={toner} />
          ))}
        </ul>
        {liftToLevel !== null && <ToneWheel level={liftToLevel} />}
      </div>
      <p className="aside">
        The wheel is a picture of the words, not a measured colour. A toner with developer is an oxidative
        colour too: its alert test and its maker’s directions come first.
      </p>
    </section>
  )
}

function ToneLine({ toner }: { toner: TonerInPlan }) {
  const { zone, words, minutes } = toner.tone
  const bowl = tonerBowlWords(toner)
  return (
    <li>
      <b>{zoneWords[zone]}.</b> {words} {tonerWords(toner.tone)} Look from minute {minutes.low}, off by{" "}
      {minutes.high}. {bowl && <b>{bowl}</b>}
    </li>
  )
}
