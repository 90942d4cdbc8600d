import type { FoilAt } from "./foilsAt"

/** The head at a minute in a sentence. */
export function minutesWords(atMin: number, foils: ReadonlyMap<string, FoilAt>): string {
  const all = [...foils.values()]
  const count = (state: FoilAt["state"]) => all.filter((foil) => foil.state === state).length
  const longest = Math.max(...all.filter(({ state }) => state === "on").map(({ onMin }) => onMin), 0)
  const on = count("on")
  return [
    `Minute ${atMin}: ${on === 1 ? "1 foil" : `${on} foils`} on`,
    ...(on > 0 ? [`the longest for ${Math.round(longest)} min`] : []),
    `${count("waiting")} to come`,
    `${count("off")} off`,
  ].join(", ")
}

/** One foil at a minute, for a list: "on for 12 min". */
export function foilAtWords({ state, onMin }: FoilAt): string {
  if (state === "waiting") return "not on yet"
  return state === "on" ? `on for ${Math.round(onMin)} min` : `off, after ${Math.round(onMin)} min`
}
