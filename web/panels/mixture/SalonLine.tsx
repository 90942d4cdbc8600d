import { act } from "../../plan/act"
import { setSalon } from "../../plan/edits/setSalon"
import { newSalon } from "../../plan/salon"
import { isSameSalon } from "../../plan/sameSalon"
import { usePlan } from "../../plan/usePlan"
import { isEmptySalon, salonForPlans } from "../../service/salonOfPlan"
import { useSalon } from "./useSalon"

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
        onClick={() => act("Go by the salon’s own figures", setSalon(own))}
      >
        Go by the salon’s
      </button>
    </div>
  )
}
