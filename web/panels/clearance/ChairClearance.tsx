import type { Clearance } from "../../core/cautions/clearance"
import { useWords } from "../../session/words"
import { AskedAloud } from "./AskedAloud"
import { ClearanceList } from "./ClearanceList"
import "./clearance.css"

/** Before the clock starts: what holds the plan and what was not asked comes first, and may be answered here. */
export function ChairClearance({ told }: { told: Clearance }) {
  const { clearance: said } = useWords().cautions
  if (told.state === "cleared") return <p className="clearance-head cleared">{said.head(told)}</p>
  return (
    <div className="chair-clearance">
      <p className="large">{told.state === "stop" ? said.chairStop : said.chairNotAsked}</p>
      <AskedAloud told={told} />
      <ClearanceList told={told} />
    </div>
  )
}
