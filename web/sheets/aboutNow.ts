import type { Plan } from "../plan/schema"
import { stopsWords } from "../service/stopsWords"
import { nowHere } from "../service/visitOfPlan"
import type { SheetOptions } from "./layout/sheetOptions"

/** What a sheet says of the hour and the place it is printed at. */
export function aboutNow(plan: Plan): Pick<SheetOptions, "stops" | "zone"> {
  const now = nowHere()
  return { stops: stopsWords(plan, now), zone: now.zone }
}
