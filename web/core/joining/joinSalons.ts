import type { FoilKind } from "../../../geometry/section/section"
import { joiningFigures } from "../../../presets/weighing/joiningFigures"
import { usualPace } from "../chair/schedulePace"
import type { StartFigures } from "../document/salon"
import type { Weighing } from "../grams/calibration"
import { gramsStart } from "../grams/startBelief"
import { byFoilKind, foilKinds } from "../kinds/kindRecords"
import { joinGrams, salonSpread } from "./joinGrams"
import { type JoinedHalfTime, joinHalfTimes } from "./joinHalfTimes"
import { type JoinedPace, joinPaces } from "./joinPaces"
import type { LearnRow } from "./learnRow"

/** What a new salon starts from, and how far the joined ones differ. */
export type JoinedSalons = {
  start: StartFigures
  spread: {
    /** Salons that weighed, their weighings, and how far they differ in loss, soak and coat, as shares. */
    grams: { salons: number; weighings: number; shares: readonly number[] } | null
    halfTime: JoinedHalfTime | null
    pace: Readonly<Record<FoilKind, JoinedPace | null>>
  }
}

/** Several salons' rows as what a new one may start from. A figure that too few of them tell of is as it was. */
export function joinSalons(salons: readonly (readonly LearnRow[])[]): JoinedSalons {
  const weighed = salons.map(weighingsOf).filter(({ length }) => length > 0)
  const grams = weighed.length < joiningFigures.leastSalons ? null : joinGrams(weighed)
  const halfTime = joinHalfTimes(salons)
  const pace = byFoilKind((kind) => joinPaces(salons, kind))
  const isTimed = foilKinds.some((kind) => pace[kind])
  return {
    start: {
      salons: salons.length,
      grams: grams && gramsStart(grams),
      halfTimeMin: halfTime?.halfTimeMin ?? null,
      paceMin: isTimed ? byFoilKind((kind) => pace[kind]?.paceMin ?? usualPace("usual", kind)) : null,
    },
    spread: {
      grams: grams && {
        salons: weighed.length,
        weighings: weighed.flat().length,
        shares: salonSpread(grams),
      },
      halfTime,
      pace,
    },
  }
}

const weighingsOf = (rows: readonly LearnRow[]): Weighing[] =>
  rows.flatMap((row) =>
    row.row === "weighing"
      ? [{ panels: row.foils, hairG: row.hairG, strandAreaCm2: row.strandAreaCm2, productG: row.productG }]
      : [],
  )
