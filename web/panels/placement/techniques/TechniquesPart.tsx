import { useState } from "react"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { SaveSelection } from "./SaveSelection"
import { TechniqueTiles } from "./TechniqueTiles"

/** Techniques stand first on an empty plan, and fold away once there is something on the head. */
export function TechniquesPart() {
  const w = useWords().techniques.panel
  const isEmpty = usePlan((plan) => plan.sections.length === 0)
  const [open, setOpen] = useState(false)
  if (isEmpty)
    return (
      <section className="techniques-first" aria-labelledby="techniques-title">
        <h2 id="techniques-title">{w.startFrom}</h2>
        <TechniqueTiles />
      </section>
    )
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{w.title}</summary>
      {open && (
        <>
          <SaveSelection />
          <TechniqueTiles />
        </>
      )}
    </details>
  )
}
