import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"
import type { DoneService, Plan } from "../../document/schema"
import type { ServiceRecord } from "../../document/serviceRecord"
import { counts } from "../../fields/limits"

/** What happened at the chair; what was kept of the service before stays among the earlier ones. */
export const setService =
  (service: DoneService): Edit =>
  (plan) => {
    const earlier = earlierOf(plan, service)
    return validateEdit(plan, { ...plan, service, ...(earlier.length > 0 && { earlier }) })
  }

/** Of the services before, the drawing is let go: what was mixed, placed and seen stays. */
function earlierOf({ service: last, earlier = [] }: Plan, { startedAt }: ServiceRecord) {
  if (!last || last.startedAt === startedAt) return earlier.slice(-counts.services.high)
  const { drawn: _, ...kept } = last
  return [...earlier, kept].slice(-counts.services.high)
}
