import { type TonerInPlan, tonersOfPlan } from "../../core/bowls/toners"
import type { Plan } from "../../core/document/schema"
import { numberText } from "../../core/text/numberText"
import type { Fonts } from "../pens/fontFile"
import type { Block } from "../setting/block"
import { letters, type Type, type, wrap } from "../setting/typesetting"

const lineMm = 4.6
const zoneWords: Record<TonerInPlan["tone"]["zone"], string> = {
  "root-melt": "Root melt",
  mids: "Mid-lengths",
  hairline: "Hairline, last",
}

/** What to tone with after rinsing: each product that has been chosen, and its bowls under it. */
export function tonerBlocks(plan: Plan, { width, fonts }: { width: number; fonts: Fonts }): Block[] {
  const made = tonersOfPlan(plan).filter(({ bowl }) => bowl !== null)
  const products = [...new Set(made.map(({ choice }) => choice?.product))]
  return products.map((product) => {
    const own = made.filter(({ choice }) => choice?.product === product)
    const line = (text: string, setting: Type) =>
      wrap(text, width, setting, fonts).map((part) => ({ part, setting }))
    const lines = [
      ...line(productWords(own[0]), type.strong),
      ...own.flatMap((toner) => line(bowlWords(toner, plan), type.body)),
    ]
    return {
      heightMm: lines.length * lineMm + 1.4,
      items: lines.map(({ part, setting }, i) => letters(part, [0, 3.2 + i * lineMm], setting)),
    }
  })
}

function productWords({ choice }: TonerInPlan): string {
  if (!choice) return ""
  const { product, developerVolume, parts } = choice
  return developerVolume === null
    ? product
    : `${product}, ${numberText(developerVolume)} vol, 1 : ${numberText(parts)}`
}

function bowlWords({ tone, bowl }: TonerInPlan, plan: Plan): string {
  if (!bowl) return ""
  const { zone, family, strength, minutes } = tone
  const grams = bowl.developerG > 0 ? `${bowl.lightenerG} + ${bowl.developerG} g` : `${bowl.lightenerG} g`
  const shade =
    zone === "root-melt"
      ? `drawn down ${numberText(plan.consultation?.rootMeltMm ?? 0, 0)} mm`
      : `${family ?? "tone"}, ${strength}`
  return `${zoneWords[zone]}: ${grams}, ${shade}, ${minutes.low} to ${minutes.high} min`
}
