import { productSheets } from "../../../core/document/salon"
import { letters } from "../../../core/fields/limits"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { TextField } from "../../fields/TextField"

/** Which product: one whose sheet is known, or any other by its name. */
export function ProductField({
  product,
  onCommit,
}: {
  product: string
  onCommit: (product: string) => void
}) {
  const w = useWords().formula.mixing
  const salon = usePlan((plan) => plan.salon)
  const options = productSheets({ salon })
    .filter(({ kind }) => kind === "lightener")
    .map(({ name }) => ({ value: name, label: name.replace(" (invented)", "") }))
  return (
    <>
      <Choices legend={w.product} options={options} value={product} onChange={onCommit} />
      <TextField name={w.otherProduct} value={product} most={letters.name} onCommit={onCommit} />
    </>
  )
}
