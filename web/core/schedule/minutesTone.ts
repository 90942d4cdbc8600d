import type { FoilAt } from "./foilsAt"

/** How a foil is drawn at a minute: how much of it is black, and its outline in pixels. It tells minutes on, never lift. */
export type MinutesTone = { inkShare: number; weightPx: number; dashPx: readonly number[] }

/** Dotted before it is on, an outline once it is off; between them the darker the longer, black at its longest time. */
export function minutesTone(foil: FoilAt | undefined): MinutesTone {
  if (!foil || foil.state === "waiting") return { inkShare: 0, weightPx: 1, dashPx: [1, 3] }
  if (foil.state === "off") return { inkShare: 0, weightPx: 1.2, dashPx: [] }
  return { inkShare: 0.1 + 0.9 * Math.min(1, foil.limitShare), weightPx: 1, dashPx: [] }
}
