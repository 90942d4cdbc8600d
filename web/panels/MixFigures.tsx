import { isFoil } from "../../geometry/section/section"
import { countText, gramsRange, gramsText } from "../plan/figureText"
import type { Mix, Plan } from "../plan/schema"
import { usePlan } from "../plan/usePlan"
import type { Bowl } from "../service/bowls"
import { mixesOfPlan } from "../service/mixesOfPlan"
import { labelPercent, onHeadPercent } from "../service/strength"

/** How much of a mix the foils want, and the bowls to weigh for it, each with its minute. */
export function MixFigures({ mix }: { mix: Mix }) {
  const plan = usePlan((open) => open)
  const planned = mixesOfPlan(plan).find((each) => each.mix === mix)
  if (!planned?.made)
    return (
      <div className="mix-figures">
        <p>No foil uses mix {mix.id} yet. Draw foils, or give one this mix, to see its grams.</p>
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
      <p>
        {countText(planned.users, "foil")} {planned.users === 1 ? "uses" : "use"} mix {mix.id}:{" "}
        {gramsRange(wantedG)} to place, planned at the upper figure.
      </p>
      <ol className="bowls">
        {bowls.map((bowl, index) => (
          <BowlRow key={bowl.sections[0]} bowl={bowl} number={index + 1} plan={plan} />
        ))}
      </ol>
      <p className="aside">
        {gramsText(mixedG)} mixed; {gramsRange(wasteG)} of it stays in bowl and brush or is left over.
        {cost !== null && ` Cost ${cost.toFixed(2)}.`} {strengthInWords(mix)}
      </p>
      {notes.map((note) => (
        <p className="aside" key={note}>
          {note}
        </p>
      ))}
    </div>
  )
}

function BowlRow({ bowl, number, plan }: { bowl: Bowl; number: number; plan: Plan }) {
  const served = plan.sections.filter(isFoil).filter(({ id }) => bowl.sections.includes(id))
  return (
    <li>
      <p>
        <b>Bowl {number}</b>, mix at minute {Math.round(bowl.atMin)}, for{" "}
        {served.length === 1 ? "foil" : "foils"} {served.map(({ mapNumber }) => mapNumber).join(", ")}
      </p>
      <dl className="large-figures">
        <div>
          <dt>Lightener</dt>
          <dd>{bowl.lightenerG} g</dd>
        </div>
        <div>
          <dt>Developer</dt>
          <dd>{bowl.developerG} g</dd>
        </div>
        <div>
          <dt>or poured</dt>
          <dd className="sum">{bowl.developerMl} mL</dd>
        </div>
      </dl>
      {bowl.additives.map(({ name, grams }) => (
        <p className="aside" key={name}>
          If used: {grams} g {name}
        </p>
      ))}
    </li>
  )
}

function strengthInWords({ developerVolume, ratio }: Mix) {
  const percent = labelPercent(developerVolume)
  return `${tenth(percent)} % developer comes to ${tenth(onHeadPercent(percent, ratio))} % in the bowl.`
}

const tenth = (value: number) => String(Math.round(value * 10) / 10)
