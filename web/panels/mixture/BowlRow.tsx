import { isFoil } from "../../../geometry/section/section"
import type { Mix, Plan } from "../../plan/schema"
import { additiveWords } from "../../service/additiveWords"
import type { Bowl } from "../../service/bowls"
import { numberText } from "../../service/numberText"
import { pourDeveloper } from "../../service/pourDeveloper"
import { pouredWords } from "../../service/pouredWords"

type Props = { bowl: Bowl; number: number; mix: Mix; plan: Plan }

/** One bowl: when, for whom, and what is weighed, the powder first. */
export function BowlRow({ bowl, number, mix, plan }: Props) {
  const served = plan.sections.filter(isFoil).filter(({ id }) => bowl.sections.includes(id))
  const bottles = plan.salon?.bottles ?? []
  const poured = pouredWords(mix.developerVolume, bottles, bowl.developerG)
  const blended = pourDeveloper(mix.developerVolume, bottles, bowl.developerG)
  const isOutOfReach = blended !== null && "problems" in blended
  return (
    <li>
      <p>
        <b>Bowl {number}</b>, mix at minute {numberText(bowl.atMin, 0)}, for{" "}
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
      {poured && <p className={isOutOfReach ? "fault" : ""}>{poured}</p>}
      {additiveWords(bowl).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </li>
  )
}
