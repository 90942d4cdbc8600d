import { levelScale, liftReference, liftStopMin } from "../../../presets/timing/lift"

/** How one head might take a lightener: one point of the range of possibilities. */
export type LiftTraits = {
  /** Levels gained by the longest time, at the warmth of the scalp, with the developer the sheet prints them for. */
  printedLevels: number
  halfTimeMin: number
  lagMin: number
  strengthPower: number
  activationKJ: number
}

/** What is put on the hair, and under what. */
export type LiftConditions = {
  onHeadPercent: number
  temperatureC: number
  /** The product's longest time. */
  longestMin: number
  /** Levels the sheet prints for this developer: what it reaches by the longest time, never more than the high end. */
  printed: { low: number; high: number }
}

const gasConstantKJ = 0.008314462618
const kelvin = (celsius: number) => celsius + 273.15

/** How many times as fast at one temperature as at another: Arrhenius. */
export const temperatureFactor = (activationKJ: number, fromC: number, toC: number) =>
  Math.exp((activationKJ / gasConstantKJ) * (1 / kelvin(fromC) - 1 / kelvin(toC)))

/** The way back: the activation energy, kJ/mol, that makes a step of temperature so many times as fast. */
export const activationFrom = (factor: number, fromC: number, toC: number) =>
  (gasConstantKJ * Math.log(factor)) / (1 / kelvin(fromC) - 1 / kelvin(toC))

/** How many times as fast as at the reference strength. */
export const strengthFactor = (onHeadPercent: number, power: number) =>
  (onHeadPercent / liftReference.onHeadPercent) ** power

/** Minutes in which a first-order loss halves, from two readings. */
export const halfLifeMin = (before: number, after: number, minutes: number) =>
  (minutes * Math.LN2) / Math.log(before / after)

/** Levels gained after so many minutes on: nothing during the lag, then slower and slower, then a stop. */
export function levelsGained(traits: LiftTraits, conditions: LiftConditions, minutes: number): number {
  const share = shareGained(traits, halfTime(traits, conditions), Math.min(minutes, lastGainMin(conditions)))
  if (share === 0) return 0
  return Math.min(conditions.printed.high, (traits.printedLevels * share) / printedShare(traits, conditions))
}

/** Minutes on until so many levels are gained; infinite where they are not gained by the longest time. */
export function minutesToGain(traits: LiftTraits, conditions: LiftConditions, levels: number): number {
  if (levels <= 0) return 0
  if (levels > conditions.printed.high) return Number.POSITIVE_INFINITY
  const share = (levels / traits.printedLevels) * printedShare(traits, conditions)
  if (share >= 1) return Number.POSITIVE_INFINITY
  const minutes = traits.lagMin - halfTime(traits, conditions) * Math.log2(1 - share)
  return minutes <= lastGainMin(conditions) + 1e-9 ? minutes : Number.POSITIVE_INFINITY
}

/** Whether a level can be one to start from, to lift to or to see. */
export const isOnScale = (level: number) => level >= levelScale.darkest && level <= levelScale.lightest

const lastGainMin = ({ longestMin }: LiftConditions) => Math.min(longestMin, liftStopMin)

const shareGained = (traits: LiftTraits, halfTimeMin: number, minutes: number) =>
  1 - 2 ** (-Math.max(0, minutes - traits.lagMin) / halfTimeMin)

/** The sheet prints its lift for the usual warmth: the share of all possible lift that has then been gained. */
function printedShare(traits: LiftTraits, conditions: LiftConditions): number {
  const usual = { ...conditions, temperatureC: liftReference.temperatureC }
  return shareGained(traits, halfTime(traits, usual), lastGainMin(conditions))
}

const halfTime = (traits: LiftTraits, { onHeadPercent, temperatureC }: LiftConditions) =>
  traits.halfTimeMin /
  strengthFactor(onHeadPercent, traits.strengthPower) /
  temperatureFactor(traits.activationKJ, liftReference.temperatureC, temperatureC)
