import { tradePairs } from "../../../presets/formula/developers"
import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import { limits } from "../../core/document/limits"
import type { Mix } from "../../core/document/schema"
import { removeMix, setMix } from "../../core/edits/plan/setMix"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { AdditiveChoices } from "./AdditiveChoices"
import { DeveloperAdvice } from "./DeveloperAdvice"
import { MixFigures } from "./MixFigures"
import { MixFoils } from "./MixFoils"
import { MixSwatch } from "./MixSwatch"
import { ProductField } from "./ProductField"
import { RatioAdvice } from "./RatioAdvice"

const developers = tradePairs.map(({ volume, percent }) => ({
  value: String(volume),
  label: `${volume} vol, ${percent} %`,
}))
const ratios = [1, 1.5, 2, 2.5, 3].map((parts) => ({ value: String(parts), label: `1 : ${parts}` }))

/** One mix: what goes into it, and how much of it the foils want. */
export function MixFields({ mix, isOnly }: { mix: Mix; isOnly: boolean }) {
  const title = `mix-${mix.id}`
  const plan = usePlan((open) => open)
  const proposed = mixesOfPlan(plan).find((each) => each.mix === mix)?.proposed ?? null
  const change = (label: string, part: Partial<Mix>) =>
    commit(`${label} of mix ${mix.id}`, setMix({ ...mix, ...part }))
  const mixWith = (developer: number) => change("Change the ratio", { ratio: { lightener: 1, developer } })
  const parts = mix.ratio.developer / mix.ratio.lightener
  const pour = (developerVolume: number) => change("Change the developer", { developerVolume })
  return (
    <section className="mix" aria-labelledby={title}>
      <header>
        <h2 id={title}>
          Mix {mix.id} <MixSwatch index={plan.mixes.indexOf(mix)} />
        </h2>
        {!isOnly && (
          <button
            type="button"
            className="button quiet"
            onClick={() => commit(`Take out mix ${mix.id}`, removeMix(mix.id))}
          >
            Take out mix {mix.id}
          </button>
        )}
      </header>
      <div className="columns">
        <div className="column">
          <ProductField
            product={mix.product}
            onCommit={(product) => change("Change the product", { product })}
          />
          <div className="word-or-number">
            <Choices
              legend="Developer"
              options={developers}
              value={String(mix.developerVolume)}
              onChange={(volume) => pour(Number(volume))}
            />
            <NumberField
              name="Developer"
              unit="vol"
              value={mix.developerVolume}
              range={limits.developerVolume}
              onCommit={pour}
            />
          </div>
          <DeveloperAdvice proposed={proposed} volume={mix.developerVolume} onUse={pour} />
          <div className="word-or-number">
            <Choices
              legend="Lightener to developer, by weight"
              options={ratios}
              value={String(parts)}
              onChange={(parts) => mixWith(Number(parts))}
            />
            <NumberField
              name="Developer to 1 part of lightener"
              unit="parts"
              value={parts}
              range={limits.ratioPart}
              step={0.25}
              onCommit={mixWith}
            />
          </div>
          <RatioAdvice mix={mix} parts={parts} onUse={mixWith} />
          <AdditiveChoices mix={mix} />
          <MixFoils mix={mix} />
        </div>
        <MixFigures mix={mix} />
      </div>
    </section>
  )
}
