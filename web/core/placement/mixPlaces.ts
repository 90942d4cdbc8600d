import { coatsOf, type Foil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"

type Mixes = Pick<Plan, "mixes">

/** Where a mix stands in the plan's list: by it each has its ink. */
export const mixPlace = (mix: string, { mixes }: Mixes): number =>
  Math.max(
    0,
    mixes.findIndex(({ id }) => id === mix),
  )

/** Where what is on a foil stands there, from the roots to the ends. */
export const mixPlaces = (foil: Foil, plan: Mixes): number[] =>
  coatsOf(foil)
    .toSorted((a, b) => Number(b.part === "roots") - Number(a.part === "roots"))
    .map(({ mix }) => mixPlace(mix, plan))
