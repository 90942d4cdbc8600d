import { planningCaution } from "../../presets/cautions"
import { Consultation } from "./consultation/Consultation"
import { HairFields } from "./HairFields"
import { HairlineChoice } from "./HairlineChoice"
import { HeadSizeFields } from "./HeadSizeFields"
import { PlanFields } from "./PlanFields"
import { WholeHeadFigures } from "./WholeHeadFigures"

/** Who the plan is for: the head, its hairline and the hair on it. */
export function ClientScreen() {
  return (
    <main className="page client">
      <h1>Client</h1>
      <div className="columns">
        <div className="column">
          <PlanFields />
          <HeadSizeFields />
          <WholeHeadFigures />
        </div>
        <div className="column">
          <HairlineChoice />
          <HairFields />
        </div>
      </div>
      <Consultation />
      <p className="aside">{planningCaution}</p>
    </main>
  )
}
