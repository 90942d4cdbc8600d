import { legalLimitPercent } from "../../../presets/formula/developers"
import type { AdditiveSheet, DeveloperLift, ProductSheet } from "../../../presets/formula/productSheet"
import { mostDeveloperParts, mostMinutes } from "../../../presets/formula/sheetLimits"
import { levelScale } from "../../../presets/timing/lift"
import { labelVolume } from "./strength"

/** A field of a sheet that cannot be as it is. Parts are of developer to 1 of product; levels are of lift. */
export type SheetProblem =
  | { code: "no-name" }
  | { code: "no-ratio" }
  | { code: "ratio-impossible"; low: number; high: number }
  | { code: "ratio-backwards"; low: number; high: number }
  | { code: "ratio-upside-down"; low: number; high: number }
  | { code: "no-developers" }
  | { code: "developer-twice"; volume: number }
  | { code: "developer-impossible"; volume: number; mostVolume: number; mostPercent: number }
  | { code: "lift-impossible"; volume: number; low: number; high: number; mostLevels: number }
  | { code: "lift-falls"; volume: number; weakerVolume: number }
  | { code: "minutes-impossible"; field: MinuteField; minutes: number; least: number; most: number }
  | { code: "heat-past-longest" }
  | { code: "additive-no-name" }
  | { code: "additive-grams"; name: string; gPerG: number }
  | { code: "price-impossible" }

export type MinuteField = "longestMin" | "heatMin" | "potLifeMin"

/** Everything that keeps a sheet from being used; a field left empty (null) never does. */
export const sheetProblems = (sheet: ProductSheet): SheetProblem[] => [
  ...nameProblems(sheet),
  ...ratioProblems(sheet.ratio),
  ...(sheet.kind === "direct-toner" ? [] : developerProblems(sheet.developers)),
  ...minuteProblems(sheet),
  ...sheet.additives.flatMap(additiveProblems),
  ...priceProblems(sheet),
]

const nameProblems = ({ name }: ProductSheet): SheetProblem[] => (name.trim() ? [] : [{ code: "no-name" }])

function ratioProblems({ low, high }: ProductSheet["ratio"]): SheetProblem[] {
  const isRatio = (parts: number) => isBetween(parts, 0.01, mostDeveloperParts)
  if (low === 0 && high === 0) return [{ code: "no-ratio" }]
  if (!isRatio(low) || !isRatio(high)) return [{ code: "ratio-impossible", low, high }]
  if (low > high) return [{ code: "ratio-backwards", low, high }]
  return high < 1 ? [{ code: "ratio-upside-down", low, high }] : []
}

function developerProblems(developers: readonly DeveloperLift[]): SheetProblem[] {
  if (developers.length === 0) return [{ code: "no-developers" }]
  const volumes = developers.map(({ volume }) => volume)
  const twice = volumes.filter((volume, i) => volumes.indexOf(volume) < i)
  return [
    ...twice.map((volume): SheetProblem => ({ code: "developer-twice", volume })),
    ...developers.flatMap(liftProblems),
    ...fallingLift(developers),
  ]
}

function liftProblems({ volume, levels }: DeveloperLift): SheetProblem[] {
  const mostVolume = labelVolume(legalLimitPercent)
  if (!isBetween(volume, 1, mostVolume))
    return [{ code: "developer-impossible", volume, mostVolume, mostPercent: legalLimitPercent }]
  if (!levels) return []
  const { low, high } = levels
  const mostLevels = levelScale.lightest - levelScale.darkest
  return isBetween(low, 0, mostLevels) && isBetween(high, low, mostLevels)
    ? []
    : [{ code: "lift-impossible", volume, low, high, mostLevels }]
}

/** A stronger developer that lifts less is a slip of the pen. */
function fallingLift(developers: readonly DeveloperLift[]): SheetProblem[] {
  const stated = developers
    .flatMap(({ volume, levels }) => (levels ? [{ volume, high: levels.high }] : []))
    .sort((a, b) => a.volume - b.volume)
  return stated
    .slice(1)
    .flatMap(({ volume, high }, i): SheetProblem[] =>
      high < stated[i].high ? [{ code: "lift-falls", volume, weakerVolume: stated[i].volume }] : [],
    )
}

function minuteProblems(sheet: ProductSheet): SheetProblem[] {
  const outside = (["longestMin", "heatMin", "potLifeMin"] as const).flatMap((field): SheetProblem[] => {
    const minutes = sheet[field]
    const least = field === "heatMin" ? 0 : 1
    return minutes === null || isBetween(minutes, least, mostMinutes)
      ? []
      : [{ code: "minutes-impossible", field, minutes, least, most: mostMinutes }]
  })
  return outside.length > 0 ? outside : heatProblems(sheet)
}

const heatProblems = ({ heatMin, longestMin }: ProductSheet): SheetProblem[] =>
  heatMin !== null && longestMin !== null && heatMin > longestMin ? [{ code: "heat-past-longest" }] : []

const additiveProblems = ({ name, gPerG }: AdditiveSheet): SheetProblem[] => [
  ...(name.trim() ? [] : [{ code: "additive-no-name" as const }]),
  ...(isBetween(gPerG, 0, 1) ? [] : [{ code: "additive-grams" as const, name: name.trim(), gPerG }]),
]

const priceProblems = ({ price }: ProductSheet): SheetProblem[] =>
  price === null || (price.amount >= 0 && Number.isFinite(price.amount) && isBetween(price.forG, 1, 100_000))
    ? []
    : [{ code: "price-impossible" }]

const isBetween = (value: number, low: number, high: number) => value >= low && value <= high
