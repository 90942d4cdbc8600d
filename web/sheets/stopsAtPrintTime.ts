import { stopsWords } from "../core/cautions/stopsWords"
import type { Plan } from "../core/document/schema"
import { nowHere } from "../session/nowHere"
import type { SheetOptions } from "./setting/sheetOptions"

/** What a sheet says of the hour and the place it is printed at. */
export function stopsAtPrintTime(plan: Plan): Pick<SheetOptions, "stops" | "zone"> {
  const now = nowHere()
  return { stops: stopsWords(plan, now), zone: now.zone }
}
