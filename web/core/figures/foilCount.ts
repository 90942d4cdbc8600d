import type { Foil } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { figuresOf } from "./measured"

/** How many foils lie side by side in a section; what goes without foil, on a board or in open air, counts as one piece. */
export const foilsIn = (foil: Foil, plan: Plan): number => Math.max(1, figuresOf(foil, plan).foils)

/** How many foils are laid in all: the one count that screen, chair and paper tell. */
export const foilCount = (foils: readonly Foil[], plan: Plan): number =>
  foils.reduce((sum, foil) => sum + foilsIn(foil, plan), 0)
