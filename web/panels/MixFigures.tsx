import { isFoil } from "../../geometry/section/section"
import { countText, gramsText } from "../plan/figureText"
import { measured } from "../plan/measured"
import { mixGrams } from "../plan/mixGrams"
import type { Mix } from "../plan/schema"
import { usePlan } from "../plan/usePlan"
import { labelPercent, onHeadPercent } from "../service/strength"

/** How much of a mix the foils want, and what to weigh for it. */
export function MixFigures({ mix }: { mix: Mix }) {
  const wanted = usePlan((plan) => measured(plan).byMix.get(mix.id)?.productG)
  const users = usePlan(
    (plan) => plan.sections.filter((section) => isFoil(section) && section.mix === mix.id).length,
  )
  if (!wanted || users === 0)
    return (
      <p className="mix-figures">
        No foil uses mix {mix.id} yet. Draw foils, or give one this mix, to see its grams.
      </p>
    )
  const { lightenerG, developerG } = mixGrams(wanted.high, mix.ratio)
  return (
    <div className="mix-figures">
      <p>
        {countText(users, "foil")} {users === 1 ? "uses" : "use"} mix {mix.id}.
      </p>
      <dl className="large-figures">
        <div>
          <dt>Lightener</dt>
          <dd>{lightenerG} g</dd>
        </div>
        <div>
          <dt>Developer</dt>
          <dd>{developerG} g</dd>
        </div>
        <div>
          <dt>In all</dt>
          <dd className="sum">{lightenerG + developerG} g</dd>
        </div>
      </dl>
      <dl className="wanted">
        <div>
          <dt>Wanted, low</dt>
          <dd>{gramsText(wanted.low)}</dd>
        </div>
        <div>
          <dt>middle</dt>
          <dd>{gramsText(wanted.mid)}</dd>
        </div>
        <div>
          <dt>upper, planned</dt>
          <dd>{gramsText(wanted.high)}</dd>
        </div>
      </dl>
      <p className="aside">
        {strengthInWords(mix)} Weighed powder first, up to the next gram; what stays in bowl and brush is not
        in it.
      </p>
    </div>
  )
}

function strengthInWords({ developerVolume, ratio }: Mix) {
  const percent = labelPercent(developerVolume)
  return `${tenth(percent)} % developer comes to ${tenth(onHeadPercent(percent, ratio))} % in the bowl.`
}

const tenth = (value: number) => String(Math.round(value * 10) / 10)
