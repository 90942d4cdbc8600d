import type { ProductSheet } from "../../../presets/formula/productSheet"
import { usualChoice } from "../../core/bowls/toners"
import { productSheets } from "../../core/document/salon"
import { newToning, type TonerChoice, type Toning } from "../../core/document/toning"
import { setToning } from "../../core/edits/plan/setToning"
import { labelPercent } from "../../core/mixing/strength"
import { numberText } from "../../core/text/numberText"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { Choices } from "../fields/Choices"

type Props = { which: keyof Toning; legend: string; kinds: readonly ProductSheet["kind"][] }

/** Which product tones, with which developer and how much of it; a touch on what is chosen takes it back. */
export function TonerFields({ which, legend, kinds }: Props) {
  const salon = usePlan((plan) => plan.salon)
  const choice = (usePlan((plan) => plan.toning) ?? newToning())[which]
  const sheets = productSheets({ salon }).filter(({ kind }) => kinds.includes(kind))
  const sheet = sheets.find(({ name }) => name === choice?.product)
  const set = (next: TonerChoice | null) =>
    commit(`Change the ${legend.toLowerCase()}`, setToning({ [which]: next }))
  const choose = (name: string) => {
    const chosen = sheets.find((each) => each.name === name)
    if (chosen) set(usualChoice(chosen))
  }
  return (
    <>
      <Choices
        legend={legend}
        options={sheets.map(({ name }) => ({ value: name, label: name.replace(" (invented)", "") }))}
        value={choice?.product ?? null}
        onChange={choose}
        onClear={() => set(null)}
      />
      {choice && sheet && choice.developerVolume !== null && (
        <MixedWith choice={choice} sheet={sheet} onChange={set} />
      )}
    </>
  )
}

type MixedProps = { choice: TonerChoice; sheet: ProductSheet; onChange: (choice: TonerChoice) => void }

function MixedWith({ choice, sheet: { developers, ratio }, onChange }: MixedProps) {
  const parts = [...new Set([ratio.low, (ratio.low + ratio.high) / 2, ratio.high])]
  return (
    <div className="with-fields">
      <Choices
        legend="Mixed with"
        options={developers.map(({ volume }) => ({
          value: String(volume),
          label: `${numberText(volume)} vol, ${numberText(labelPercent(volume), 1)} %`,
        }))}
        value={String(choice.developerVolume)}
        onChange={(volume) => onChange({ ...choice, developerVolume: Number(volume) })}
      />
      <Choices
        legend="Toner to developer"
        options={parts.map((part) => ({ value: String(part), label: `1 : ${numberText(part)}` }))}
        value={String(choice.parts)}
        onChange={(part) => onChange({ ...choice, parts: Number(part) })}
      />
    </div>
  )
}
