import type { FoilKind } from "../../geometry/section/section"
import type { Range } from "../../geometry/tradeFigures"

/** How the visit is to be timed. Null is "not said": then the usual figures hold. */
export type TimingChoices = {
  skill: "expert" | "usual" | "learner"
  /** Minutes to place a foil of each kind, learnt at the chair; they take the place of the skill's. */
  pace: Readonly<Record<FoilKind, Range>> | null
  hands: 1 | 2
  /** Minutes of the visit in which nobody works. */
  breaks: readonly { fromMin: number; toMin: number }[]
  rinse: "each" | "together"
  heatMin: number | null
  bookingMin: number | null
  lift: { fromLevel: number; toLevel: number } | null
  strandTest: StrandTest | null
}

/** One strand in one product and developer, and the levels seen on it. */
export type StrandTest = {
  product: string
  developerVolume: number
  startLevel: number
  rows: readonly { minutes: number; level: number }[]
}
