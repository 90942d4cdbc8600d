import { usePlan } from "../../plan/usePlan"
import { TechniqueTiles } from "./TechniqueTiles"

/** Techniques stand first on an empty plan, and fold away once there is something on the head. */
export function TechniquesPart() {
  const isEmpty = usePlan((plan) => plan.sections.length === 0)
  if (isEmpty)
    return (
      <section aria-labelledby="techniques-title">
        <h2 id="techniques-title">Begin with a technique</h2>
        <TechniqueTiles />
      </section>
    )
  return (
    <details>
      <summary>Add a technique</summary>
      <TechniqueTiles />
    </details>
  )
}
