import type { Range } from "../../../geometry/hair/tradeFigures"
import { type Consultation, newConsultation, type Zone } from "../document/consultation"
import { sheetOf } from "../document/salon"
import type { Plan } from "../document/schema"
import { newToning, type TonerChoice } from "../document/toning"
import { type ToneMix, type ToneZone, tonePlan } from "./tone"

type Toned = Pick<Plan, "consultation" | "toning" | "salon">

/** The toner mixes of a plan, in the order they go on, none longer than the sheet of its toner allows. */
export function tonesOfPlan(plan: Toned): ToneMix[] {
  const known = plan.consultation ?? newConsultation()
  return tonePlan(toneZones(known), known.finish).map((mix) => {
    const choice = tonerOf(mix.zone, plan)
    const longestMin = choice && (sheetOf(choice.product, plan)?.longestMin ?? null)
    return longestMin === null ? mix : { ...mix, minutes: within(mix.minutes, longestMin) }
  })
}

/** The product chosen for a zone. */
export function tonerOf(zone: ToneMix["zone"], { toning }: Pick<Plan, "toning">): TonerChoice | null {
  const { toner, rootShade } = toning ?? newToning()
  return zone === "root-melt" ? rootShade : toner
}

const within = ({ low, mid, high }: Range, most: number): Range => ({
  low: Math.min(low, most),
  mid: Math.min(mid, most),
  high: Math.min(high, most),
})

function toneZones(known: Consultation): ToneZone[] {
  const { hair, liftToLevel, rootMeltMm } = known
  const isPorous = (zone: Zone) => Object.values(hair[zone] ?? {}).some(({ porosity }) => porosity === "high")
  const rootLevel = hair.hairline?.roots?.level ?? hair.top?.roots?.level ?? null
  const behind: readonly Zone[] = ["top", "left", "right", "back"]
  return [
    ...(rootMeltMm === null ? [] : [{ zone: "root-melt" as const, rootLevel, drawnDownMm: rootMeltMm }]),
    { zone: "mids", level: liftToLevel, porous: behind.some(isPorous) },
    { zone: "hairline", level: liftToLevel, porous: isPorous("hairline") },
  ]
}
