import "./consultation.css"
import { useState } from "react"
import { act } from "../../plan/act"
import { type Consultation as Known, newConsultation } from "../../plan/consultation"
import { setConsultation } from "../../plan/edits/setConsultation"
import { usePlan } from "../../plan/usePlan"
import { AlertTests } from "./AlertTests"
import { Goals } from "./Goals"
import { HairNow } from "./HairNow"
import { Questions } from "./Questions"
import { StrandTests } from "./StrandTests"

export type Write = (label: string, change: Partial<Known>) => boolean
export type PartProps = { known: Known; write: Write }

/** What the client says and what is seen; nothing has to be filled in, and health answers fold away at a touch. */
export function Consultation() {
  const known = usePlan((plan) => plan.consultation) ?? newConsultation()
  const [isHidden, setHidden] = useState(false)
  const write: Write = (label, change) => act(label, setConsultation(change))
  return (
    <section className="consultation" aria-labelledby="consultation-title">
      <div className="title-row">
        <h2 id="consultation-title">Consultation</h2>
        <button type="button" className="button" aria-pressed={isHidden} onClick={() => setHidden(!isHidden)}>
          {isHidden ? "Show health answers" : "Hide health answers"}
        </button>
      </div>
      <Goals known={known} write={write} />
      <HairNow known={known} write={write} />
      <StrandTests known={known} write={write} />
      {!isHidden && (
        <>
          <Questions known={known} write={write} />
          <AlertTests known={known} write={write} />
        </>
      )}
    </section>
  )
}
