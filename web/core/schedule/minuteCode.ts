import type { FoilAt } from "./foilsAt"

/** The head at a minute of the visit: how many foils are on, the longest of them for so long, how many are to come and off. */
export type MinuteCode = { atMin: number; on: number; longestMin: number; waiting: number; off: number }

export function minuteOf(atMin: number, foils: ReadonlyMap<string, FoilAt>): MinuteCode {
  const all = [...foils.values()]
  const count = (state: FoilAt["state"]) => all.filter((foil) => foil.state === state).length
  const onMin = all.filter(({ state }) => state === "on").map((foil) => foil.onMin)
  return {
    atMin,
    on: count("on"),
    longestMin: Math.max(0, ...onMin),
    waiting: count("waiting"),
    off: count("off"),
  }
}
