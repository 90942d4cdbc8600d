import { liftCeilingC } from "../../../presets/timing/lift"
import { heatHabits } from "../../../presets/timing/pace"
import { traitsOf } from "../kinds/kindRecords"
import { mixesUsed } from "./mixesUsed"
import type { Service } from "./scheduleInput"

/** Why heat is left out. */
export type HeatRefusal =
  | { code: "too-warm"; ceilingC: number; warmthC: number }
  | { code: "not-on-sheet" }
  | { code: "strong-mix"; mix: string; volume: number }
  | { code: "at-hairline" }
  | { code: "cushion" }
  | { code: "too-long"; mostMin: number; askedMin: number }
  | { code: "no-minutes" }

/** Why heat may not be used in this service, or null. The sheet decides, and common practice narrows it. */
export function heatRefusal({ foils, mixes, heat }: Service): HeatRefusal | null {
  if (!heat) return null
  const { minutes, warmthC } = heat
  const used = mixesUsed(mixes, foils)
  const mostMin = Math.min(heatHabits.mostMin, ...used.map(({ heatMostMin }) => heatMostMin))
  const strong = used.find(({ developerVolume }) => developerVolume >= heatHabits.forbiddenVolume)
  if (warmthC !== null && warmthC > liftCeilingC) return { code: "too-warm", ceilingC: liftCeilingC, warmthC }
  if (mostMin <= 0) return { code: "not-on-sheet" }
  if (strong) return { code: "strong-mix", mix: strong.id, volume: strong.developerVolume }
  if (foils.some(({ zone }) => zone === "hairline")) return { code: "at-hairline" }
  if (foils.some((foil) => traitsOf(foil).hasCushion)) return { code: "cushion" }
  if (minutes > mostMin) return { code: "too-long", mostMin, askedMin: minutes }
  return minutes > 0 ? null : { code: "no-minutes" }
}
