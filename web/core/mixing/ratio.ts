import type { CarrierKind, Foil, FoilKind } from "../../../geometry/section/section"
import { type Consistency, consistencies, wideCoverageCm2 } from "../../../presets/formula/consistency"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import type { Plan } from "../document/schema"
import { figuresOf } from "../figures/measured"
import { traitsOf } from "../kinds/kindRecords"
import type { MixRatio } from "./strength"

/** How a section is worked, as far as the thickness of its mix goes. */
export type Working = { kind: FoilKind; carrier: CarrierKind; wideCoverage: boolean }

/** How thick the mix for a section should stand. What may not run comes first. */
export function consistencyFor({ kind, carrier, wideCoverage }: Working): Consistency {
  if (carrier !== "foil") return "thick"
  return traitsOf({ kind }).consistency ?? (wideCoverage ? "loose" : "creamy")
}

/** How thick the mix for a foil of the plan should stand: by its kind, its carrier and how much hair it has to cover. */
export const consistencyOf = (foil: Foil, plan: Plan): Consistency =>
  consistencyFor({
    kind: foil.kind,
    carrier: foil.carrier.kind,
    wideCoverage: figuresOf(foil, plan).strandAreaCm2 >= wideCoverageCm2.value,
  })

/** The ratio for a consistency, held inside what the sheet states. */
export function ratioFor(consistency: Consistency, { ratio }: Pick<ProductSheet, "ratio">): MixRatio {
  const wished = consistencies[consistency].developerParts.value
  return { lightener: 1, developer: Math.min(ratio.high, Math.max(ratio.low, wished)) }
}
