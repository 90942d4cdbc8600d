import { letters } from "../../core/document/limits"
import { productSheets } from "../../core/document/salon"
import { usePlan } from "../../session/usePlan"
import { Choices } from "../fields/Choices"
import { TextField } from "../fields/TextField"

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
