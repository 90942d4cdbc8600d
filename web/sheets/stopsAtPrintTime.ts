import { publicStops } from "../core/cautions/publicStops"
import type { Plan } from "../core/document/schema"
import { nowHere } from "../session/nowHere"
import type { Words } from "../words/en/words"
import type { SheetOptions } from "./setting/sheetOptions"

/** What a sheet says of the hour and the place it is printed at. */
export function stopsAtPrintTime(plan: Plan, { cautions }: Words): Pick<SheetOptions, "stops" | "zone"> {
  const now = nowHere()
  return { stops: cautions.onSheet.stops(publicStops(plan, now)), zone: now.zone }
}
