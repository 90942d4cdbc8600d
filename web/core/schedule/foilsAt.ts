import type { Schedule } from "./timing"

/** How a foil stands at a minute of the visit. */
export type FoilAt = { state: "waiting" | "on" | "off"; onMin: number; limitShare: number }

/** Every foil at a minute, by its id: minutes on, and their share of its longest time. Says nothing of lift. */
export const foilsAt = ({ foils }: Schedule, atMin: number): Map<string, FoilAt> =>
  new Map(
    foils.map(({ id, onAtMin, offAtMin, limitAtMin }): [string, FoilAt] => {
      const onMin = Math.max(0, Math.min(atMin, offAtMin) - onAtMin)
      const state = atMin < onAtMin ? "waiting" : atMin >= offAtMin ? "off" : "on"
      return [id, { state, onMin, limitShare: onMin / (limitAtMin - onAtMin) }]
    }),
  )
