import { type TonerInPlan, tonersOfPlan } from "../../core/bowls/toners"
import type { Plan } from "../../core/document/schema"
import type { RecordedToner } from "../../core/document/serviceRecord"
import { tonersUsed } from "../../core/record/asMixed"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, type Type, type, wrap } from "../setting/typesetting"

const lineMm = 4.6
/** What was toned with where a service was done, else what to tone with after rinsing: each product, and its bowls under it. */
export function tonerBlocks(plan: Plan, { width, press }: { width: number; press: Press }): Block[] {
  const used = tonersUsed(plan)
  const products = used ? usedProducts(used, press) : plannedProducts(plan, press)
  return products.map(({ title, bowls }) => {
    const line = (text: string, setting: Type) =>
      wrap(text, width, setting, press).map((part) => ({ part, setting }))
    const lines = [...line(title, type.strong), ...bowls.flatMap((bowl) => line(bowl, type.body))]
    return {
      heightMm: lines.length * lineMm + 1.4,
      items: lines.map(({ part, setting }, i) => letters(part, [0, 3.2 + i * lineMm], setting)),
    }
  })
}

type Product = { title: string; bowls: readonly string[] }

function plannedProducts(plan: Plan, press: Press): Product[] {
  const made = tonersOfPlan(plan).filter(({ bowl }) => bowl !== null)
  const names = [...new Set(made.map(({ choice }) => choice?.product))]
  return names.map((name) => {
    const own = made.filter(({ choice }) => choice?.product === name)
    return { title: productWords(own[0], press), bowls: own.map((toner) => bowlWords(toner, press)) }
  })
}

function usedProducts(used: readonly RecordedToner[], { words }: Press): Product[] {
  const w = words.formula.onSheet
  const names = [...new Set(used.flatMap(({ product }) => product ?? []))]
  return names.map((product) => {
    const own = used.filter((toner) => toner.product === product)
    const minutesOn = ({ onAtMs, offAtMs }: RecordedToner) =>
      onAtMs === null || offAtMs === null ? null : (offAtMs - onAtMs) / 60_000
    return {
      title: w.tonerUsed({ product, developerVolume: own[0].developerVolume }),
      bowls: own.map((toner) => w.tonerDone({ ...toner, minutesOn: minutesOn(toner) })),
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
