import type { Range } from "../../../geometry/hair/tradeFigures"
import { liftPriors } from "../../../presets/timing/lift"
import type { LiftConditions, LiftTraits } from "./lift"
import { levelsGained, minutesToGain } from "./lift"

/** One possibility and how likely it is; the weights of a grid add up to 1. */
export type Weighted<T> = { of: T; weight: number }

type Span = { low: number; high: number }

/** Four in five possibilities lie within a range, one in ten below, one in ten above. */
const rangeShares = [0.1, 0.5, 0.9] as const

/**
 * What is known of lift before anything has been seen: every combination of the priors, weighed. A half time that other
 * salons told takes the place of the assumed one.
 */
export function priorTraits(
  printed: Span,
  halfTimeMin: Span = liftPriors.halfTimeMin,
): Weighted<LiftTraits>[] {
  const grid: Weighted<LiftTraits>[] = []
  for (const half of halfTimes(halfTimeMin))
    for (const levels of printedLevels(printed))
      for (const lag of bell(liftPriors.lagMin, { steps: 5, least: 0 }))
        for (const power of threeOf(liftPriors.strengthPower))
          for (const activation of threeOf(liftPriors.activationKJ))
            grid.push({
              of: {
                printedLevels: levels.of,
                halfTimeMin: half.of,
                lagMin: lag.of,
                strengthPower: power.of,
                activationKJ: activation.of,
              },
              weight: half.weight * levels.weight * lag.weight * power.weight * activation.weight,
            })
  return normalised(grid)
}

/** Bayes on a grid: each possibility is weighed by how well it foretells what was seen, with a normal error. */
export function weighByRows<T>(
  grid: readonly Weighted<T>[],
  rows: readonly { minutes: number; seen: number }[],
  { foretell, sd }: { foretell: (of: T, minutes: number) => number; sd: number },
): Weighted<T>[] {
  const misses = grid.map(({ of }) => sumOf(rows, ({ minutes, seen }) => (foretell(of, minutes) - seen) ** 2))
  const least = misses.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  return normalised(
    grid.map(({ of, weight }, at) => ({
      of,
      weight: weight * Math.exp((least - misses[at]) / (2 * sd * sd)),
    })),
  )
}

/** Minutes on until so many levels are gained; an end is infinite where the longest time comes first. */
export const readyRange = (
  grid: readonly Weighted<LiftTraits>[],
  conditions: LiftConditions,
  levels: number,
) => rangeOf(grid.map(({ of, weight }) => ({ of: minutesToGain(of, conditions, levels), weight })))

/** Levels gained after so many minutes on: the curve and its band. */
export const gainedRange = (
  grid: readonly Weighted<LiftTraits>[],
  conditions: LiftConditions,
  minutes: number,
) => rangeOf(grid.map(({ of, weight }) => ({ of: levelsGained(of, conditions, minutes), weight })))

export function rangeOf(values: readonly Weighted<number>[]): Range {
  const sorted = [...values].sort((a, b) => a.of - b.of || 0)
  const [low, mid, high] = rangeShares.map((share) => quantile(sorted, share))
  return { low, mid, high }
}

function quantile(sorted: readonly Weighted<number>[], share: number): number {
  let below = 0
  for (const { of, weight } of sorted) {
    below += weight
    if (below >= share) return of
  }
  return sorted[sorted.length - 1].of
}

/** Half times are spread by ratio: half as long is as far off as twice as long. */
function halfTimes({ low, high }: Span): Weighted<number>[] {
  const logs = bell({ low: Math.log(low), high: Math.log(high) }, { steps: 15 })
  return logs.map(({ of, weight }) => ({ of: Math.exp(of), weight }))
}

/** The sheet's lift is a ceiling: hair may fall short of it, never go past it. */
function printedLevels({ low, high }: Span): Weighted<number>[] {
  const middle = (low + high) / 2
  const half = Math.max((high - low) / 2, 0.5)
  return bell({ low: middle - half, high: middle + half }, { steps: 9, least: high / 9, most: high })
}

/** Three stand for a normal spread whose middle two thirds are the span, with its variance (Gauss and Hermite; Abramowitz, Stegun 25.4.46). */
function threeOf({ low, high }: Span): Weighted<number>[] {
  const [middle, sd] = [(low + high) / 2, (high - low) / 2]
  return [-1, 0, 1].map((step) => ({
    of: middle + step * Math.sqrt(3) * sd,
    weight: step === 0 ? 2 / 3 : 1 / 6,
  }))
}

/** Even steps over a normal spread whose middle two thirds are the span; the two ends stand for half a step each (trapezium rule). */
function bell({ low, high }: Span, { steps, least, most }: { steps: number; least?: number; most?: number }) {
  const [middle, sd] = [(low + high) / 2, (high - low) / 2]
  const from = Math.max(middle - 2.5 * sd, least ?? Number.NEGATIVE_INFINITY)
  const to = Math.min(middle + 2.5 * sd, most ?? Number.POSITIVE_INFINITY)
  return Array.from({ length: steps }, (_, step): Weighted<number> => {
    const of = from + ((to - from) * step) / (steps - 1)
    const part = step === 0 || step === steps - 1 ? 0.5 : 1
    return { of, weight: part * Math.exp(-(((of - middle) / sd) ** 2) / 2) }
  })
}

export function normalised<T>(grid: readonly Weighted<T>[]): Weighted<T>[] {
  const whole = sumOf(grid, ({ weight }) => weight)
  return grid.map(({ of, weight }) => ({ of, weight: weight / whole }))
}

const sumOf = <T>(values: readonly T[], value: (of: T) => number) =>
  values.reduce((total, of) => total + value(of), 0)
