import type { ProductNeed } from "../../../geometry/hair/product"
import type { FoilKind } from "../../../geometry/section/section"
import { id, line, list, number, wholeNumber } from "../document/fields"
import { counts, letters, limits } from "../document/limits"
import { newSalon, type Salon } from "../document/salon"
import { foilKind, salonFields } from "../document/salonSchema"
import { z } from "../document/zod"

/** What the salon keeps beside its plans: its sheets, bottles and prices, and every bowl it has weighed. */
export type SalonShelf = Omit<Salon, "learnt"> & { weighings: readonly KeptWeighing[] }

/** A bowl, or a foil by itself, that was weighed: what it went on, and the grams that left. */
export type KeptWeighing = ProductNeed & {
  id: string
  /** ISO 8601 with its offset. */
  weighedAt: string
  /** What the salon calls it: the plan and the bowl. */
  name: string
  product: string
  /** Null where foils of several kinds shared the bowl. */
  kind: FoilKind | null
  productG: number
  /** Kept, but nothing is learnt from it. */
  leftOut: boolean
}

const schema = z.strictObject({
  ...salonFields,
  weighings: list(
    z.strictObject({
      id,
      weighedAt: line(letters.moment),
      name: line(letters.name),
      product: line(letters.name),
      kind: z.nullable(foilKind),
      panels: wholeNumber(limits.panels),
      hairG: number(limits.bowlG),
      strandAreaCm2: number(limits.strandAreaCm2),
      productG: number(limits.bowlG),
      leftOut: z.boolean(),
    }),
    counts.weighings,
    "weighings",
  ),
}) satisfies z.ZodMiniType<SalonShelf>

export function emptySalonShelf(): SalonShelf {
  const { sheets, bottles, developerPrice, prices } = newSalon()
  return { sheets, bottles, developerPrice, prices, weighings: [] }
}

/** The salon's things as the browser kept them, or null where they cannot be read. */
export function readSalonShelf(kept: unknown): SalonShelf | null {
  const parsed = schema.safeParse(kept)
  return parsed.success ? parsed.data : null
}
