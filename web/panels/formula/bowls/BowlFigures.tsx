import { isFoil } from "../../../../geometry/section/section"
import type { Mix, Plan } from "../../../core/document/schema"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { additivesOf } from "../../../core/mixing/additives"
import type { Bowl } from "../../../core/mixing/bowls"
import { pouringOf } from "../../../core/mixing/pouring"
import { labelPercent } from "../../../core/mixing/strength"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { MixSwatch } from "../swatch/MixSwatch"

type Props = { bowl: Bowl; mix: Mix; plan: Plan; isHeld: boolean }

/** One bowl at arm's length: letter and hatch, what is weighed, the powder first, how strong, when and for whom. */
export function BowlFigures({ bowl, mix, plan, isHeld }: Props) {
  const { cautions, formula } = useWords()
  const w = formula.mixing
  const served = plan.sections.filter(isFoil).filter(({ id }) => bowl.sections.includes(id))
  const poured = pouringOf(mix.developerVolume, plan.salon?.bottles ?? [], bowl.developerG)
  return (
    <li className="bowl">
      <header>
        <b className="letter">{mix.id}</b>
        <MixSwatch index={plan.mixes.indexOf(mix)} />
        <span className="minute">{w.bowl.when(bowl.atMin)}</span>
      </header>
      {isHeld && <p className="fault">{cautions.panel.doNotMix}</p>}
      <dl className="large-figures">
        <div>
          <dt>{w.bowl.lightener}</dt>
          <dd>{w.bowl.grams(bowl.lightenerG)}</dd>
        </div>
        <div>
          <dt>{w.bowl.developer}</dt>
          <dd>{w.bowl.grams(bowl.developerG)}</dd>
        </div>
      </dl>
      <p className="strength">
        {w.bowl.strength({
          volume: mix.developerVolume,
          percent: labelPercent(mix.developerVolume),
          parts: mix.ratio.developer / mix.ratio.lightener,
        })}
      </p>
      <p>
        {w.bowl.foils(
          served.map(({ mapNumber }) => mapNumber),
          pieceOf(served),
        )}
      </p>
      <p className="aside">{w.bowl.byVolume(bowl.developerMl)}</p>
      {poured && <p className={poured.code === "not-poured" ? "fault" : "aside"}>{say(w.poured, poured)}</p>}
      {additivesOf(bowl).map((additive) => (
        <p key={additive.name}>{say(w.additives, additive)}</p>
      ))}
    </li>
  )
}
