import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"

/** What was left of a bowl of the last service, counted from 0; null where nobody has weighed. */
export const setBowlLeft =
  (at: number, leftG: number | null): Edit =>
  (plan) => {
    const { service } = plan
    const bowl = service?.bowls?.[at]
    if (!service?.bowls || !bowl) throw new Error(`the last service has no bowl ${at}`)
    return validateEdit(plan, {
      ...plan,
      service: { ...service, bowls: service.bowls.with(at, { ...bowl, leftG }) },
    })
  }

/** What was left of a bowl of toner of the last service, told at the zone, counted from 0, that tells its grams. */
export const setTonerLeft =
  (at: number, leftG: number | null): Edit =>
  (plan) => {
    const { service } = plan
    const toner = service?.toners?.[at]
    if (!service?.toners || !toner) throw new Error(`the last service has no toner ${at}`)
    return validateEdit(plan, {
      ...plan,
      service: { ...service, toners: service.toners.with(at, { ...toner, leftG }) },
    })
  }
