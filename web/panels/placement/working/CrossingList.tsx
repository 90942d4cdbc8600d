import type { Plan } from "../../../core/document/schema"
import { type Crossing, crossingsOf } from "../../../core/figures/workingSectionsBelonging"
import { useWords } from "../../../session/words"
import { CrossingFixes } from "./CrossingFixes"
import { CrossingWords } from "./CrossingWords"

/** Foils that lie in two working sections, each with its cures. */
export function CrossingList({ plan }: { plan: Plan }) {
  const w = useWords().placement.working
  const crossings = crossingsOf(plan)
  if (crossings.length === 0) return null
  return (
    <>
      <h3>{w.across}</h3>
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
    <CrossingWords crossing={crossing} />
    <CrossingFixes sections={[crossing.section]} />
  </>
)
