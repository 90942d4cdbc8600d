import type { InwardSpot, StartLine } from "../../geometry/working/workingSectionStart"

/**
 * Ways of dividing a head before work begins. Common practice, no source: which partings, and how far
 * toward the crown their corners lie, are usual ones, to be moved on the head.
 */
export type WorkingStartId =
  | "four-section"
  | "four-with-triangle"
  | "triangle"
  | "face-frame-triangle"
  | "profile"
  | "radial"
  | "horseshoe"
export type WorkingStart = { id: WorkingStartId; lines: readonly StartLine[] }

const spot = ([landmark, inward]: readonly [number, number]): InwardSpot => ({ landmark, inward })
const straight = (...through: readonly (readonly [number, number])[]): StartLine => ({
  run: "straight",
  through: through.map(spot),
})
const curved = (...through: readonly (readonly [number, number])[]): StartLine => ({
  run: "curved",
  through: through.map(spot),
})

/** Landmarks as a spot counts them; above the ear lies in front of its top. */
const [centreFront, recession, temple, aboveEar, earTop, centreNape] = [0, 1, 2, 3.75, 4, 7]
const crown = [0, 1] as const
const apex = [centreFront, 0.6] as const

const profile = straight([centreFront, 0], crown, [centreNape, 0])
const radial = straight([-earTop, 0], crown, [earTop, 0])
const triangle = straight([-recession, 0], apex, [recession, 0])

export const workingStarts: readonly WorkingStart[] = [
  {
    id: "four-section",
    lines: [profile, radial],
  },
  {
    id: "four-with-triangle",
    lines: [triangle, straight(apex, crown, [centreNape, 0]), radial],
  },
  {
    id: "triangle",
    lines: [triangle],
  },
  {
    id: "face-frame-triangle",
    lines: [straight([-aboveEar, 0], [centreFront, 0.62], [aboveEar, 0])],
  },
  { id: "profile", lines: [profile] },
  { id: "radial", lines: [radial] },
  {
    id: "horseshoe",
    lines: [
      curved(
        [-recession, 0],
        [-temple, 0.47],
        [-earTop, 0.53],
        [centreNape, 0.77],
        [earTop, 0.53],
        [temple, 0.47],
        [recession, 0],
      ),
    ],
  },
]
