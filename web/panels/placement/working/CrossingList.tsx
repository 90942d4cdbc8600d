import type { Plan } from "../../../core/document/schema"
import { type Crossing, crossingsOf, crossingWords } from "../../../core/figures/workingSectionsBelonging"
import { CrossingFixes } from "./CrossingFixes"

/** Foils that lie in two working sections, each with its cures. */
export function CrossingList({ plan }: { plan: Plan }) {
  const crossings = crossingsOf(plan)
  if (crossings.length === 0) return null
  return (
    <>
      <h3>Across a dividing parting</h3>
      {crossings.length > 1 && <CrossingFixes sections={crossings.map(({ section }) => section)} />}
      <ul className="crossings">
        {crossings.map((crossing) => (
          <li key={crossing.section.id}>
            <OneCrossing crossing={crossing} />
          </li>
        ))}
      </ul>
    </>
  )
}

const OneCrossing = ({ crossing }: { crossing: Crossing }) => (
  <>
    <p>{crossingWords(crossing)}</p>
    <CrossingFixes sections={[crossing.section]} />
  </>
)
