import type { Foil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { zoneOf } from "./scheduleFromPlan"
import type { Zone } from "./scheduleInput"

/** Where foils lie as it is told to someone who does not part hair: both sides are one place. */
export const foilPlaces = ["hairline", "top", "sides", "back"] as const
export type FoilPlace = (typeof foilPlaces)[number]

const placeOfZone: Record<Zone, FoilPlace> = {
  hairline: "hairline",
  top: "top",
  left: "sides",
  right: "sides",
  back: "back",
}

/** Where some foils of a plan lie, from the hairline to the back. */
export function placesOf(foils: readonly Foil[], plan: Plan): FoilPlace[] {
  const found = new Set(foils.map((foil) => placeOfZone[zoneOf(foil, plan)]))
  return foilPlaces.filter((place) => found.has(place))
}
