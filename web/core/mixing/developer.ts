import { developerHabits } from "../../../presets/formula/developers"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { levelScale } from "../../../presets/timing/lift"

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

/** What asks for a gentler developer. */
export type GentleReason = "hairline" | "fine" | "porous" | "lightened"

/** One step weaker, with why, and how many levels it falls short of the goal by its sheet (0: none). */
export type WeakerOffer = Row & { reasons: readonly GentleReason[]; shortByLevels: number }
export type Stage = Row & { fromLevel: number; toLevel: number }

/** Why a developer is proposed, or none. Levels of the scale; a lift is a difference of levels. */
export type DeveloperReason =
  | { code: "lift-printed"; liftLevels: number; volume: number; printed: Levels }
  | { code: "more-than-one-visit"; liftLevels: number; mostLevels: number; volume: number; visits: number }
  | { code: "level-now-unknown" }
  | { code: "target-unknown" }
  | { code: "no-lift-printed"; product: string }
  | { code: "target-beyond-scale"; level: number; lightestLevel: number }
  | { code: "target-darker"; fromLevel: number; toLevel: number }
  | { code: "at-target"; level: number }
  | { code: "no-lift-allowed"; product: string }

/** What is proposed. Where a level is not known nothing is: no strength follows from not knowing. */
export type DeveloperChoice =
  | (Row & { kind: "chosen"; why: DeveloperReason; weaker: WeakerOffer | null })
  | { kind: "stages"; why: DeveloperReason; stages: readonly Stage[]; strongerVolume: number | null }
  | { kind: "unknown"; why: DeveloperReason }
  | { kind: "none"; why: DeveloperReason }

/** The weakest developer that reaches the goal by the sheet, or stages; never one above the ceiling. */
export function chooseDeveloper(sheet: ProductSheet, wish: LiftWish): DeveloperChoice {
  const { fromLevel, liftToLevel } = wish
  if (fromLevel === null || liftToLevel === null) return unknown(missingLevel(wish))
  if (liftToLevel > levelScale.lightest)
    return none({ code: "target-beyond-scale", level: liftToLevel, lightestLevel: levelScale.lightest })
  if (liftToLevel < fromLevel) return none({ code: "target-darker", fromLevel, toLevel: liftToLevel })
  if (liftToLevel === fromLevel) return none({ code: "at-target", level: fromLevel })
  const rows = liftRows(sheet)
  if (rows.length === 0) return unknown({ code: "no-lift-printed", product: sheet.name })
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
  const why: DeveloperReason = {
    code: "lift-printed",
    liftLevels: levels,
    volume: row.volume,
    printed: row.levels,
  }
  return { kind: "chosen", ...row, why, weaker: oneStepWeaker(rows, row, wish, levels) }
}

function oneStepWeaker(rows: readonly Row[], row: Row, wish: LiftWish, levels: number): WeakerOffer | null {
  const reasons = gentleReasons(wish)
  const weaker = rows[rows.indexOf(row) - 1]
  if (reasons.length === 0 || !weaker) return null
  return { ...weaker, reasons, shortByLevels: Math.max(0, levels - weaker.levels.high) }
}

const gentleReasons = (wish: LiftWish): GentleReason[] =>
  (["hairline", "fine", "porous", "lightened"] as const).filter((reason) => wish[reason])

function staged(
  sheet: ProductSheet,
  rows: readonly Row[],
  fromLevel: number,
  toLevel: number,
): DeveloperChoice {
  const most = Math.max(0, ...rows.map(({ levels }) => levels.high))
  if (most === 0) return none({ code: "no-lift-allowed", product: sheet.name })
  const levels = toLevel - fromLevel
  const stages = stagesOf(rows, fromLevel, toLevel, Math.ceil(levels / most))
  const strongest = rows[rows.length - 1].volume
  const strongerVolume = weakestReaching(liftRows(sheet), levels)?.volume ?? null
  const why: DeveloperReason = {
    code: "more-than-one-visit",
    liftLevels: levels,
    mostLevels: most,
    volume: strongest,
    visits: stages.length,
  }
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

const unknown = (why: DeveloperReason): DeveloperChoice => ({ kind: "unknown", why })
const none = (why: DeveloperReason): DeveloperChoice => ({ kind: "none", why })

const missingLevel = ({ fromLevel }: LiftWish): DeveloperReason =>
  fromLevel === null ? { code: "level-now-unknown" } : { code: "target-unknown" }
