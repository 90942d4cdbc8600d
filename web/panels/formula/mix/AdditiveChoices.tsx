import { sheetOf } from "../../../core/document/salon"
import type { Mix } from "../../../core/document/schema"
import { setMix } from "../../../core/edits/plan/setMix"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Chips } from "../../fields/Chips"

/** What the sheet lets be added, taken or left. */
export function AdditiveChoices({ mix }: { mix: Mix }) {
  const w = useWords().formula.mixing
  const salon = usePlan((plan) => plan.salon)
  const names = (sheetOf(mix.product, { salon })?.additives ?? []).map(({ name }) => name)
  if (names.length === 0) return null
  return (
    <Chips
      legend={w.additive}
      options={names.map((name) => ({ value: name, label: name }))}
      chosen={mix.additives ?? []}
      onChange={(additives) =>
        commit({ chapter: "formula", code: "change-additives", mix: mix.id }, setMix({ ...mix, additives }))
      }
    />
  )
}
