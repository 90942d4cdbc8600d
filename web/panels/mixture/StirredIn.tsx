import { act } from "../../plan/act"
import { setMix } from "../../plan/edits/setMix"
import { sheetOf } from "../../plan/salon"
import type { Mix } from "../../plan/schema"
import { usePlan } from "../../plan/usePlan"
import { Chips } from "../Chips"

/** What the sheet lets be stirred in, taken or left. */
export function StirredIn({ mix }: { mix: Mix }) {
  const salon = usePlan((plan) => plan.salon)
  const names = (sheetOf(mix.product, { salon })?.additives ?? []).map(({ name }) => name)
  if (names.length === 0) return null
  return (
    <Chips
      legend="Stirred in"
      options={names.map((name) => ({ value: name, label: name }))}
      chosen={mix.additives ?? []}
      onChange={(additives) =>
        act(`Change what is stirred into mix ${mix.id}`, setMix({ ...mix, additives }))
      }
    />
  )
}
