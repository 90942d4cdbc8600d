import { useClearance } from "../../session/clearance/useClearance"
import { useWords } from "../../session/words"
import "./clearance.css"

/** At the head of a screen: do not mix, not asked yet, or cleared by what and when. */
export function ClearanceHead() {
  const told = useClearance()
  const { clearance: said } = useWords().cautions
  return <p className={`clearance-head ${told.state}`}>{said.head(told)}</p>
}
