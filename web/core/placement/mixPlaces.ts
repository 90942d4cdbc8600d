import { coatsOf, type Foil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"

/** Where what is on a foil stands in the plan's list of mixes, from the roots to the ends: by it each mix has its ink. */
export const mixPlaces = (foil: Foil, { mixes }: Pick<Plan, "mixes">): number[] =>
  coatsOf(foil)
    .toSorted((a, b) => Number(b.part === "roots") - Number(a.part === "roots"))
    .map(({ mix }) =>
      Math.max(
        0,
        mixes.findIndex(({ id }) => id === mix),
      ),
    )
