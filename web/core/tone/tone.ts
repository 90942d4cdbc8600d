import type { Range } from "../../../geometry/hair/tradeFigures"
import { levels } from "../../../presets/client/levels"
import { dragDownMm, finishStrength, toneMinutes } from "../../../presets/formula/tones"
import type { FinishTone } from "../document/consultation"
import { numberText } from "../text/numberText"

/** Hair to be toned after rinsing, zone by zone. A root melt softens the root downward instead. */
export type ToneZone =
  | { zone: "root-melt"; rootLevel: number | null; drawnDownMm: number | null }
  | { zone: "mids" | "hairline"; level: number | null; porous: boolean }

/** A toner mix in words; never a measured colour. */
export type ToneMix = {
  zone: ToneZone["zone"]
  words: string
  /** Which family of toner; null while the level is not known. */
  family: string | null
  strength: string
  minutes: Range
}

/** What shows at a level, and the tone across from it. Between two levels the warmer one counts. */
export function pigmentAt(level: number) {
  const index = Math.min(levels.length, Math.max(1, Math.floor(level))) - 1
  return levels[index]
}

/** One mix a zone, in the order they go on: the root melt, the mids, and the hairline last; porous hair after other hair. */
export function tonePlan(zones: readonly ToneZone[], finish: FinishTone | null): ToneMix[] {
  return zones.toSorted((a, b) => turnOf(a) - turnOf(b)).map((zone) => toneMix(zone, finish))
}

const zoneOrder = { "root-melt": 0, mids: 1, hairline: 2 }
const turnOf = (zone: ToneZone) => zoneOrder[zone.zone] + (isPorous(zone) ? 3 : 0)
const isPorous = (zone: ToneZone) => zone.zone !== "root-melt" && zone.porous

function toneMix(zone: ToneZone, finish: FinishTone | null): ToneMix {
  return {
    zone: zone.zone,
    words: zone.zone === "root-melt" ? meltWords(zone) : toneWords(zone.level, finish),
    family: familyOf(zone, finish),
    strength: zone.zone === "root-melt" ? finishStrength.cool : finishStrength[finish ?? "neutral"],
    minutes: isPorous(zone) ? toneMinutes.porous : toneMinutes.usual,
  }
}

function familyOf(zone: ToneZone, finish: FinishTone | null): string | null {
  if (zone.zone === "root-melt") return "root shade"
  if (finish === "warm") return "gold"
  return zone.level === null ? null : pigmentAt(zone.level).neutraliser
}

/** What the toner is, in a sentence: its family and how strong. */
export const tonerWords = ({ family, strength }: ToneMix) =>
  `${family === null ? "Toner" : family === "root shade" ? "Root shade" : `Toner of the ${family} family`}: ${strength}.`

function toneWords(level: number | null, finish: FinishTone | null): string {
  if (level === null) return "The level reached is not known yet; choose the tone at the basin."
  const { pigment, neutraliser } = pigmentAt(level)
  const shown = `Level ${numberText(level, 1)} shows ${pigment}`
  return finish === "warm" ? `${shown}; keep it.` : `${shown}; ${neutraliser} stands across from it.`
}

function meltWords({ rootLevel, drawnDownMm }: Extract<ToneZone, { zone: "root-melt" }>): string {
  const shade =
    rootLevel === null ? "A shade as deep as the root" : `A shade at level ${numberText(rootLevel, 1)}`
  return `${shade}, drawn down ${numberText(drawnDownMm ?? dragDownMm.mid, 0)} mm.`
}
