import "./client.css"
import { useWords } from "../../session/words"
import { CardHere } from "../cards/CardHere"
import { LastVisit } from "../cards/LastVisit"
import { Consultation } from "./consultation/Consultation"
import { PlanFields } from "./PlanFields"
import { useFieldWanted } from "./useFieldWanted"

/** Who the plan is for: what is said and what is seen, then what is wanted. */
export function ClientScreen() {
  const said = useWords().client
  useFieldWanted()
  return (
    <main className="page client">
      <h1>{said.title}</h1>
      <div className="plan-row">
        <PlanFields />
        <CardHere />
      </div>
      <LastVisit />
      <Consultation />
      <p className="aside">{said.caution}</p>
    </main>
  )
}
