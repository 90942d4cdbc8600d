import "./consultation.css"
import { useState } from "react"
import { notKnown } from "../../../core/cautions/notKnown"
import { newConsultation } from "../../../core/document/consultation"
import { setConsultation } from "../../../core/edits/plan/setConsultation"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { HairFields } from "../measures/HairFields"
import { AlertTests } from "./AlertTests"
import { Goals } from "./Goals"
import { HairNow } from "./HairNow"
import type { ClientDone, Write } from "./partProps"
import { Questions } from "./Questions"
import { StrandTests } from "./StrandTests"

/** What the client says and what is seen; nothing has to be filled in, and health answers fold away at a touch. */
export function Consultation() {
  const known = usePlan((plan) => plan.consultation) ?? newConsultation()
  const [isHidden, setHidden] = useState(false)
  const { consultation: said } = useWords().client
  const write: Write = (code, change) =>
    commit({ chapter: "client", code } as { chapter: "client" } & ClientDone, setConsultation(change))
  const open = notKnown(known).length
  return (
    <section className="consultation" aria-labelledby="consultation-title">
      <div className="title-row">
        <h2 id="consultation-title">{said.title}</h2>
        <button type="button" className="button" aria-pressed={isHidden} onClick={() => setHidden(!isHidden)}>
          {isHidden ? said.show : said.hide}
        </button>
      </div>
      <p className="aside">{said.aside}</p>
      <p className="aside">{open === 0 ? said.allKnown : said.notKnown(open)}</p>
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
