import { publicStops } from "../core/cautions/publicStops"
import type { Plan } from "../core/document/schema"
import { nowHere } from "../session/nowHere"
import type { Words } from "../words/en/words"
import type { SheetOptions } from "./setting/sheetOptions"

/** What a sheet says of the hour and the place it is printed at. */
export function stopsAtPrintTime(
  plan: Plan,
  { cautions, sheets }: Words,
): Pick<SheetOptions, "stops" | "alert" | "zone"> {
  const now = nowHere()
  const told = publicStops(plan, now)
  const { alerts } = sheets.map
  return {
    stops: cautions.onSheet.stops(told),
    alert: told.state === "stop" ? alerts.stop : told.state === "not-asked" ? alerts.notAsked : "",
    zone: now.zone,
  }
}
