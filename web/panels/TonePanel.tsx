import { newConsultation } from "../plan/consultation"
import { usePlan } from "../plan/usePlan"
import { type ToneZone, tonePlan } from "../service/tone"

const zoneWords: Record<ToneZone["zone"], string> = {
  "root-melt": "Root melt",
  mids: "Mid-lengths",
  hairline: "Hairline",
}

/** What to tone with after rinsing, in words: the pigment that shows and the tone across from it. */
export function TonePanel() {
  const { hair, liftToLevel, finish } = usePlan((plan) => plan.consultation) ?? newConsultation()
  const isPorous = hair.hairline?.ends?.porosity === "high" || hair.hairline?.midLengths?.porosity === "high"
  const zones: ToneZone[] = [
    { zone: "root-melt", rootLevel: hair.hairline?.roots?.level ?? null, drawnDownMm: null },
    { zone: "mids", level: liftToLevel, porous: isPorous },
    { zone: "hairline", level: liftToLevel, porous: isPorous },
  ]
  return (
    <section aria-labelledby="tone-title">
      <h2 id="tone-title">Tone, after rinsing</h2>
      <ul className="cautions">
        {tonePlan(zones, finish).map(({ zone, words, strength, minutes }) => (
          <li key={zone}>
            <b>{zoneWords[zone]}.</b> {words} {strength[0].toUpperCase() + strength.slice(1)}; look from
            minute {minutes.low}, off by {minutes.high}.
          </li>
        ))}
      </ul>
      <p className="aside">
        A toner is an oxidative colour too: its alert test and its maker’s directions come first.
      </p>
    </section>
  )
}
