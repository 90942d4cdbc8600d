import { dragDownMm } from "../../../../presets/formula/tones"
import { tonerBowlOf } from "../../../core/bowls/tonerBowl"
import { type TonerInPlan, tonersOfPlan } from "../../../core/bowls/toners"
import { holding } from "../../../core/cautions/cautions"
import { tonerIds } from "../../../core/cautions/rules/rule"
import { newConsultation } from "../../../core/document/consultation"
import { setConsultation } from "../../../core/edits/plan/setConsultation"
import { useClearance } from "../../../session/clearance/useClearance"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Choices } from "../../fields/Choices"
import { TonerFields } from "./TonerFields"
import { ToneWheel } from "./ToneWheel"

const melts = [dragDownMm.low, dragDownMm.mid, dragDownMm.high]

/** What to tone with after rinsing, a mix a zone: the pigment that shows, the tone across from it, and its bowl. */
export function TonePanel() {
  const { cautions, formula } = useWords()
  const w = formula.tone
  const plan = usePlan((open) => open)
  const { liftToLevel, rootMeltMm } = plan.consultation ?? newConsultation()
  const { stops } = useClearance()
  const isHeld = holding(stops, ...Object.values(tonerIds)).length > 0
  const melt = (mm: number) =>
    commit(
      { chapter: "formula", code: "change-root-melt" },
      setConsultation({ rootMeltMm: mm > 0 ? mm : null }),
    )
  return (
    <section aria-labelledby="tone-title">
      <h2 id="tone-title">{w.title}</h2>
      <Choices
        legend={w.rootMelt}
        options={[
          { value: "0", label: w.noMelt },
          ...melts.map((mm) => ({ value: String(mm), label: w.meltedDown(mm) })),
        ]}
        value={String(rootMeltMm ?? 0)}
        onChange={(mm) => melt(Number(mm))}
      />
      <TonerFields which="toner" kinds={["oxidative-toner", "direct-toner"]} />
      {rootMeltMm !== null && <TonerFields which="rootShade" kinds={["root-shade", "oxidative-toner"]} />}
      {isHeld && <p className="fault">{cautions.panel.doNotMix}</p>}
      <div className="tone">
        <ul className="cautions">
          {tonersOfPlan(plan).map((toner) => (
            <ToneLine key={toner.tones[0].zone} toner={toner} />
          ))}
        </ul>
        {liftToLevel !== null && <ToneWheel level={liftToLevel} />}
      </div>
      <p className="aside">{w.picture}</p>
    </section>
  )
}

function ToneLine({ toner }: { toner: TonerInPlan }) {
  const w = useWords().formula.tone
  const bowl = tonerBowlOf(toner)
  return (
    <li>
      {toner.tones.map(({ zone, tone, minutes }) => (
        <p key={zone}>
          <b>{w.zones[zone]}.</b> {say(w.shows, tone)} {w.minutes(minutes)}
        </p>
      ))}
      <p>{w.mix(toner.tones[0])}</p>
      {bowl && (
        <p>
          <b>{say(w.bowl, bowl)}</b>
        </p>
      )}
    </li>
  )
}
