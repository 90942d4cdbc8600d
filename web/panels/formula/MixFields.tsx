import { tradePairs } from "../../../presets/formula/developers"
import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import type { Mix } from "../../core/document/schema"
import { removeMix, setMix } from "../../core/edits/plan/setMix"
import { limits } from "../../core/fields/limits"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { Choices } from "../fields/Choices"
import { NumberField } from "../fields/NumberField"
import { AdditiveChoices } from "./AdditiveChoices"
import { DeveloperAdvice } from "./DeveloperAdvice"
import { MixFigures } from "./MixFigures"
import { MixFoils } from "./MixFoils"
import { MixSwatch } from "./MixSwatch"
import { ProductField } from "./ProductField"
import { RatioAdvice } from "./RatioAdvice"

const ratios = [1, 1.5, 2, 2.5, 3]

type Changed = "change-developer" | "change-ratio" | "change-product"

/** One mix: what goes into it, and how much of it the foils want. */
export function MixFields({ mix, isOnly }: { mix: Mix; isOnly: boolean }) {
  const { common, formula } = useWords()
  const { mixing: w, productSheets: sheets } = formula
  const { units } = common
  const title = `mix-${mix.id}`
  const plan = usePlan((open) => open)
  const proposed = mixesOfPlan(plan).find((each) => each.mix === mix)?.proposed ?? null
  const change = (code: Changed, part: Partial<Mix>) =>
    commit({ chapter: "formula", code, mix: mix.id }, setMix({ ...mix, ...part }))
  const mixWith = (developer: number) => change("change-ratio", { ratio: { lightener: 1, developer } })
  const parts = mix.ratio.developer / mix.ratio.lightener
  const pour = (developerVolume: number) => change("change-developer", { developerVolume })
  return (
    <section className="mix" aria-labelledby={title}>
      <header>
        <h2 id={title}>
          {w.name(mix.id)} <MixSwatch index={plan.mixes.indexOf(mix)} />
        </h2>
        {!isOnly && (
          <button
            type="button"
            className="button quiet"
            onClick={() => commit({ chapter: "formula", code: "remove-mix", mix: mix.id }, removeMix(mix.id))}
          >
            {w.remove(mix.id)}
          </button>
        )}
      </header>
      <div className="columns">
        <div className="column">
          <ProductField product={mix.product} onCommit={(product) => change("change-product", { product })} />
          <div className="word-or-number">
            <Choices
              legend={w.developer}
              options={tradePairs.map((pair) => ({ value: String(pair.volume), label: w.vol(pair) }))}
              value={String(mix.developerVolume)}
              onChange={(volume) => pour(Number(volume))}
            />
            <NumberField
              name={w.developer}
              unit={units.vol}
              value={mix.developerVolume}
              range={limits.developerVolume}
              onCommit={pour}
            />
          </div>
          <DeveloperAdvice proposed={proposed} volume={mix.developerVolume} onUse={pour} />
          <div className="word-or-number">
            <Choices
              legend={w.ratio}
              options={ratios.map((each) => ({ value: String(each), label: w.parts(each) }))}
              value={String(parts)}
              onChange={(parts) => mixWith(Number(parts))}
            />
            <NumberField
              name={w.developerParts}
              unit={sheets.parts}
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
