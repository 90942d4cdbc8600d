import { isFoil } from "../../../geometry/section/section"
import type { Mix, Plan } from "../../core/document/schema"
import { additiveWords } from "../../core/mixing/additiveWords"
import type { Bowl } from "../../core/mixing/bowls"
import { pourDeveloper } from "../../core/mixing/pourDeveloper"
import { pouredWords } from "../../core/mixing/pouredWords"
import { numberText } from "../../core/text/numberText"

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
