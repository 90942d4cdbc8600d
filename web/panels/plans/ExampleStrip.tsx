import { useWords } from "../../session/words"
import { beginPlan } from "./beginPlan"

/** Says that what is on the screen is nobody's plan, and leads to one's own. */
export function ExampleStrip() {
  const w = useWords().plans.bar
  return (
    <div className="example-strip">
      <p>{w.example}</p>
      <button type="button" className="button" onClick={() => void beginPlan()}>
        {w.startOwn}
      </button>
    </div>
  )
}
