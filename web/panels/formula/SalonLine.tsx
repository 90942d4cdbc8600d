import { newSalon } from "../../core/document/salon"
import { setSalon } from "../../core/edits/plan/setSalon"
import { isEmptySalon, salonForPlans } from "../../core/weighing/salonOfPlan"
import { isSameSalon } from "../../core/weighing/sameSalon"
import { commit } from "../../session/commit"
import { useSalon } from "../../session/salon/useSalon"
import { usePlan } from "../../session/usePlan"
import { notKeptWords, useWords } from "../../session/words"

/** Says when the plan goes by other sheets, bottles, prices or learnt figures than the salon does now. */
export function SalonLine() {
  const w = useWords().formula.stock
  const { salon, fault } = useSalon()
  const ruling = usePlan((plan) => plan.salon) ?? newSalon()
  const own = salonForPlans(salon)
  if (fault)
    return (
      <p className="fault" role="alert">
        {notKeptWords(fault)}
      </p>
    )
  if (isEmptySalon(own) || isSameSalon(own, ruling)) return null
  return (
    <div className="salon-line">
      <p>{w.differs}</p>
      <button
        type="button"
        className="button"
        onClick={() => commit({ chapter: "formula", code: "use-salon-figures" }, setSalon(own))}
      >
        {w.useSalons}
      </button>
    </div>
  )
}
