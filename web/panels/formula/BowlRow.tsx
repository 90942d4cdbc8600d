import { isFoil } from "../../../geometry/section/section"
import type { Mix, Plan } from "../../core/document/schema"
import { additivesOf } from "../../core/mixing/additives"
import type { Bowl } from "../../core/mixing/bowls"
import { pouringOf } from "../../core/mixing/pouring"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

type Props = { bowl: Bowl; number: number; mix: Mix; plan: Plan }

/** One bowl: when, for whom, and what is weighed, the powder first. */
export function BowlRow({ bowl, number, mix, plan }: Props) {
  const served = plan.sections.filter(isFoil).filter(({ id }) => bowl.sections.includes(id))
  const w = useWords().formula.mixing
  const poured = pouringOf(mix.developerVolume, plan.salon?.bottles ?? [], bowl.developerG)
  return (
    <li>
      <p>
        <b>{w.bowl.name(number)}</b>, {w.bowl.when(bowl.atMin)},{" "}
        {w.bowl.foils(served.map(({ mapNumber }) => mapNumber))}
      </p>
      <dl className="large-figures">
        <div>
          <dt>{w.bowl.lightener}</dt>
          <dd>{w.bowl.grams(bowl.lightenerG)}</dd>
        </div>
        <div>
          <dt>{w.bowl.developer}</dt>
          <dd>{w.bowl.grams(bowl.developerG)}</dd>
        </div>
        <div>
          <dt>{w.bowl.byVolume}</dt>
          <dd className="sum">{w.bowl.millilitres(bowl.developerMl)}</dd>
        </div>
      </dl>
      {poured && <p className={poured.code === "not-poured" ? "fault" : ""}>{say(w.poured, poured)}</p>}
      {additivesOf(bowl).map((additive) => (
        <p key={additive.name}>{say(w.additives, additive)}</p>
      ))}
    </li>
  )
}
