import { productSheets } from "../../plan/salon"
import { usePlan } from "../../plan/usePlan"
import { Choices } from "../Choices"
import type { PartProps } from "./Consultation"

const outcomes = [
  { value: "held", label: "Held" },
  { value: "failed", label: "Failed" },
] as const

/** What a strand did in each product that it was tried in. */
export function StrandTests({ known, write }: PartProps) {
  const { strandTests } = known
  const salon = usePlan((plan) => plan.salon)
  return (
    <details>
      <summary>Strand test</summary>
      <div className="questions">
        {productSheets({ salon }).map(({ id, name }) => {
          const outcome = strandTests.find(({ product }) => product === name)?.outcome ?? null
          const others = strandTests.filter(({ product }) => product !== name)
          return (
            <Choices
              key={id}
              legend={name}
              options={outcomes}
              value={outcome}
              onChange={(value) =>
                write("Write down a strand test", {
                  strandTests: [...others, { product: name, outcome: value }],
                })
              }
            />
          )
        })}
      </div>
    </details>
  )
}
