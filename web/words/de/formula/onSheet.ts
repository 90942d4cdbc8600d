import type { ToneZone } from "../../../core/tone/tone"
import type { onSheet as english } from "../../en/formula/onSheet"

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
  tonerDone: ({ zone, productG, developerG, minutesOn }) => {
    const grams = [productG, developerG].flatMap((part) => (part ? [t.number(part, 1)] : [])).join(" + ")
    const weighed = grams === "" ? [] : [`${grams} g`]
    const on = minutesOn === null ? [] : [`${t.minutes(minutesOn)} eingewirkt`]
    return `${t.capital(zoneWords[zone])}: ${[...weighed, ...on].join(", ") || "verwendet"}`
  },
  tonerBowl: ({ zones, tone, family, strength, minutes, tonerG, clearG, developerG }) => {
    const parts = [tonerG, ...(clearG > 0 ? [clearG] : []), ...(developerG > 0 ? [developerG] : [])]
    const sum = parts.map((part) => t.number(part, 1)).join(" + ")
    const named = developerG > 0 ? `${sum} g (Toner, Clear, Entwickler)` : `${sum} g (Toner, Clear)`
    const grams = clearG > 0 ? named : `${sum} g`
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
