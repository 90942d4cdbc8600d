import type { Foil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { joinWords } from "../text/joinWords"
import { zoneOf } from "./scheduleFromPlan"
import type { Zone } from "./scheduleInput"

/** Where some foils of a plan lie, in the words given for each zone and in their order. */
export function placesOf(foils: readonly Foil[], plan: Plan, words: Readonly<Record<Zone, string>>): string {
  const zones = new Set(foils.map((foil) => zoneOf(foil, plan)))
  const said = (Object.keys(words) as Zone[]).filter((zone) => zones.has(zone)).map((zone) => words[zone])
  return joinWords([...new Set(said)])
}
