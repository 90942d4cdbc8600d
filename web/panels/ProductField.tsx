import { houseProducts } from "../../presets/houseProducts"
import { letters } from "../plan/limits"
import { Choices } from "./Choices"
import { TextField } from "./TextField"

const lighteners = houseProducts.filter(({ kind }) => kind === "lightener")
const options = lighteners.map(({ name }) => ({ value: name, label: name.replace(" (invented)", "") }))

/** Which product: one whose sheet is known, or any other by its name. */
export function ProductField({
  product,
  onCommit,
}: {
  product: string
  onCommit: (product: string) => void
}) {
  return (
    <>
      <Choices legend="Product, with a sheet" options={options} value={product} onChange={onCommit} />
      <TextField name="or another, by name" value={product} most={letters.name} onCommit={onCommit} />
    </>
  )
}
