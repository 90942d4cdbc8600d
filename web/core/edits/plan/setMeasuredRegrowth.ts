import { validateEdit } from "../../checks/validateEdit"
import type { Edit } from "../../document/edit"

/** How far the hair has grown since it was lightened last, as measured; null takes it back to what is reckoned. */
export const setMeasuredRegrowth =
  (measuredMm: number | null): Edit =>
  (plan) => {
    const { regrowth: _, ...rest } = plan
    return validateEdit(plan, measuredMm === null ? rest : { ...rest, regrowth: { measuredMm } })
  }
