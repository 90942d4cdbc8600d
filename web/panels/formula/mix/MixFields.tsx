import { tradePairs } from "../../../../presets/formula/developers"
import { mixesOfPlan } from "../../../core/bowls/mixesOfPlan"
import type { Mix } from "../../../core/document/schema"
import { removeMix, setMix } from "../../../core/edits/plan/setMix"
import { limits } from "../../../core/fields/limits"
import { labelPercent, onHeadPercent, volumeToPercentWw } from "../../../core/mixing/strength"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { MixSwatch } from "../swatch/MixSwatch"
import { AdditiveChoices } from "./AdditiveChoices"
import { DeveloperAdvice } from "./DeveloperAdvice"
import { MixFoils } from "./MixFoils"
import { ProductField } from "./ProductField"
import { RatioAdvice } from "./RatioAdvice"

const ratios = [1, 1.5, 2, 2.5, 3]

type Changed = "change-developer" | "change-ratio" | "change-product"

/** One mix: what goes into it, and how much of it the foils want. */
export function MixFields({ mix, isOnly }: { mix: Mix; isOnly: boolean }) {
  const { common, formula, placement } = useWords()
  const { mixing: w, productSheets: sheets } = formula
  const { units } = common
  const plan = usePlan((open) => open)
  const planned = mixesOfPlan(plan).find((each) => each.mix === mix)
  const [proposed, foils] = [planned?.proposed ?? null, planned?.foils ?? 0]
  const change = (code: Changed, part: Partial<Mix>) =>
    commit({ chapter: "formula", code, mix: mix.id }, setMix({ ...mix, ...part }))
  const mixWith = (developer: number) => change("change-ratio", { ratio: { lightener: 1, developer } })
  const parts = mix.ratio.developer / mix.ratio.lightener
  const pour = (developerVolume: number) => change("change-developer", { developerVolume })
  const percent = labelPercent(mix.developerVolume)
  const line = w.line({ product: mix.product, volume: mix.developerVolume, percent, parts, foils })
  const onHead = onHeadPercent(percent, mix.ratio)
  const percentWw = volumeToPercentWw(mix.developerVolume)
  return (
    <details className="mix" aria-label={placement.list.mix(mix.id)}>
      <summary>
        <b className="letter">{mix.id}</b>
        <MixSwatch index={plan.mixes.indexOf(mix)} />
        <span>{line}</span>
        <span className="change">{w.change}</span>
      </summary>
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
        <p className="aside">
          {w.strength({ volume: mix.developerVolume, percent, percentWw, onHeadPercent: onHead })}
        </p>
        {!isOnly && (
          <div className="actions">
            <button
              type="button"
              className="button quiet"
              onClick={() =>
                commit({ chapter: "formula", code: "remove-mix", mix: mix.id }, removeMix(mix.id))
              }
            >
              {w.remove(mix.id)}
            </button>
          </div>
        )}
      </div>
    </details>
  )
}
