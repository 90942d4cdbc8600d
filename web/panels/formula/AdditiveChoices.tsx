import { sheetOf } from "../../core/document/salon"
import type { Mix } from "../../core/document/schema"
import { setMix } from "../../core/edits/plan/setMix"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { Chips } from "../fields/Chips"

/** What the sheet lets be stirred in, taken or left. */
export function AdditiveChoices({ mix }: { mix: Mix }) {
  const salon = usePlan((plan) => plan.salon)
  const names = (sheetOf(mix.product, { salon })?.additives ?? []).map(({ name }) => name)
  if (names.length === 0) return null
  return (
    <Chips
      legend="Stirred in"
      options={names.map((name) => ({ value: name, label: name }))}
      chosen={mix.additives ?? []}
      onChange={(additives) =>
        commit(`Change what is stirred into mix ${mix.id}`, setMix({ ...mix, additives }))
      }
    />
  )
}
