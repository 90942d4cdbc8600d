import { addRanges } from "../../../geometry/hair/product"
import type { Range } from "../../../geometry/hair/tradeFigures"
import { bowlFigures } from "../../../presets/formula/bowlFigures"
import { type Amounts, mixAmounts, type Recipe, toMixG } from "./mixAmounts"

/** A foil as its bowl sees it. Minute 0 is when the first foil is begun. */
export type BowlFoil = {
  id: string
  mapNumber?: number
  productG: Range
  startMin: number
  placeMin: number
  /** Its bowl is mixed for it: no foil before it shares that bowl. */
  startsBowl?: boolean
}

/** A bowl: when to mix it, what goes in, whom it serves, in order. */
export type Bowl = Amounts & { atMin: number; wantedG: Range; sections: readonly string[] }

/** How far one bowl may go: how long it may be used, and the most grams mixed at once. */
export type BowlLimits = { potLifeMin: number; mostMixG: number }

/** Foils placed one after the other: when each is begun. */
export function placedInTurn<T extends { placeMin: number }>(
  foils: readonly T[],
): (T & { startMin: number })[] {
  let startMin = 0
  return foils.map((foil) => {
    const placed = { ...foil, startMin }
    startMin += foil.placeMin
    return placed
  })
}

/**
 * The foils of one mix, in order of application, shared out to bowls so that the least is mixed in all: each
 * planned at the upper figure, and none older at its last foil than the pot life. A single foil is always let be.
 */
export function planBowls(foils: readonly BowlFoil[], recipe: Recipe, limits: BowlLimits): Bowl[] {
  const best: Shared[] = [{ mixedG: 0, bowls: [] }]
  for (let end = 1; end <= foils.length; end++) {
    const plans: Shared[] = []
    for (let start = end - 1; start >= 0 && fits(foils.slice(start, end), limits); start--) {
      const bowl = mixBowl(foils.slice(start, end), recipe)
      plans.push({ mixedG: best[start].mixedG + bowl.mixedG, bowls: [...best[start].bowls, bowl] })
    }
    best.push(plans.reduce((least, plan) => (isLess(plan, least) ? plan : least)))
  }
  return [...best[foils.length].bowls]
}

type Shared = { mixedG: number; bowls: readonly Bowl[] }

/** Less mixed, or as much in fewer bowls. */
const isLess = (a: Shared, b: Shared) =>
  a.mixedG < b.mixedG - 1e-9 || (a.mixedG < b.mixedG + 1e-9 && a.bowls.length < b.bowls.length)

function fits(foils: readonly BowlFoil[], { potLifeMin, mostMixG }: BowlLimits): boolean {
  if (foils.length === 1) return true
  const last = foils[foils.length - 1]
  const oldestMin = last.startMin + last.placeMin - foils[0].startMin
  const wantedG = addRanges(foils.map(({ productG }) => productG)).high
  return (
    !foils.slice(1).some(({ startsBowl }) => startsBowl) &&
    foils.length <= bowlFigures.mostFoils.value &&
    oldestMin <= potLifeMin + 1e-9 &&
    toMixG(wantedG) <= mostMixG + 1e-9
  )
}

function mixBowl(foils: readonly BowlFoil[], recipe: Recipe): Bowl {
  const wantedG = addRanges(foils.map(({ productG }) => productG))
  return {
    atMin: foils[0].startMin,
    ...mixAmounts(wantedG.high, recipe),
    wantedG,
    sections: foils.map(({ id }) => id),
  }
}
