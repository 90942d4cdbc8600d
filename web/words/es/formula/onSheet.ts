import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { ToneStrength } from "../../../../presets/formula/tones"
import type { TonerChoice } from "../../../core/document/toning"
import type { Amounts } from "../../../core/mixing/mixAmounts"
import type { MixRatio } from "../../../core/mixing/strength"
import type { ToneCode, ToneFamily, ToneZone } from "../../../core/tone/tone"
import type { Tools } from "../../tools"

type Strength = { volume: number; percent: number; ratio: MixRatio; pouredMl: readonly number[] }
type TonerBowl = {
  zones: readonly ToneZone["zone"][]
  tone: ToneCode
  family: ToneFamily | null
  strength: ToneStrength
  minutes: Pick<Range, "low" | "high">
  tonerG: number
  clearG: number
  developerG: number
}

type Weighed = Pick<Amounts, "lightenerG" | "developerG"> & {
  additives: readonly { name: string; grams: number }[]
}
type TonerDone = {
  zone: ToneZone["zone"]
  productG: number | null
  clearG?: number | undefined
  developerG: number | null
  minutesOn: number | null
}

type TonerParts = { tonerG: number; clearG: number; developerG: number }

/** Mixes and toners as the map prints them: short lines, figures first. */
export const onSheet = (t: Tools, names: Names) => ({
  strength: ({ volume, percent, ratio, pouredMl }: Strength) => {
    const pair = `${t.number(volume)} vol (${t.number(percent, 1)}\u00a0%), ${t.number(ratio.lightener)} : ${t.number(ratio.developer)}`
    return pouredMl.length > 0 ? `${pair}; ${t.or(pouredMl.map((ml) => t.number(ml)))} mL` : pair
  },
  bowl: ({ lightenerG, developerG, additives }: Weighed) =>
    [
      `${t.number(lightenerG)} g decolorante`,
      `${t.number(developerG)} g oxidante`,
      ...additives.map(({ name, grams }) => `${t.number(grams)} g ${name}`),
    ].join(" + "),
  bowlAt: ({ bowl, minutes }: { bowl: string; minutes: readonly number[] }) =>
    `${bowl}, minuto ${minutes.map((minute) => t.whole(minute)).join(", ")}`,
  bowlMixed: ({ bowl, minute }: { bowl: string; minute: number }) =>
    `${bowl}, mezclado en el minuto ${t.whole(minute)}`,
  notRecorded: "Según lo previsto: la mezcla no quedó registrada",
  toner: ({ product, developerVolume, parts }: TonerChoice) =>
    developerVolume === null
      ? product
      : `${product}, ${t.number(developerVolume)} vol, 1 : ${t.number(parts)}`,
  tonerUsed: ({ product, developerVolume }: { product: string; developerVolume: number | null }) =>
    developerVolume === null ? product : `${product}, ${t.number(developerVolume)} vol`,
  /** One zone of a toner that went on: what was weighed, and the minutes it was on. */
  tonerDone: ({ zone, productG, clearG, developerG, minutesOn }: TonerDone) => {
    const weighed =
      productG === null
        ? []
        : [weighedToner(t, { tonerG: productG, clearG: clearG ?? 0, developerG: developerG ?? 0 })]
    const on = minutesOn === null ? [] : [`${t.minutes(minutesOn)} de pose`]
    return `${t.capital(zoneWords[zone])}: ${[...weighed, ...on].join(", ") || "usado"}`
  },
  /** The parts of a bowl of toner as they were weighed. */
  tonerWeighed: (parts: TonerParts) => weighedToner(t, parts),
  tonerBowl: ({ zones, tone, family, strength, minutes, tonerG, clearG, developerG }: TonerBowl) => {
    const grams = weighedToner(t, { tonerG, clearG, developerG })
    const shade =
      tone.code === "melt"
        ? `difuminado hacia abajo ${t.mm(tone.downMm)}`
        : `${family === null ? "tono" : names.families[family]}, ${names.strengths[strength]}`
    return `${t.capital(t.and(zones.map((zone) => zoneWords[zone])))}: ${grams}, ${shade}, ${t.spread(t.whole(minutes.low), t.minutes(minutes.high))}`
  },
})

type Names = {
  families: Readonly<Record<ToneFamily, string>>
  strengths: Readonly<Record<ToneStrength, string>>
}

const zoneWords: Record<ToneZone["zone"], string> = {
  "root-melt": "difuminado de raíz",
  mids: "medios",
  hairline: "contorno al final",
}

/** Named where there is clear in it: two numbers are toner and developer. */
const weighedToner = (t: Tools, { tonerG, clearG, developerG }: TonerParts) => {
  const parts = [tonerG, ...(clearG > 0 ? [clearG] : []), ...(developerG > 0 ? [developerG] : [])]
  const sum = `${parts.map((part) => t.number(part, 1)).join(" + ")} g`
  if (clearG === 0) return sum
  return developerG > 0 ? `${sum} (matizador, transparente, oxidante)` : `${sum} (matizador, transparente)`
}
