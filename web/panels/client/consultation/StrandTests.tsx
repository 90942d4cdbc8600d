import type { StrandResult } from "../../../core/document/consultation"
import { productSheets } from "../../../core/document/salon"
import { usePlan } from "../../../session/usePlan"
import { Choices } from "../../fields/Choices"
import type { PartProps } from "./partProps"

const outcomes = [
  { value: "held", label: "Held" },
  { value: "failed", label: "Failed" },
] as const

/** What a strand did in each product that it was tried in: those of the plan at hand, the others folded away. */
export function StrandTests({ known: { strandTests }, write }: PartProps) {
  const salon = usePlan((plan) => plan.salon)
  const mixes = usePlan((plan) => plan.mixes)
  const planned = [...new Set(mixes.map(({ product }) => product))]
  const others = productSheets({ salon })
    .map(({ name }) => name)
    .filter((name) => !planned.includes(name))
  const set = (product: string, outcome: StrandResult["outcome"] | null) =>
    write("Write down a strand test", {
      strandTests: [
        ...strandTests.filter((test) => test.product !== product),
        ...(outcome ? [{ product, outcome }] : []),
      ],
    })
  const fields = (products: readonly string[]) =>
    products.map((product) => (
      <Choices
        key={product}
        legend={product}
        options={outcomes}
        value={strandTests.find((test) => test.product === product)?.outcome ?? null}
        onChange={(outcome) => set(product, outcome)}
        onClear={() => set(product, null)}
      />
    ))
  return (
    <section aria-labelledby="strand-tests-title">
      <h3 id="strand-tests-title">Strand test</h3>
      <div className="questions">{fields(planned)}</div>
      <details>
        <summary>Other products</summary>
        <div className="questions">{fields(others)}</div>
      </details>
    </section>
  )
}
