import { assumption, figure } from "../figure/figure"

/** How far a learner's section may lie from the model's and still be as the model has it. All assumptions, for the educator to set. */
export const tolerances = {
  /** How far behind the hairline it lies, mm. */
  hairline: figure(2, [0.5, 10], assumption),
  /** How far its parting is moved over from the model's, square to it, mm. */
  back: figure(2, [0.5, 10], assumption),
  /** How far its middle slid along the model's parting, mm: more, for nothing on the head marks where a row begins. */
  along: figure(5, [0.5, 30], assumption),
  /** How its parting runs, degrees. */
  angle: figure(10, [1, 45], assumption),
  /** How long its parting is, per cent of the model's. */
  length: figure(10, [1, 50], assumption),
  /** How deep it goes at either end, mm. */
  depth: figure(1, [0.1, 10], assumption),
  /** Where product begins, mm from the scalp. */
  start: figure(2, [0.5, 20], assumption),
} as const

/** What it costs to pair two sections, mm that they lie apart: more where they differ in what they are. Assumptions. */
export const matching = {
  kindMm: figure(6, [0, 20], assumption),
  sideMm: figure(12, [0, 40], assumption),
  /** Of each section that stays without a partner: two that lie farther apart than twice this are two sections. */
  aloneMm: figure(12.5, [5, 40], assumption),
  /** Work is the mirror image when what it costs as that is no more than this share of what it costs as it stands. */
  mirroredShare: figure(0.5, [0.1, 0.9], assumption),
} as const
