import "./consultation.css"
import { type ReactNode, useId, useState } from "react"
import { daysOf } from "../../../core/cautions/asking/questions"
import { type StepCount, stepCounts } from "../../../core/cautions/stepCounts"
import { newConsultation } from "../../../core/document/consultation"
import { recordConsultation } from "../../../core/edits/plan/setConsultation"
import { useClearance } from "../../../session/clearance/useClearance"
import { commit } from "../../../session/commit"
import { nowHere } from "../../../session/nowHere"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { isAverage } from "../measures/headSizeChoices"
import { AskStep } from "./AskStep"
import { Goals } from "./Goals"
import { HairStep } from "./HairStep"
import { HeadStep } from "./HeadStep"
import type { ClientDone, Write } from "./partProps"

/** Ask, hair, head, goal: each with how much of it is known. Asking comes first, because it can end the visit. */
export function Consultation() {
  const plan = usePlan((open) => open)
  const known = plan.consultation ?? newConsultation()
  const told = useClearance()
  const [isHidden, setHidden] = useState(false)
  const { consultation: said, steps } = useWords().client
  const days = daysOf(plan, nowHere())
  const counts = stepCounts(plan, known, told.notAsked, !isAverage(plan.head.size))
  const write: Write = (code, change) =>
    commit(
      { chapter: "client", code } as { chapter: "client" } & ClientDone,
      recordConsultation(change, nowHere()),
    )
  const parts = { known, write, days, told }
  return (
    <>
      <div className="consultation">
        <Step title={steps.ask} count={counts.ask}>
          <button
            type="button"
            className="button"
            aria-pressed={isHidden}
            onClick={() => setHidden(!isHidden)}
          >
            {isHidden ? said.show : said.hide}
          </button>
          {!isHidden && <AskStep {...parts} />}
        </Step>
        <Step title={steps.hair} count={counts.hair}>
          <HairStep {...parts} />
        </Step>
        <Step title={steps.head} count={counts.head}>
          <HeadStep />
        </Step>
      </div>
      <Step title={steps.goal} count={counts.goal} isWide>
        <Goals known={known} write={write} />
      </Step>
    </>
  )
}

type StepProps = { title: string; count: StepCount; isWide?: boolean; children: ReactNode }

function Step({ title, count, isWide = false, children }: StepProps) {
  const { steps } = useWords().client
  const id = useId()
  return (
    <section className={isWide ? "step wide" : "step"} aria-labelledby={id}>
      <h2 id={id}>
        {title} <span className="count">{steps.count(count.done, count.of)}</span>
      </h2>
      {children}
    </section>
  )
}
