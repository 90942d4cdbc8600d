import type { Surface } from "../surface/surface"
import { headMeasures, type TapeMm } from "./headMeasures"
import { logDensity } from "./headPrior"
import type { TapeFigures } from "./headSize"

/** What the three tapes are expected to read on a head over its hair, mm: each survey's hair, as likely as the head is one of its own. */
export function tapesOverHair(surface: Surface, { priors }: Pick<TapeFigures, "priors">): TapeMm {
  const measures = headMeasures(surface)
  const logs = priors.map((prior) => logDensity(prior, measures))
  const most = Math.max(...logs)
  const weights = logs.map((log) => Math.exp(log - most))
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  const overHair = (name: keyof TapeMm) =>
    priors.reduce(
      (sum, { hairUnderTape }, i) => sum + (weights[i] / whole) * (1 + hairUnderTape[name]) * measures[name],
      0,
    )
  return {
    aroundMm: overHair("aroundMm"),
    overMm: overHair("overMm"),
    frontToNapeMm: overHair("frontToNapeMm"),
  }
}
