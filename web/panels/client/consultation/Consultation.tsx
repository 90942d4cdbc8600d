import "./consultation.css"
import { useState } from "react"
import { notKnown } from "../../../core/cautions/cautions"
import { type Consultation as Known, newConsultation } from "../../../core/document/consultation"
import { setConsultation } from "../../../core/edits/plan/setConsultation"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { HairFields } from "../../fields/HairFields"
import { AlertTests } from "./AlertTests"
import { Goals } from "./Goals"
import { HairNow } from "./HairNow"
import type { Write } from "./partProps"
import { Questions } from "./Questions"
import { StrandTests } from "./StrandTests"

/** What the client says and what is seen; nothing has to be filled in, and health answers fold away at a touch. */
export function Consultation() {
  const known = usePlan((plan) => plan.consultation) ?? newConsultation()
  const [isHidden, setHidden] = useState(false)
  const write: Write = (label, change) => commit(label, setConsultation(change))
  return (
    <section className="consultation" aria-labelledby="consultation-title">
      <div className="title-row">
        <h2 id="consultation-title">Consultation</h2>
        <button type="button" className="button" aria-pressed={isHidden} onClick={() => setHidden(!isHidden)}>
          {isHidden ? "Show health answers" : "Hide health answers"}
        </button>
      </div>
      <p className="aside">
        Nothing has to be filled in. A touch on what is chosen takes it back. {notKnownWords(known)}
      </p>
      <div className="columns">
        <HairNow known={known} write={write} />
        <Goals known={known} write={write} />
      </div>
      <div className="hair-row">
        <HairFields />
      </div>
      {!isHidden && (
        <>
          <Questions known={known} write={write} />
          <div className="columns">
            <AlertTests known={known} write={write} />
            <StrandTests known={known} write={write} />
          </div>
        </>
      )}
    </section>
  )
}

/** How much the plan does not know; the list is where the stops are. */
function notKnownWords(known: Known): string {
  const { length } = notKnown(known)
  if (length === 0) return "Everything asked here is known."
  return `${length} ${length === 1 ? "thing is" : "things are"} not known yet; Mixture lists ${length === 1 ? "it" : "them"}.`
}
