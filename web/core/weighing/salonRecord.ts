import type { ProductNeed } from "../../../geometry/hair/product"
import type { FoilKind } from "../../../geometry/section/section"
import { isGroup } from "../checks/problem"
import { newSalon, type Salon } from "../document/salon"
import { foilKind, pricesSchema, productSheetSchema, salonFields, startSchema } from "../document/salonSchema"
import { id, line, list, number, wholeNumber } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"

/** What the salon keeps beside its plans: its sheets, bottles and prices, and every bowl it has weighed. */
export type SalonShelf = Omit<Salon, "learnt"> & { weighings: readonly KeptWeighing[] }

/** A bowl, or a foil by itself, that was weighed: what it went on, and the grams that left. */
export type KeptWeighing = ProductNeed & {
  id: string
  /** ISO 8601 with its offset. */
  weighedAt: string
  /** What the salon calls it: the plan and the bowl. */
  name: string
  /** The plan it was weighed for, where that is known: whoever is erased is not named here any more. */
  planId?: string | undefined
  product: string
  /** Null where foils of several kinds shared the bowl. */
  kind: FoilKind | null
  productG: number
  /** Kept, but nothing is learnt from it. */
  leftOut: boolean
}

const weighing = z.strictObject({
  id,
  weighedAt: line(letters.moment),
  name: line(letters.name),
  planId: z.optional(id),
  product: line(letters.name),
  kind: z.nullable(foilKind),
  panels: wholeNumber(limits.panels),
  hairG: number(limits.bowlG),
  strandAreaCm2: number(limits.strandAreaCm2),
  productG: number(limits.bowlG),
  leftOut: z.boolean(),
}) satisfies z.ZodMiniType<KeptWeighing>

export const salonShelfSchema = z.strictObject({
  ...salonFields,
  weighings: list(weighing, counts.weighings, "weighings"),
}) satisfies z.ZodMiniType<SalonShelf>

export function emptySalonShelf(): SalonShelf {
  const { sheets, bottles, developerPrice, prices } = newSalon()
  return { sheets, bottles, developerPrice, prices, weighings: [] }
}

/** The salon's things as the browser kept them, and whatever of them cannot be read, as it was: never all for one row. */
export function readSalonShelf(kept: unknown): { salon: SalonShelf; unread: readonly Unread[] } {
  if (kept === undefined) return { salon: emptySalonShelf(), unread: [] }
  const parsed = salonShelfSchema.safeParse(kept)
  if (parsed.success) return { salon: parsed.data, unread: [] }
  if (!isGroup(kept)) return { salon: emptySalonShelf(), unread: [{ field: null, value: kept }] }
  return readByParts(kept)
}

/** A part of what the salon keeps that cannot be read; the field is null where it is no record of a salon at all. */
export type Unread = { field: string | null; value: unknown }

function readByParts(kept: Record<PropertyKey, unknown>) {
  const fresh = emptySalonShelf()
  const unread: Unread[] = []
  const rowsOf = <T>(field: string, row: z.ZodMiniType<T>, most: number): T[] => {
    const rows = kept[field] ?? []
    if (!Array.isArray(rows)) {
      unread.push({ field, value: rows })
      return []
    }
    const read = rows.map((value: unknown) => ({ value, parsed: row.safeParse(value) }))
    const good = read.flatMap(({ parsed }) => (parsed.success ? [parsed.data] : []))
    for (const { value, parsed } of read) if (!parsed.success) unread.push({ field, value })
    for (const value of good.slice(most)) unread.push({ field, value })
    return good.slice(0, most)
  }
  const fieldOf = <T>(field: string, schemaOf: z.ZodMiniType<T>, otherwise: T): T => {
    const parsed = schemaOf.safeParse(kept[field])
    if (!parsed.success && kept[field] !== undefined) unread.push({ field, value: kept[field] })
    return parsed.success ? parsed.data : otherwise
  }
  const scaleStepG = fieldOf("scaleStepG", z.optional(number(limits.scaleStepG)), undefined)
  const contact = fieldOf("contact", salonFields.contact, undefined)
  const start = fieldOf("start", z.optional(startSchema), undefined)
  const salon: SalonShelf = {
    sheets: rowsOf("sheets", productSheetSchema, counts.sheets.high),
    bottles: rowsOf("bottles", number(limits.developerVolume), counts.developers.high),
    ...(scaleStepG !== undefined && { scaleStepG }),
    developerPrice: fieldOf("developerPrice", salonFields.developerPrice, fresh.developerPrice),
    prices: fieldOf("prices", pricesSchema, fresh.prices),
    ...(contact !== undefined && { contact }),
    ...(start !== undefined && { start }),
    weighings: rowsOf("weighings", weighing, counts.weighings.high),
  }
  return { salon, unread }
}

/** A salon's things with those of another beside them: what is here stays, and only what is not here is taken. */
export function joinedSalon(here: SalonShelf, other: SalonShelf): SalonShelf {
  const isKnown = <T>(rows: readonly T[], nameOf: (row: T) => unknown) => {
    const known = new Set(rows.map(nameOf))
    return (row: T) => known.has(nameOf(row))
  }
  const hasSheet = isKnown(here.sheets, ({ name }) => name)
  const hasBottle = isKnown(here.bottles, (volume) => volume)
  const hasWeighing = isKnown(here.weighings, ({ id }) => id)
  return {
    ...other,
    ...here,
    sheets: [...here.sheets, ...other.sheets.filter((sheet) => !hasSheet(sheet))].slice(
      0,
      counts.sheets.high,
    ),
    bottles: [...here.bottles, ...other.bottles.filter((volume) => !hasBottle(volume))].slice(
      0,
      counts.developers.high,
    ),
    developerPrice: here.developerPrice ?? other.developerPrice,
    prices: Object.values(here.prices).every((price) => price === null) ? other.prices : here.prices,
    weighings: [...here.weighings, ...other.weighings.filter((row) => !hasWeighing(row))].slice(
      0,
      counts.weighings.high,
    ),
  }
}
