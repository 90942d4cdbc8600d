import type { Edit } from "../edit"
import type { ServiceRecord } from "../serviceRecord"
import { accept } from "./accept"

/** What happened at the chair, in place of what was kept before. */
export const setService =
  (service: ServiceRecord): Edit =>
  (plan) =>
    accept(plan, { ...plan, service })
