import "./working.css"
import { workingSectionsOf } from "../../../core/figures/workingSections"
import { usePlan } from "../../../session/usePlan"
import { CrossingList } from "./CrossingList"
import { DividerList } from "./DividerList"
import { StartTiles } from "./StartTiles"
import { WorkingList } from "./WorkingList"

/** The working sections of the plan: how the head is divided, what each comes to, and the order they are worked in. */
export function WorkingPart() {
  const plan = usePlan((open) => open)
  const workings = workingSectionsOf(plan)
  if (workings.length === 0)
    return (
      <details>
        <summary>Divide into working sections</summary>
        <Starts />
      </details>
    )
  return (
    <section aria-labelledby="working-title" className="working">
      <h2 id="working-title">
        {workings.length} working sections<span className="aside"> in order of working</span>
      </h2>
      <WorkingList plan={plan} />
      <CrossingList plan={plan} />
      <details className="inner">
        <summary>Dividing partings</summary>
        <DividerList plan={plan} />
      </details>
      <details className="inner">
        <summary>Divide further</summary>
        <Starts />
      </details>
    </section>
  )
}

function Starts() {
  return (
    <>
      <StartTiles />
      <p className="aside">Or choose Divide, and draw a parting from edge to edge.</p>
    </>
  )
}
