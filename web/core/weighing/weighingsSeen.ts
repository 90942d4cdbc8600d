import type { Range } from "../../../geometry/hair/tradeFigures"
import type { StartFigures } from "../document/salon"
import { gramsFor, learn, learntFigures, type ProductFigures } from "../grams/calibration"
import { startBelief } from "../grams/startBelief"
import { doubtfulWeighings } from "./doubtfulWeighings"
import type { KeptWeighing } from "./salonRecord"
import { type Trust, weighingsNeeded } from "./weighingsNeeded"

/** A weighing beside what the figures, as learnt, expect of it. */
export type SeenWeighing = { row: KeptWeighing; expectedG: Range; isDoubted: boolean }

export type WeighingsSeen = {
  rows: readonly SeenWeighing[]
  /** Each by itself, with its 80 % range: before anything was weighed, and now. */
  start: ProductFigures
  figures: ProductFigures
  trust: Trust
  /** How many of them count. */
  counted: number
}

/** What a list of weighings comes to. Rows left out are shown, but nothing is learnt from them. */
export function weighingsSeen(weighings: readonly KeptWeighing[], start?: StartFigures): WeighingsSeen {
  const prior = startBelief(start)
  const counted = weighings.filter(({ leftOut }) => !leftOut)
  const belief = learn(prior, counted)
  const doubted = new Set(doubtfulWeighings(prior, counted).map(({ index }) => counted[index].id))
  return {
    rows: weighings.map((row) => ({
      row,
      expectedG: gramsFor(belief, row, prior),
      isDoubted: doubted.has(row.id),
    })),
    start: learntFigures(prior),
    figures: learntFigures(belief),
    trust: weighingsNeeded(prior, counted),
    counted: counted.length,
  }
}
