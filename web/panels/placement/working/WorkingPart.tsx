import "./working.css"
import { workingSectionsOf } from "../../../core/figures/workingSections"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { CrossingList } from "./CrossingList"
import { DividerList } from "./DividerList"
import { StartTiles } from "./StartTiles"
import { WorkingList } from "./WorkingList"

/** The working sections of the plan: how the head is divided, what each comes to, and the order they are worked in. */
export function WorkingPart() {
  const w = useWords().placement.working
  const plan = usePlan((open) => open)
  const workings = workingSectionsOf(plan)
  if (workings.length === 0)
    return (
      <details>
        <summary>{w.divide}</summary>
        <Starts />
      </details>
    )
  return (
    <section aria-labelledby="working-title" className="working">
      <h2 id="working-title">
        {w.title(workings.length)}
        <span className="aside"> {w.inOrder}</span>
      </h2>
      <WorkingList plan={plan} />
      <CrossingList plan={plan} />
      <details className="inner">
        <summary>{w.sectionLines}</summary>
        <DividerList plan={plan} />
      </details>
      <details className="inner">
        <summary>{w.divideFurther}</summary>
        <Starts />
      </details>
    </section>
  )
}

function Starts() {
  const w = useWords().placement.working
  return (
    <>
      <StartTiles />
      <p className="aside">{w.orDraw}</p>
    </>
  )
}
