import type { LearnRow } from "../../web/core/joining/learnRow"
import { levelsGained } from "../../web/core/lift/lift"
import { drawNeed, type SalonDice } from "./drawnSalon"

/** Salons of known truth: middles of loss, soak and coat, how far salons differ in each, and how their weighings scatter. */
export const knownTruth = {
  middles: [0.65, 2.6, 2.9],
  spread: 0.1,
  /** As a share of the grams, itself a fifth more or less from salon to salon. */
  scatter: 0.08,
  /** Half times by ratio: minutes, from salon to salon, and from head to head within one. */
  halfTimeMin: 13,
  halfTimeSpread: { salons: 0.1, heads: 0.2 },
  /** Minutes a slice: from salon to salon, from hands to hands, and from foil to foil, by ratio. */
  sliceMin: 1.8,
  paceSpread: { salons: 0.15, hands: 0.1, foils: 0.3 },
}

/** A salon's own figures, which weigh a bowl whenever asked. */
export function drawKnownSalon(dice: SalonDice) {
  const { middles, spread, scatter } = knownTruth
  const [loss, soak, coat] = middles.map((middle) => middle * (1 + spread * dice.normal()))
  const share = scatter * Math.exp(0.2 * dice.normal())
  return () => {
    const need = drawNeed(dice)
    const trueG = loss * need.panels + soak * need.hairG + (coat * need.strandAreaCm2) / 1000
    return { ...need, productG: trueG * (1 + share * dice.normal()) }
  }
}

/** Weighed bowls of one salon, as rows that it passes on. */
export const bowlRows = (dice: SalonDice, bowls: number): LearnRow[] => {
  const weigh = drawKnownSalon(dice)
  return Array.from({ length: bowls }, () => {
    const { panels, hairG, strandAreaCm2, productG } = weigh()
    return { row: "weighing", kind: null, foils: panels, hairG, strandAreaCm2, productG }
  })
}

const test = { onHeadPercent: 6, printedLowLevels: 5, printedHighLevels: 6, longestMin: 45, startLevel: 4 }

/** Strands of one salon, four looks each, with an eye off by half a level that writes halves down. */
export function strandRows(dice: SalonDice, strands: number): LearnRow[] {
  const { halfTimeMin, halfTimeSpread } = knownTruth
  const ofSalon = Math.log(halfTimeMin) + halfTimeSpread.salons * dice.normal()
  return Array.from({ length: strands }, (_, at) => {
    const traits = {
      halfTimeMin: Math.exp(ofSalon + halfTimeSpread.heads * dice.normal()),
      printedLevels: 5.5 + 0.5 * Math.max(-1, Math.min(1, dice.normal())),
      lagMin: 3.5 + 1.5 * Math.max(-2, Math.min(2, dice.normal())),
      strengthPower: 0.75,
      activationKJ: 62,
    }
    const conditions = {
      onHeadPercent: 6,
      temperatureC: 32,
      longestMin: 45,
      printed: { low: test.printedLowLevels, high: test.printedHighLevels },
    }
    return [8, 14, 20, 30].map((minutes): LearnRow => {
      const level = test.startLevel + levelsGained(traits, conditions, minutes) + 0.5 * dice.normal()
      return {
        row: "strand",
        strand: at + 1,
        ...test,
        minutes,
        level: Math.min(10, Math.max(1, Math.round(2 * level) / 2)),
      }
    })
  }).flat()
}

/** Paces of one salon's hands, each over so many timed slices. */
export function paceRows(dice: SalonDice, hands: number, foils: number): LearnRow[] {
  const { sliceMin, paceSpread } = knownTruth
  const ofSalon = Math.log(sliceMin) + paceSpread.salons * dice.normal()
  return Array.from({ length: hands }, (): LearnRow => {
    const truth = Math.exp(ofSalon + paceSpread.hands * dice.normal())
    const timed = Array.from({ length: foils }, () => truth * (1 + paceSpread.foils * dice.normal()))
    const mean = timed.reduce((sum, each) => sum + each, 0) / foils
    const squares = timed.reduce((sum, each) => sum + (each - mean) ** 2, 0)
    return {
      row: "pace",
      kind: "slice",
      foils,
      minutes: mean,
      spreadMin: Math.sqrt(squares / (foils - 1)),
    }
  })
}
