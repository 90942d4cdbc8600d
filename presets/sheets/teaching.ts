import { commonPractice, figure } from "../figure/figure"
import { sliceDepthMm } from "../placement/foils"

/** Faults that students make, each with where it is known from. Common practice, no source. */
export const faultSources = {
  "bleeding-root": commonPractice,
  "band-near-root": commonPractice,
  "dark-spots": commonPractice,
  "slice-too-deep": commonPractice,
  "last-foil-dark": commonPractice,
  "last-panel-dark": commonPractice,
  "foil-slipping": commonPractice,
  "cushion-wet": commonPractice,
} as const
export type FaultName = keyof typeof faultSources

/** What is looked for in every set of foils. */
export const usualFaults = [
  "bleeding-root",
  "band-near-root",
  "dark-spots",
  "slice-too-deep",
  "last-foil-dark",
] as const satisfies readonly FaultName[]

/** The faults of hair that is painted, where nothing lies in a foil. */
export const paintedFaults = ["dark-spots", "last-panel-dark"] as const satisfies readonly FaultName[]

/** The deepest slice through which light is seen, mm. */
export const seeThroughMm = sliceDepthMm.fine.range[1]

/** Clips that hold the rest of the hair away where the head is not divided. */
export const clips = figure(4, [4, 6], commonPractice)

/** Strokes that push a backcombed section back. */
export const strokes = figure(3, [2, 4], commonPractice)
