import { commonPractice, figure } from "../figure/figure"
import { sliceDepthMm } from "../placement/foils"

/** A fault that students make, what it comes from, and what to do about it. */
export type Fault = { fault: string; cause: string; cure: string; source: string }

/** What is looked for in every set of foils. Common practice, no source. */
export const faults: readonly Fault[] = [
  {
    fault: "Bleeding at the root",
    cause: "Too much product, or it begins at the very edge of the foil.",
    cure: "Less on the brush, keep the fold clean; wipe the edge before you close.",
    source: commonPractice,
  },
  {
    fault: "A band near the root",
    cause: "Product stops short, or the foil has slid down.",
    cure: "Place tight, and press the foil to the scalp while you coat.",
    source: commonPractice,
  },
  {
    fault: "Spots, dark inside",
    cause: "Dry patches: one face coated, or the hair not spread flat.",
    cure: "Spread the hair, coat both faces, look through it against the light.",
    source: commonPractice,
  },
  {
    fault: "Slice too deep",
    cause: "The tail of the comb dips behind the parting.",
    cure: "Part again. A slice is thin enough to see light through.",
    source: commonPractice,
  },
  {
    fault: "Last foil too dark",
    cause: "It went on long after the first and came off with it.",
    cure: "Take each foil off when it is ready, not all at once.",
    source: commonPractice,
  },
]

export const foilFault: Fault = {
  fault: "Foil slipping",
  cause: "Foil too heavy for the section, or the root was wet with product.",
  cure: "A shorter foil, folded once; start the product a little lower.",
  source: commonPractice,
}

export const cushionFault: Fault = {
  fault: "Cushion wet",
  cause: "Product begins above the cushion.",
  cure: "Wipe the cushion dry; start past it, where the strand is smooth.",
  source: commonPractice,
}

/** The deepest slice through which light is seen, mm. */
export const seeThroughMm = sliceDepthMm.fine.range[1]

/** Clips that hold the rest of the hair away where the head is not divided. */
export const clips = figure(4, [4, 6], commonPractice)

/** Strokes that push a backcombed section back. */
export const strokes = figure(3, [2, 4], commonPractice)

/** What lies on the trolley beside what the plan asks for. Common practice, no source. */
export const trolley = {
  comb: "Tail comb, water spray, brush for each bowl",
  keeping: "Gloves, apron, towel, damp cotton for the hairline",
  minding: "Timer; a pencil for the minute each foil goes on",
} as const
