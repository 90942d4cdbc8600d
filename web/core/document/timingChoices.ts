import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"

/** How the visit is to be timed. Null is "not said": then the usual figures hold. */
export type TimingChoices = {
  skill: "expert" | "usual" | "learner"
  /** Minutes to place a foil of each kind, learnt at the chair; they take the place of the skill's. */
  pace: PaceByKind | null
  hands: 1 | 2
  /** Who the first and the second pair of hands are, so that each one's pace can be learnt. */
  people?: readonly string[] | undefined
  /** The learnt pace of the second pair; as the first where it is not known. */
  secondPace?: PaceByKind | null | undefined
  /** Minutes of the visit in which nobody works, or one pair of hands does not. */
  breaks: readonly Break[]
  rinse: "each" | "together"
  heatMin: number | null
  /** How warm it is under the heat; the usual range where it is not known. */
  heatC?: number | null | undefined
  /** Foils at which a bowl is mixed afresh, whatever the last one still holds. */
  freshAt?: readonly string[] | undefined
  bookingMin: number | null
  /** False where the client goes home with damp hair; the hair is dried where nothing is said. */
  isDried?: boolean | undefined
  /** The assistant's side; where nothing is said, the client's right. */
  assistantSide?: "left" | "right" | undefined
  lift: { fromLevel: number; toLevel: number } | null
  strandTest: StrandTest | null
}

/** A kind that is not told is placed at the usual pace: a file may be older than the kind. */
export type PaceByKind = Readonly<Partial<Record<FoilKind, Range | undefined>>>
export type Break = { fromMin: number; toMin: number; of?: 1 | 2 | undefined }

/** One strand in one product and developer, and the levels seen on it. */
export type StrandTest = {
  product: string
  developerVolume: number
  startLevel: number
  rows: readonly { minutes: number; level: number }[]
}
