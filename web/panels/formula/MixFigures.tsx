import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import { holding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import type { Mix } from "../../core/document/schema"
import { labelPercent, onHeadPercent, volumeToPercentWw } from "../../core/mixing/strength"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { BowlRow } from "./BowlRow"

/** How much of a mix the foils want, and the bowls to weigh for it, each with its minute. */
export function MixFigures({ mix }: { mix: Mix }) {
  const { cautions, formula, timing } = useWords()
  const w = formula.mixing
  const plan = usePlan((open) => open)
  const planned = mixesOfPlan(plan).find((each) => each.mix === mix)
  const isHeld = holding(checkPlan(plan, nowHere()).stops, mix.id).length > 0
  if (!planned?.made)
    return (
      <div className="mix-figures">
        {planned?.users === 0 && <p>{w.unused(mix.id)}</p>}
        {[
          ...(planned?.problems ?? []).map((problem) => say(w.problem, problem)),
          ...(planned?.untimed ?? []).map((problem) => say(timing.problems, problem)),
        ].map((sentence) => (
          <p className="fault" key={sentence}>
            {sentence}
          </p>
        ))}
      </div>
    )
  const { bowls, wantedG, mixedG, wasteG, cost, notes } = planned.made
  return (
    <div className="mix-figures">
      {isHeld && <p className="fault">{cautions.panel.doNotMix}</p>}
      <p>{w.wanted({ foils: planned.users, mix: mix.id, wantedG })}</p>
      <ol className="bowls">
        {bowls.map((bowl, index) => (
          <BowlRow key={bowl.sections[0]} bowl={bowl} number={index + 1} mix={mix} plan={plan} />
        ))}
      </ol>
      <p className="aside">
        {w.mixed({ mixedG, wasteG })} {cost !== null && w.cost(cost)}
      </p>
      {[w.strength(strengthOf(mix)), ...notes.map((note) => say(w.note, note))].map((sentence) => (
        <p className="aside" key={sentence}>
          {sentence}
        </p>
      ))}
    </div>
  )
}

/** The trade's pair, the exact strength beside it, and what is left of it on the head. */
function strengthOf({ developerVolume: volume, ratio }: Mix) {
  const percent = labelPercent(volume)
  return {
    volume,
    percent,
    percentWw: volumeToPercentWw(volume),
    onHeadPercent: onHeadPercent(percent, ratio),
  }
}
