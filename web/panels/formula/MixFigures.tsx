import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import { holding } from "../../core/cautions/cautions"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import type { Mix } from "../../core/document/schema"
import { labelPercent, onHeadPercent, volumeToPercentWw } from "../../core/mixing/strength"
import { countText, gramsRange, gramsText } from "../../core/text/figureText"
import { numberText } from "../../core/text/numberText"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { BowlRow } from "./BowlRow"

/** How much of a mix the foils want, and the bowls to weigh for it, each with its minute. */
export function MixFigures({ mix }: { mix: Mix }) {
  const plan = usePlan((open) => open)
  const planned = mixesOfPlan(plan).find((each) => each.mix === mix)
  const isHeld = holding(checkPlan(plan, nowHere()).stops, mix.id).length > 0
  if (!planned?.made)
    return (
      <div className="mix-figures">
        {planned?.users === 0 && (
          <p>No foil uses mix {mix.id} yet. Draw foils, or give one this mix, to see its grams.</p>
        )}
        {planned?.problems.map((problem) => (
          <p className="fault" key={problem}>
            {problem}
          </p>
        ))}
      </div>
    )
  const { bowls, wantedG, mixedG, wasteG, cost, notes } = planned.made
  return (
    <div className="mix-figures">
      {isHeld && <p className="fault">Held: do not mix. A stop above has to be answered first.</p>}
      <p>
        {countText(planned.users, "foil")} {planned.users === 1 ? "uses" : "use"} mix {mix.id}:{" "}
        {gramsRange(wantedG)} to place, planned at the upper figure.
      </p>
      <ol className="bowls">
        {bowls.map((bowl, index) => (
          <BowlRow key={bowl.sections[0]} bowl={bowl} number={index + 1} mix={mix} plan={plan} />
        ))}
      </ol>
      <p className="aside">
        {gramsText(mixedG)} mixed; {gramsRange(wasteG)} of it stays in bowl and brush or is left over.
        {cost !== null && ` It costs ${cost.toFixed(2)}.`}
      </p>
      {[strengthInWords(mix), ...notes].map((sentence) => (
        <p className="aside" key={sentence}>
          {sentence}
        </p>
      ))}
    </div>
  )
}

/** The trade's pair, the exact strength beside it, and what is left of it on the head. */
function strengthInWords({ developerVolume, ratio }: Mix) {
  const percent = labelPercent(developerVolume)
  return (
    `${numberText(developerVolume)} vol is sold as ${numberText(percent, 1)} % ` +
    `(exactly ${numberText(volumeToPercentWw(developerVolume))} % by weight); ` +
    `in the bowl it comes to ${numberText(onHeadPercent(percent, ratio), 1)} %.`
  )
}
