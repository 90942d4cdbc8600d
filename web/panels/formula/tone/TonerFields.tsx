import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { usualChoice } from "../../../core/bowls/toners"
import { productSheets } from "../../../core/document/salon"
import { newToning, type TonerChoice, type Toning } from "../../../core/document/toning"
import { setToning } from "../../../core/edits/plan/setToning"
import { labelPercent } from "../../../core/mixing/strength"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

type Props = { which: keyof Toning; kinds: readonly ProductSheet["kind"][] }

/** Which product tones, with which developer and how much of it; a touch on what is chosen takes it back. */
export function TonerFields({ which, kinds }: Props) {
  const w = useWords().formula.tone
  const salon = usePlan((plan) => plan.salon)
  const choice = (usePlan((plan) => plan.toning) ?? newToning())[which]
  const sheets = productSheets({ salon }).filter(({ kind }) => kinds.includes(kind))
  const sheet = sheets.find(({ name }) => name === choice?.product)
  const set = (next: TonerChoice | null) =>
    commit(
      { chapter: "formula", code: which === "toner" ? "change-toner" : "change-root-shade" },
      setToning({ [which]: next }),
    )
  const choose = (name: string) => {
    const chosen = sheets.find((each) => each.name === name)
    if (chosen) set(usualChoice(chosen))
  }
  return (
    <>
      <Choices
        legend={w[which]}
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
  const { mixing, tone: w } = useWords().formula
  const parts = [...new Set([ratio.low, (ratio.low + ratio.high) / 2, ratio.high])]
  return (
    <div className="with-fields">
      <Choices
        legend={w.mixedWith}
        options={developers.map(({ volume }) => ({
          value: String(volume),
          label: mixing.vol({ volume, percent: labelPercent(volume) }),
        }))}
        value={String(choice.developerVolume)}
        onChange={(volume) => onChange({ ...choice, developerVolume: Number(volume) })}
      />
      <Choices
        legend={w.ratio}
        options={parts.map((part) => ({ value: String(part), label: mixing.parts(part) }))}
        value={String(choice.parts)}
        onChange={(part) => onChange({ ...choice, parts: Number(part) })}
      />
    </div>
  )
}
