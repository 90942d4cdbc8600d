import "./client.css"
import { planningCaution } from "../../../presets/formula/cautions"
import { ClientHead } from "../placement/hairline/ClientHead"
import { LandmarkFields } from "../placement/hairline/LandmarkFields"
import { LandmarkSides } from "../placement/hairline/LandmarkSides"
import { WornFields } from "../placement/hairline/WornFields"
import { Consultation } from "./consultation/Consultation"
import { HairlineChoice } from "./HairlineChoice"
import { HeadSizeFields } from "./HeadSizeFields"
import { PlanFields } from "./PlanFields"
import { WholeHeadFigures } from "./WholeHeadFigures"

/** Who the plan is for: what she says and what is seen, then the head and its hairline. */
export function ClientScreen() {
  return (
    <main className="page client">
      <h1>Client</h1>
      <div className="plan-row">
        <PlanFields />
      </div>
      <Consultation />
      <div className="columns">
        <div className="column">
          <HeadSizeFields />
          <ClientHead />
          <WholeHeadFigures />
        </div>
        <div className="column">
          <HairlineChoice />
          <LandmarkFields>
            <LandmarkSides />
          </LandmarkFields>
          <WornFields />
        </div>
      </div>
      <p className="aside">{planningCaution}</p>
    </main>
  )
}
