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

/** Whether hair is expected to have gained so many levels with a developer by the product's longest time. */
export type Expects = (volume: number, liftLevels: number) => boolean

/** What asks for a gentler developer. */
export type GentleReason = "hairline" | "fine" | "porous" | "lightened"

/** One step weaker, with why, and how many levels it falls short of the goal by its sheet (0: none). */
export type WeakerOffer = Row & { reasons: readonly GentleReason[]; shortByLevels: number }
export type Stage = Row & { fromLevel: number; toLevel: number }

/** Why a developer is proposed, or none. Levels of the scale; a lift is a difference of levels. */
export type DeveloperReason =
  | { code: "lift-printed"; liftLevels: number; volume: number; printed: Levels }
  /** A weaker developer prints the lift, but is not expected to give it in time. */
  | { code: "lift-expected"; liftLevels: number; volume: number; weakerVolume: number }
  | { code: "not-in-one-visit"; liftLevels: number; volume: number; visits: number }
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

/**
 * The weakest developer that reaches the goal by the sheet and is expected to by the clock, or the visits it takes; never
 * one above the ceiling, and never one above the usual where a weaker one prints the lift.
 */
export function chooseDeveloper(
  sheet: ProductSheet,
  wish: LiftWish,
  expects: Expects = () => true,
): DeveloperChoice {
  const { fromLevel, liftToLevel } = wish
  if (fromLevel === null || liftToLevel === null) return unknown(missingLevel(wish))
  if (liftToLevel > levelScale.lightest)
    return none({ code: "target-beyond-scale", level: liftToLevel, lightestLevel: levelScale.lightest })
  if (liftToLevel < fromLevel) return none({ code: "target-darker", fromLevel, toLevel: liftToLevel })
  if (liftToLevel === fromLevel) return none({ code: "at-target", level: fromLevel })
  const rows = liftRows(sheet)
  if (rows.length === 0) return unknown({ code: "no-lift-printed", product: sheet.name })
  const usable = { rows: usableRows(rows, wish), expects }
  const levels = liftToLevel - fromLevel
  const row = rowFor(usable, levels)
  return row
    ? chosen(usable, row, wish, levels)
    : staged(usable, { sheet, all: rows, fromLevel, toLevel: liftToLevel })
}

type Usable = { rows: readonly Row[]; expects: Expects }

const liftRows = ({ developers }: ProductSheet): Row[] =>
  developers
    .flatMap(({ volume, levels }) => (levels ? [{ volume, levels }] : []))
    .sort((a, b) => a.volume - b.volume)

function usableRows(rows: readonly Row[], { hairline }: LiftWish): Row[] {
  const ceiling = hairline ? developerHabits.hairlineCeilingVolume : developerHabits.ceilingVolume
  return rows.filter(({ volume, levels }) => volume <= ceiling && levels.high > 0)
}

const weakestReaching = (rows: readonly Row[], levels: number) =>
  rows.find((row) => row.levels.high >= levels)

/** The weakest that prints the lift; where that is not expected in time, the next up to the usual strength that is. */
function rowFor({ rows, expects }: Usable, levels: number): Row | undefined {
  const weakest = weakestReaching(rows, levels)
  if (!weakest) return undefined
  const most = Math.max(weakest.volume, developerHabits.usualVolume)
  return rows.slice(rows.indexOf(weakest)).find(({ volume }) => volume <= most && expects(volume, levels))
}

function chosen({ rows }: Usable, row: Row, wish: LiftWish, liftLevels: number): DeveloperChoice {
  const { volume, levels: printed } = row
  const weakest = weakestReaching(rows, liftLevels) ?? row
  const why: DeveloperReason =
    weakest === row
      ? { code: "lift-printed", liftLevels, volume, printed }
      : { code: "lift-expected", liftLevels, volume, weakerVolume: weakest.volume }
  return { kind: "chosen", ...row, why, weaker: oneStepWeaker(rows, row, wish, liftLevels) }
}

function oneStepWeaker(rows: readonly Row[], row: Row, wish: LiftWish, levels: number): WeakerOffer | null {
  const reasons = gentleReasons(wish)
  const weaker = rows[rows.indexOf(row) - 1]
  if (reasons.length === 0 || !weaker) return null
  return { ...weaker, reasons, shortByLevels: Math.max(0, levels - weaker.levels.high) }
}

const gentleReasons = (wish: LiftWish): GentleReason[] =>
  (["hairline", "fine", "porous", "lightened"] as const).filter((reason) => wish[reason])

type Way = { sheet: ProductSheet; all: readonly Row[]; fromLevel: number; toLevel: number }

function staged(usable: Usable, { sheet, all, fromLevel, toLevel }: Way): DeveloperChoice {
  const { rows } = usable
  const mostLevels = Math.max(0, ...rows.map(({ levels }) => levels.high))
  if (mostLevels === 0) return none({ code: "no-lift-allowed", product: sheet.name })
  const liftLevels = toLevel - fromLevel
  const stages = fewestStages(usable, fromLevel, toLevel, Math.ceil(liftLevels / mostLevels))
  if (!stages) return none({ code: "no-lift-allowed", product: sheet.name })
  const weakest = weakestReaching(rows, liftLevels)
  const visits = stages.length
  const { volume } = weakest ?? rows[rows.length - 1]
  const why: DeveloperReason = weakest
    ? { code: "not-in-one-visit", liftLevels, volume, visits }
    : { code: "more-than-one-visit", liftLevels, mostLevels, volume, visits }
  return { kind: "stages", why, stages, strongerVolume: weakestReaching(all, liftLevels)?.volume ?? null }
}

/** Most visits that are ever laid out: with more, the goal is another service. Assumption. */
const mostVisits = 6

/** As few visits as each of which has a developer. */
function fewestStages(usable: Usable, fromLevel: number, toLevel: number, least: number): Stage[] | null {
  for (let visits = least; visits <= mostVisits; visits++) {
    const stages = stagesOf(usable, fromLevel, toLevel, visits)
    if (stages) return stages
  }
  return null
}

/** Visits share the levels as evenly as whole levels allow, the first taking most: the hair is strongest then. */
function stagesOf(usable: Usable, fromLevel: number, toLevel: number, visits: number): Stage[] | null {
  if (visits === 0) return []
  const share = (toLevel - fromLevel) / visits
  const most = Math.max(...usable.rows.map(({ levels }) => levels.high))
  const middle = visits === 1 ? toLevel : fromLevel + Math.min(most, Math.ceil(share))
  const row = rowFor(usable, middle - fromLevel)
  const rest = row && middle < toLevel + 1e-9 ? stagesOf(usable, middle, toLevel, visits - 1) : null
  return row && rest ? [{ ...row, fromLevel, toLevel: middle }, ...rest] : null
}

const unknown = (why: DeveloperReason): DeveloperChoice => ({ kind: "unknown", why })
const none = (why: DeveloperReason): DeveloperChoice => ({ kind: "none", why })

const missingLevel = ({ fromLevel }: LiftWish): DeveloperReason =>
  fromLevel === null ? { code: "level-now-unknown" } : { code: "target-unknown" }
