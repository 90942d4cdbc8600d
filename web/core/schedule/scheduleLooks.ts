import type { HeatTimes } from "./scheduleHeat"
import type { Service, TimedFoil } from "./scheduleInput"
import type { PlacedFoil } from "./schedulePlacing"

type Looks = Service["looks"]

/**
 * Minutes at which to go round and look: the first when a foil is first due, then evenly until the last is off.
 * Every foil is seen no later than its own first look, because rounds are no further apart. Heat ends with a look.
 */
export function lookRounds(
  foils: readonly PlacedFoil[],
  looks: Looks,
  heat: HeatTimes | null = null,
): number[] {
  const first = Math.min(...foils.map(({ foil, onAtMin }) => onAtMin + firstLookMin(foil, looks)))
  const last = Math.max(...foils.map(({ offAtMin }) => offAtMin))
  const count = Math.max(0, Math.ceil((last - first) / looks.everyMin - 1e-9))
  const rounds = Array.from({ length: count }, (_, round) => first + round * looks.everyMin)
  const all = heat && !rounds.includes(heat.lookAtMin) ? [...rounds, heat.lookAtMin] : rounds
  return all.sort((a, b) => a - b).filter((atMin) => foils.some((foil) => isSeen(foil, atMin, looks)))
}

/** Whether a foil is looked at in a round: from one interval before its first look, while it is on. */
export const isSeen = ({ foil, onAtMin, offAtMin }: PlacedFoil, atMin: number, looks: Looks) =>
  atMin > onAtMin + firstLookMin(foil, looks) - looks.everyMin + 1e-9 && atMin < offAtMin - 1e-9

/** As the sheet says, else as usual; delicate hair is never looked at later for what a sheet says. */
export function firstLookMin(
  foil: Pick<TimedFoil, "firstLookMin" | "delicate">,
  { firstMin, firstDelicateMin }: Looks,
) {
  const usual = foil.delicate ? firstDelicateMin : firstMin
  const printed = foil.firstLookMin ?? usual
  return foil.delicate ? Math.min(usual, printed) : printed
}
