import type { Edit } from "../edit"
import { counts } from "../limits"
import type { Plan } from "../schema"
import type { ServiceRecord } from "../serviceRecord"
import { accept } from "./accept"

/** What happened at the chair; what was kept of the service before stays among the earlier ones. */
export const setService =
  (service: ServiceRecord): Edit =>
  (plan) => {
    const earlier = earlierOf(plan, service)
    return accept(plan, { ...plan, service, ...(earlier.length > 0 && { earlier }) })
  }

function earlierOf({ service: last, earlier = [] }: Plan, { startedAt }: ServiceRecord) {
  const before = last && last.startedAt !== startedAt ? [...earlier, last] : earlier
  return before.slice(-counts.services.high)
}
