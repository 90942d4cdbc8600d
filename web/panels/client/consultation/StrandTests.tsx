import type { StrandResult } from "../../../core/document/consultation"
import { productSheets } from "../../../core/document/salon"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { labelledOptions } from "../../fields/options"
import type { PartProps } from "./partProps"

/** What a strand did in each product that it was tried in: those of the plan at hand, the others folded away. */
export function StrandTests({ known: { strandTests }, write }: PartProps) {
  const { strandTests: said } = useWords().client
  const salon = usePlan((plan) => plan.salon)
  const mixes = usePlan((plan) => plan.mixes)
  const planned = [...new Set(mixes.map(({ product }) => product))]
  const others = productSheets({ salon })
    .map(({ name }) => name)
    .filter((name) => !planned.includes(name))
  const set = (product: string, outcome: StrandResult["outcome"] | null) =>
    write("record-strand", {
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
        options={labelledOptions(said.outcomes)}
        value={strandTests.find((test) => test.product === product)?.outcome ?? null}
        onChange={(outcome) => set(product, outcome)}
        onClear={() => set(product, null)}
      />
    ))
  return (
    <section aria-labelledby="strand-tests-title">
      <h3 id="strand-tests-title">{said.title}</h3>
      <div className="questions">{fields(planned)}</div>
      <details>
        <summary>{said.others}</summary>
        <div className="questions">{fields(others)}</div>
      </details>
    </section>
  )
}
