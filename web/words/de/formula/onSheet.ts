import type { ToneZone } from "../../../core/tone/tone"
import type { onSheet as english } from "../../en/formula/onSheet"
import type { Tools } from "../../tools"

type TonerParts = { tonerG: number; clearG: number; developerG: number }

/** Mixes and toners as the map prints them: short lines, figures first. */
export const onSheet: typeof english = (t, names) => ({
  strength: ({ volume, percent, ratio, pouredMl }) => {
    const pair = `${t.number(volume)} Vol (${t.number(percent, 1)} %), ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`
    return pouredMl.length > 0 ? `${pair}; ${t.or(pouredMl.map((ml) => t.number(ml)))} ml` : pair
  },
  bowl: ({ lightenerG, developerG, additives }) =>
    [
      `${t.number(lightenerG)} g Blondierung`,
      `${t.number(developerG)} g Entwickler`,
      ...additives.map(({ name, grams }) => `${t.number(grams)} g ${name}`),
    ].join(" + "),
  bowlAt: ({ bowl, minutes }) => `${bowl}, Minute ${minutes.map((minute) => t.whole(minute)).join(", ")}`,
  bowlMixed: ({ bowl, minute }) => `${bowl}, gemischt in Minute ${t.whole(minute)}`,
  notRecorded: "Wie geplant: das Mischen wurde nicht erfasst",
  toner: ({ product, developerVolume, parts }) =>
    developerVolume === null
      ? product
      : `${product}, ${t.number(developerVolume)} Vol, 1 : ${t.number(parts)}`,
  tonerUsed: ({ product, developerVolume }) =>
    developerVolume === null ? product : `${product}, ${t.number(developerVolume)} Vol`,
  tonerDone: ({ zone, productG, clearG, developerG, minutesOn }) => {
    const weighed =
      productG === null
        ? []
        : [weighedToner(t, { tonerG: productG, clearG: clearG ?? 0, developerG: developerG ?? 0 })]
    const on = minutesOn === null ? [] : [`${t.minutes(minutesOn)} eingewirkt`]
    return `${t.capital(zoneWords[zone])}: ${[...weighed, ...on].join(", ") || "verwendet"}`
  },
  tonerWeighed: (parts) => weighedToner(t, parts),
  tonerBowl: ({ zones, tone, family, strength, minutes, tonerG, clearG, developerG }) => {
    const grams = weighedToner(t, { tonerG, clearG, developerG })
    const shade =
      tone.code === "melt"
        ? `${t.mm(tone.downMm)} verzogen`
        : `${family === null ? "Ton" : names.families[family]}, ${names.strengths[strength]}`
    return `${t.capital(t.and(zones.map((zone) => zoneWords[zone])))}: ${grams}, ${shade}, ${t.spread(t.whole(minutes.low), t.minutes(minutes.high))}`
  },
})

const zoneWords: Record<ToneZone["zone"], string> = {
  "root-melt": "Ansatzverlauf",
  mids: "Längen",
  hairline: "Haarlinie zuletzt",
}

/** Named where there is clear in it: two numbers are toner and developer. */
const weighedToner = (t: Tools, { tonerG, clearG, developerG }: TonerParts) => {
  const parts = [tonerG, ...(clearG > 0 ? [clearG] : []), ...(developerG > 0 ? [developerG] : [])]
  const sum = `${parts.map((part) => t.number(part, 1)).join(" + ")} g`
  if (clearG === 0) return sum
  return developerG > 0 ? `${sum} (Toner, Clear, Entwickler)` : `${sum} (Toner, Clear)`
}
