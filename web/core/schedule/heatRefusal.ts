import { isCoatedWith } from "../../../geometry/section/section"
import { liftCeilingC } from "../../../presets/timing/lift"
import { heatHabits } from "../../../presets/timing/pace"
import { traitsOf } from "../kinds/kindRecords"
import { mixesUsed } from "./mixesUsed"
import type { PlannedHeat, Service, TimedFoil, TimedMix } from "./scheduleInput"

/** Why heat is left out. What is common practice the colourist may override in writing; a sheet nobody may. */
export type HeatRefusal =
  | { code: "too-warm"; ceilingC: number; warmthC: number }
  | { code: "not-on-sheet" }
  | { code: "too-long"; mostMin: number; askedMin: number }
  | { code: "no-minutes" }
  | HeatHabit
type HeatHabit =
  | { code: "strong-mix"; mix: string; volume: number }
  | { code: "at-hairline" }
  | { code: "cushion" }
  | { code: "longer-than-usual"; usualMostMin: number; askedMin: number }

/** Why heat may not be used in this service, or null. The sheet decides, and common practice narrows it. */
export function heatRefusal({ foils, mixes, heat }: Service): HeatRefusal | null {
  if (!heat) return null
  const { minutes, warmthC } = heat
  const used = mixesUsed(mixes, foils)
  const mostMin = Math.min(...used.map(({ heatMostMin }) => heatMostMin))
  if (warmthC !== null && warmthC > liftCeilingC) return { code: "too-warm", ceilingC: liftCeilingC, warmthC }
  if (mostMin <= 0) return { code: "not-on-sheet" }
  if (minutes > mostMin) return { code: "too-long", mostMin, askedMin: minutes }
  if (minutes <= 0) return { code: "no-minutes" }
  return placeHabit(heat, used, foils) ?? timeHabit(heat, used)
}

function placeHabit(
  { overridden }: PlannedHeat,
  mixes: readonly TimedMix[],
  foils: readonly TimedFoil[],
): HeatHabit | null {
  const held = mixes.filter(({ id }) => !overridden?.place.includes(id))
  const own = foils.filter((foil) => held.some(({ id }) => isCoatedWith(foil, id)))
  const strong = held.find(({ developerVolume }) => developerVolume >= heatHabits.forbiddenVolume)
  if (strong) return { code: "strong-mix", mix: strong.id, volume: strong.developerVolume }
  if (own.some(({ atHairline }) => atHairline)) return { code: "at-hairline" }
  return own.some((foil) => traitsOf(foil).hasCushion) ? { code: "cushion" } : null
}

function timeHabit({ minutes, overridden }: PlannedHeat, mixes: readonly TimedMix[]): HeatHabit | null {
  const usualMostMin = heatHabits.mostMin
  if (minutes <= usualMostMin || mixes.every(({ id }) => overridden?.time.includes(id))) return null
  return { code: "longer-than-usual", usualMostMin, askedMin: minutes }
}
