import type { Range } from "../../../geometry/hair/tradeFigures"
import { type Neutraliser, type Pigment, pigments } from "../../../presets/formula/pigments"
import { dragDownMm, finishStrength, type ToneStrength, toneMinutes } from "../../../presets/formula/tones"
import type { FinishTone } from "../document/consultation"

/** Hair to be toned after rinsing, zone by zone. A root melt softens the root downward instead. */
export type ToneZone =
  | { zone: "root-melt"; rootLevel: number | null; drawnDownMm: number | null }
  | { zone: "mids" | "hairline"; level: number | null; porous: boolean }

/** What a zone is toned to: the pigment that shows and what is done with it; never a measured colour. */
export type ToneCode =
  | { code: "level-unknown" }
  | { code: "keep"; level: number; pigment: Pigment }
  | { code: "neutralise"; level: number; pigment: Pigment; neutraliser: Neutraliser }
  | { code: "melt"; rootLevel: number | null; downMm: number }

/** Which family of toner. */
export type ToneFamily = Neutraliser | "gold" | "root-shade"

export type ToneMix = {
  zone: ToneZone["zone"]
  tone: ToneCode
  /** Null while the level is not known. */
  family: ToneFamily | null
  strength: ToneStrength
  minutes: Range
}

/** What shows at a level, and the tone across from it. Between two levels the warmer one counts. */
export const pigmentAt = (level: number) =>
  pigments[Math.min(pigments.length, Math.max(1, Math.floor(level))) - 1]

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
    tone: zone.zone === "root-melt" ? meltTone(zone) : toneOf(zone.level, finish),
    family: familyOf(zone, finish),
    strength: zone.zone === "root-melt" ? finishStrength.cool : finishStrength[finish ?? "neutral"],
    minutes: isPorous(zone) ? toneMinutes.porous : toneMinutes.usual,
  }
}

function familyOf(zone: ToneZone, finish: FinishTone | null): ToneFamily | null {
  if (zone.zone === "root-melt") return "root-shade"
  if (finish === "warm") return "gold"
  return zone.level === null ? null : pigmentAt(zone.level).neutraliser
}

function toneOf(level: number | null, finish: FinishTone | null): ToneCode {
  if (level === null) return { code: "level-unknown" }
  const { pigment, neutraliser } = pigmentAt(level)
  return finish === "warm"
    ? { code: "keep", level, pigment }
    : { code: "neutralise", level, pigment, neutraliser }
}

const meltTone = ({ rootLevel, drawnDownMm }: Extract<ToneZone, { zone: "root-melt" }>): ToneCode => ({
  code: "melt",
  rootLevel,
  downMm: drawnDownMm ?? dragDownMm.mid,
})
