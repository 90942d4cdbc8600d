import { developerHabits } from "../../../presets/formula/developers"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { levelScale } from "../../../presets/timing/lift"
import { numberText } from "../text/numberText"

/** The hair of one section: its level now, the level to lift to, and what asks for gentleness. */
export type LiftWish = {
  fromLevel: number | null
  liftToLevel: number | null
  hairline: boolean
  fine: boolean
  porous: boolean
  lightened: boolean
}

type Levels = { low: number; high: number }
type Row = { volume: number; levels: Levels }

/** One step weaker, with why, and how many levels it falls short of the goal by its sheet (0: none). */
export type WeakerOffer = Row & { reasons: readonly string[]; shortByLevels: number }
export type Stage = Row & { fromLevel: number; toLevel: number }

/** What is proposed. `why` is one sentence for the screen and the sheet. */
export type DeveloperChoice =
  | (Row & { kind: "chosen"; why: string; weaker: WeakerOffer | null })
  | { kind: "stages"; why: string; stages: readonly Stage[]; strongerVolume: number | null }
  | { kind: "unknown"; why: string; usualVolume: number | null }
  | { kind: "none"; why: string }

/** The weakest developer that reaches the goal by the sheet, or stages; never one above the ceiling. */
export function chooseDeveloper(sheet: ProductSheet, wish: LiftWish): DeveloperChoice {
  const { fromLevel, liftToLevel } = wish
  if (fromLevel === null || liftToLevel === null) return unknown(sheet, missingLevel(wish))
  if (liftToLevel > levelScale.lightest) return none(beyondScale(liftToLevel))
  if (liftToLevel < fromLevel) return none(darkerGoal(fromLevel, liftToLevel))
  if (liftToLevel === fromLevel)
    return none(`The hair is at level ${numberText(fromLevel)} already; it needs tone, not lift.`)
  const rows = liftRows(sheet)
  if (rows.length === 0)
    return unknown(sheet, `${sheet.name} states no levels of lift; type them in from the tub.`)
  const ceiling = wish.hairline ? developerHabits.hairlineCeilingVolume : developerHabits.ceilingVolume
  const usable = rows.filter(({ volume, levels }) => volume <= ceiling && levels.high > 0)
  const reaching = weakestReaching(usable, liftToLevel - fromLevel)
  return reaching
    ? chosen(usable, reaching, wish, liftToLevel - fromLevel)
    : staged(sheet, usable, fromLevel, liftToLevel)
}

const liftRows = ({ developers }: ProductSheet): Row[] =>
  developers
    .flatMap(({ volume, levels }) => (levels ? [{ volume, levels }] : []))
    .sort((a, b) => a.volume - b.volume)

const weakestReaching = (rows: readonly Row[], levels: number) =>
  rows.find((row) => row.levels.high >= levels)

function chosen(rows: readonly Row[], row: Row, wish: LiftWish, levels: number): DeveloperChoice {
  const why = `${countLevels(levels)} to lift; ${printed(row)}.`
  return { kind: "chosen", ...row, why, weaker: oneStepWeaker(rows, row, wish, levels) }
}

function oneStepWeaker(rows: readonly Row[], row: Row, wish: LiftWish, levels: number): WeakerOffer | null {
  const reasons = gentleReasons(wish)
  const weaker = rows[rows.indexOf(row) - 1]
  if (reasons.length === 0 || !weaker) return null
  return { ...weaker, reasons, shortByLevels: Math.max(0, levels - weaker.levels.high) }
}

const gentleReasons = ({ hairline, fine, porous, lightened }: LiftWish): string[] => [
  ...(hairline ? ["hair at the hairline is fine and lifts first"] : []),
  ...(fine ? ["fine hair lifts sooner and stretches sooner"] : []),
  ...(porous ? ["porous hair takes product up faster"] : []),
  ...(lightened ? ["hair lightened before lets more in"] : []),
]

function staged(
  sheet: ProductSheet,
  rows: readonly Row[],
  fromLevel: number,
  toLevel: number,
): DeveloperChoice {
  const most = Math.max(0, ...rows.map(({ levels }) => levels.high))
  if (most === 0)
    return none(
      `${sheet.name} states no lift with a developer that may be used here; choose another product.`,
    )
  const levels = toLevel - fromLevel
  const stages = stagesOf(rows, fromLevel, toLevel, Math.ceil(levels / most))
  const strongest = rows[rows.length - 1].volume
  const strongerVolume = weakestReaching(liftRows(sheet), levels)?.volume ?? null
  const why = `${countLevels(levels)} is more than one visit gives: up to ${numberText(most)} with ${strongest} vol, the strongest used here. Plan ${stages.length} visits and look at the hair between them.`
  return { kind: "stages", why, stages, strongerVolume }
}

/** Visits share the levels as evenly as whole levels allow, the first taking most: the hair is strongest then. */
function stagesOf(rows: readonly Row[], fromLevel: number, toLevel: number, visits: number): Stage[] {
  if (visits === 0) return []
  const share = (toLevel - fromLevel) / visits
  const most = Math.max(...rows.map(({ levels }) => levels.high))
  const middle = visits === 1 ? toLevel : fromLevel + Math.min(most, Math.ceil(share))
  const row = weakestReaching(rows, middle - fromLevel)
  if (!row) throw new Error(`No developer lifts ${middle - fromLevel} levels, of at most ${most}`)
  return [{ ...row, fromLevel, toLevel: middle }, ...stagesOf(rows, middle, toLevel, visits - 1)]
}

/** The usual strength where the goal cannot be worked out, if the sheet allows it. */
function unknown({ developers }: ProductSheet, why: string): DeveloperChoice {
  const isUsual = developers.some(({ volume }) => volume === developerHabits.usualVolume)
  return { kind: "unknown", why, usualVolume: isUsual ? developerHabits.usualVolume : null }
}

const none = (why: string): DeveloperChoice => ({ kind: "none", why })

const missingLevel = ({ fromLevel }: LiftWish) =>
  fromLevel === null
    ? "The level now is not known; write it down for this hair."
    : "The level to lift to is not known; choose it."

const darkerGoal = (from: number, to: number) =>
  `Level ${numberText(to)} is darker than the hair now, ${numberText(from)}; lightener cannot darken. Choose a lighter level, or plan a lowlight.`

const beyondScale = (level: number) =>
  `Level ${numberText(level)} is beyond the scale; choose ${levelScale.lightest} or less.`

const printed = ({ volume, levels }: Row) =>
  levels.low === levels.high
    ? `the sheet states ${numberText(levels.low)} for ${volume} vol`
    : `the sheet states ${numberText(levels.low)} to ${numberText(levels.high)} for ${volume} vol`

const countLevels = (levels: number) => `${numberText(levels)} ${levels === 1 ? "level" : "levels"}`
