import { newSalon } from "../../core/document/salon"
import { setSalon } from "../../core/edits/plan/setSalon"
import { isEmptySalon, salonForPlans } from "../../core/weighing/salonOfPlan"
import { isSameSalon } from "../../core/weighing/sameSalon"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useSalon } from "../../session/useSalon"

/** Says when the plan goes by other sheets, bottles, prices or learnt figures than the salon does now. */
export function SalonLine() {
  const { salon, fault } = useSalon()
  const ruling = usePlan((plan) => plan.salon) ?? newSalon()
  const own = salonForPlans(salon)
  if (fault)
    return (
      <p className="fault" role="alert">
        {fault}
      </p>
    )
  if (isEmptySalon(own) || isSameSalon(own, ruling)) return null
  return (
    <div className="salon-line">
      <p>This plan goes by other sheets, bottles, prices or learnt figures than your salon does now.</p>
      <button
        type="button"
        className="button"
        onClick={() => commit("Go by the salon’s own figures", setSalon(own))}
      >
        Go by the salon’s
      </button>
    </div>
  )
}
