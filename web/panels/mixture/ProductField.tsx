import { letters } from "../../plan/limits"
import { productSheets } from "../../plan/salon"
import { usePlan } from "../../plan/usePlan"
import { Choices } from "../Choices"
import { TextField } from "../TextField"

/** Which product: one whose sheet is known, or any other by its name. */
export function ProductField({
  product,
  onCommit,
}: {
  product: string
  onCommit: (product: string) => void
}) {
  const salon = usePlan((plan) => plan.salon)
  const options = productSheets({ salon })
    .filter(({ kind }) => kind === "lightener")
    .map(({ name }) => ({ value: name, label: name.replace(" (invented)", "") }))
  return (
    <>
      <Choices legend="Product, with a sheet" options={options} value={product} onChange={onCommit} />
      <TextField name="or another, by name" value={product} most={letters.name} onCommit={onCommit} />
    </>
  )
}
