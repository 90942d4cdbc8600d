import { isCoatedWith } from "../../../geometry/section/section"
import { goalAtMin } from "./scheduleHeat"
import type { Service, TimedFoil, TimedMix } from "./scheduleInput"
import { longestOn, readyOf } from "./scheduleInput"
import { firstContacts } from "./schedulePlacing"

/**
 * A run of foils of one working section, which stays together. Option 0 is the mix it has; the others are weaker,
 * none of them so weak that the goal is not reached by the longest time.
 */
export type Block = { options: readonly (readonly TimedFoil[])[] }
export type Choice = { block: number; option: number }
/** Blocks in order. A block is weakened only if all before it are: late bowls keep their strength. */
export type Arrangement = readonly Choice[]

export type Puzzle = { service: Service; onAlready: readonly TimedFoil[]; blocks: readonly Block[] }
/** How far apart the foils come to the goal, and how long they wait for the last in all. */
export type Spread = { first: Ready; last: Ready; waitMin: number; lastOnMin: number }
type Ready = { id: string; atMin: number }

export function puzzleOf(service: Service, mayWeaken: boolean): Puzzle {
  const isOn = ({ id }: TimedFoil) => service.soFar?.onAtMin[id] !== undefined
  const runs = runsOf(service.foils.filter((foil) => !isOn(foil)))
  const blocks = runs.map((foils) => ({ options: mayWeaken ? optionsOf(foils, service) : [foils] }))
  return { service, onAlready: service.foils.filter(isOn), blocks }
}

export const asGiven = ({ blocks }: Puzzle): Arrangement => blocks.map((_, block) => ({ block, option: 0 }))

export function arranged({ service, onAlready, blocks }: Puzzle, arrangement: Arrangement): Service {
  const foils = [...onAlready]
  for (const { block, option } of arrangement) foils.push(...blocks[block].options[option])
  return { ...service, foils, bowls: null }
}

/** When the foils come to the goal. At least one foil must still be open. */
export function readySpread(service: Service): Spread {
  const open = [...firstContacts(service)].filter(
    ({ foil }) => service.soFar?.offAtMin[foil.id] === undefined,
  )
  const ready = open.map((placed): Ready => {
    const { foil, onAtMin } = placed
    return { id: foil.id, atMin: foil.roots?.later ? goalAtMin(service, placed) : onAtMin + timeOn(foil) }
  })
  const first = ready.reduce((a, b) => (b.atMin < a.atMin ? b : a))
  const last = ready.reduce((a, b) => (b.atMin > a.atMin ? b : a))
  const waitMin = ready.reduce((total, { atMin }) => total + last.atMin - atMin, 0)
  return {
    first,
    last,
    waitMin,
    lastOnMin: open.reduce((latest, { onAtMin }) => Math.max(latest, onAtMin), 0),
  }
}

export const spreadMin = ({ first, last }: Spread) => last.atMin - first.atMin

/** Expected minutes on: a foil that is not ready by its longest time comes off then. */
export const timeOn = (foil: TimedFoil) => Math.min(readyOf(foil).mid, longestOn(foil))

/** The strength that the hairline may not pass: the strongest mix used off it. */
export function baseStrength({ foils, mixes }: Service): number {
  const elsewhere = foils.filter(({ zone }) => zone !== "hairline")
  return elsewhere.length === 0
    ? Number.POSITIVE_INFINITY
    : Math.max(...elsewhere.map((foil) => strengthOf(mixes, foil)))
}

function runsOf(foils: readonly TimedFoil[]): TimedFoil[][] {
  const runs: TimedFoil[][] = []
  for (const foil of foils) {
    const run = runs.at(-1)
    if (run && run[0].group === foil.group) run.push(foil)
    else runs.push([foil])
  }
  return runs
}

function optionsOf(foils: readonly TimedFoil[], service: Service): (readonly TimedFoil[])[] {
  const weaker = [...service.mixes]
    .sort((a, b) => b.onHeadPercent - a.onHeadPercent)
    .filter((mix) => isWeakerForAll(foils, mix, service.mixes))
    .map((mix) => foils.map((foil) => ({ ...foil, mix: mix.id })))
  const allowed = [foils, ...weaker].filter((option) => isHairlineHeld(option, service))
  return allowed.length > 0 ? allowed : [foils]
}

/** What has two mixes keeps both: nobody weakens one half of a strand. */
const isWeakerForAll = (
  foils: readonly TimedFoil[],
  { id, onHeadPercent }: TimedMix,
  mixes: readonly TimedMix[],
) =>
  foils.every(
    (foil) =>
      !foil.roots && onHeadPercent < strengthOf(mixes, foil) && foil.readyMin[id]?.mid <= foil.limitMin,
  )

function isHairlineHeld(foils: readonly TimedFoil[], service: Service): boolean {
  const most = baseStrength(service)
  return foils.every((foil) => foil.zone !== "hairline" || strengthOf(service.mixes, foil) <= most)
}

/** Of the strongest mix on a foil. */
const strengthOf = (mixes: readonly TimedMix[], foil: TimedFoil) =>
  mixes.reduce(
    (most, { id, onHeadPercent }) => (isCoatedWith(foil, id) ? Math.max(most, onHeadPercent) : most),
    0,
  )
