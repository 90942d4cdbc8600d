import type { Plan } from "../../plan/schema"
import { type Crossing, crossingsOf, crossingWords } from "../../plan/workingSectionsBelonging"
import { CrossingCures } from "./CrossingCures"

/** Foils that lie in two working sections, each with its cures. */
export function CrossingList({ plan }: { plan: Plan }) {
  const crossings = crossingsOf(plan)
  if (crossings.length === 0) return null
  return (
    <>
      <h3>Across a dividing parting</h3>
      {crossings.length > 1 && <CrossingCures sections={crossings.map(({ section }) => section)} />}
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
    <CrossingCures sections={[crossing.section]} />
  </>
)
