import type { ToneStrength } from "../../../../presets/formula/tones"
import type { ToneFamily, ToneZone } from "../../../core/tone/tone"
import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"

type Names = {
  families: Readonly<Record<ToneFamily, string>>
  strengths: Readonly<Record<ToneStrength, string>>
}

type TonerParts = { tonerG: number; clearG: number; developerG: number }

/** Mixes and toners as the map prints them: short lines, figures first. */
export const onSheet = (t: Tools, names: Names): FormulaWords["onSheet"] => ({
  strength: ({ volume, percent, ratio, pouredMl }) => {
    const pair = `${t.number(volume)}\u00a0vol (${t.number(percent, 1)}\u00a0%), ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`
    return pouredMl.length > 0 ? `${pair}; ${t.or(pouredMl.map((ml) => t.number(ml)))}\u00a0мл` : pair
  },
  bowl: ({ lightenerG, developerG, additives }) =>
    [
      `${t.number(lightenerG)}\u00a0г освітлювача`,
      `${t.number(developerG)}\u00a0г окислювача`,
      ...additives.map(({ name, grams }) => `${t.number(grams)}\u00a0г «${name}»`),
    ].join(" + "),
  bowlAt: ({ bowl, minutes }) => `${bowl}, хв\u00a0${minutes.map((minute) => t.whole(minute)).join(", ")}`,
  bowlMixed: ({ bowl, minute }) => `${bowl}, змішано на хвилині ${t.whole(minute)}`,
  notRecorded: "За планом: змішування не записано",
  toner: ({ product, developerVolume, parts }) =>
    developerVolume === null
      ? product
      : `${product}, ${t.number(developerVolume)}\u00a0vol, 1 : ${t.number(parts)}`,
  tonerUsed: ({ product, developerVolume }) =>
    developerVolume === null ? product : `${product}, ${t.number(developerVolume)}\u00a0vol`,
  tonerDone: ({ zone, productG, clearG, developerG, minutesOn }) => {
    const weighed =
      productG === null
        ? []
        : [weighedToner(t, { tonerG: productG, clearG: clearG ?? 0, developerG: developerG ?? 0 })]
    const on = minutesOn === null ? [] : [`витримка ${t.minutes(minutesOn)}`]
    return `${t.capital(zoneWords[zone])}: ${[...weighed, ...on].join(", ") || "використано"}`
  },
  tonerWeighed: (parts) => weighedToner(t, parts),
  tonerBowl: ({ zones, tone, family, strength, minutes, tonerG, clearG, developerG }) => {
    const grams = weighedToner(t, { tonerG, clearG, developerG })
    const shade =
      tone.code === "melt"
        ? `вниз на ${t.mm(tone.downMm)}`
        : `${family === null ? "тон" : names.families[family]}, ${names.strengths[strength]}`
    return `${t.capital(t.and(zones.map((zone) => zoneWords[zone])))}: ${grams}, ${shade}, ${t.spread(t.whole(minutes.low), t.minutes(minutes.high))}`
  },
})

const zoneWords: Record<ToneZone["zone"], string> = {
  "root-melt": "розтушовка кореня",
  mids: "довжина",
  hairline: "лінія росту останньою",
}

/** Named where there is clear in it: two numbers are toner and developer. */
const weighedToner = (t: Tools, { tonerG, clearG, developerG }: TonerParts) => {
  const parts = [tonerG, ...(clearG > 0 ? [clearG] : []), ...(developerG > 0 ? [developerG] : [])]
  const sum = `${parts.map((part) => t.number(part, 1)).join(" + ")}\u00a0г`
  if (clearG === 0) return sum
  return developerG > 0 ? `${sum} (тонер, клір, окислювач)` : `${sum} (тонер, клір)`
}
