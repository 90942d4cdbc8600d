import { type TonerInPlan, tonersOfPlan } from "../../core/bowls/toners"
import type { Plan } from "../../core/document/schema"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, type Type, type, wrap } from "../setting/typesetting"

const lineMm = 4.6
/** What to tone with after rinsing: each product that has been chosen, and its bowls under it. */
export function tonerBlocks(plan: Plan, { width, press }: { width: number; press: Press }): Block[] {
  const made = tonersOfPlan(plan).filter(({ bowl }) => bowl !== null)
  const products = [...new Set(made.map(({ choice }) => choice?.product))]
  return products.map((product) => {
    const own = made.filter(({ choice }) => choice?.product === product)
    const line = (text: string, setting: Type) =>
      wrap(text, width, setting, press).map((part) => ({ part, setting }))
    const lines = [
      ...line(productWords(own[0], press), type.strong),
      ...own.flatMap((toner) => line(bowlWords(toner, press), type.body)),
    ]
    return {
      heightMm: lines.length * lineMm + 1.4,
      items: lines.map(({ part, setting }, i) => letters(part, [0, 3.2 + i * lineMm], setting)),
    }
  })
}

const productWords = ({ choice }: TonerInPlan, { words }: Press) =>
  choice ? words.formula.onSheet.toner(choice) : ""

function bowlWords({ tones, bowl }: TonerInPlan, { words }: Press): string {
  if (!bowl) return ""
  const { lightenerG: tonerG, clearG, developerG } = bowl
  const zones = tones.map(({ zone }) => zone)
  return words.formula.onSheet.tonerBowl({
    ...tones[0],
    zones,
    minutes: minutesOf(tones),
    tonerG,
    clearG,
    developerG,
  })
}

/** From the first zone to be checked to the last to be rinsed. */
const minutesOf = (tones: TonerInPlan["tones"]) => ({
  low: Math.min(...tones.map(({ minutes }) => minutes.low)),
  high: Math.max(...tones.map(({ minutes }) => minutes.high)),
})
