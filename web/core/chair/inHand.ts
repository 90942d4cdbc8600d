import { coatsOf } from "../../../geometry/section/section"
import type { Chair, Tap } from "./chair"

/** Whether two work at a service: their foils then stand in lanes. */
export const worksInTwo = ({ foils }: Pick<Chair, "foils">) => foils.some(({ lane }) => lane !== undefined)

/** A tap with whose deed it is: of its own lane, else of whoever has the device in hand. Of one alone, or of nobody known, it says nothing. */
export function tapInHand(chair: Pick<Chair, "foils" | "hand">, tap: Tap): Tap {
  if (tap.kind === "alarm" || tap.by !== undefined || chair.hand === undefined || !worksInTwo(chair))
    return tap
  return { ...tap, by: chair.hand }
}

/** After a tap of a lane its person has the device in hand. */
export const handAfter = (chair: Pick<Chair, "hand">, tap: Tap) =>
  (tap.kind === "alarm" ? undefined : tap.by) ?? chair.hand

/** The mixes that the foils of a service are coated with, once for each; of one begun in an earlier Partline it may not be known. */
export const mixesOn = ({ foils }: Pick<Chair, "foils">): string[] =>
  foils.flatMap(({ mix, roots }) =>
    mix === undefined ? [] : coatsOf({ mix, roots }).map((coat) => coat.mix),
  )
