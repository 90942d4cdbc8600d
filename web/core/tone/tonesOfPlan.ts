import { type Consultation, newConsultation, type Zone } from "../document/consultation"
import { type ToneMix, type ToneZone, tonePlan } from "./tone"

/** The toner mixes of a plan, in the order they go on. */
export function tonesOfPlan({ consultation }: { consultation?: Consultation | undefined }): ToneMix[] {
  const known = consultation ?? newConsultation()
  return tonePlan(toneZones(known), known.finish)
}

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
