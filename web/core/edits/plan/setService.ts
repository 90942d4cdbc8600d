import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import { counts } from "../../document/limits"
import type { Plan } from "../../document/schema"
import type { ServiceRecord } from "../../document/serviceRecord"

/** What happened at the chair; what was kept of the service before stays among the earlier ones. */
export const setService =
  (service: ServiceRecord): Edit =>
  (plan) => {
    const earlier = earlierOf(plan, service)
    return validateEdit(plan, { ...plan, service, ...(earlier.length > 0 && { earlier }) })
  }

function earlierOf({ service: last, earlier = [] }: Plan, { startedAt }: ServiceRecord) {
  const before = last && last.startedAt !== startedAt ? [...earlier, last] : earlier
  return before.slice(-counts.services.high)
}
