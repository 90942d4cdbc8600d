import type { ProductSheet } from "../../../presets/formula/productSheet"
import { expected } from "../fields/expected"
import { choice, id, line, list, number, wholeNumber } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { byFoilKind, foilKinds } from "../kinds/kindRecords"
import type { GramsStart, Salon, StartFigures } from "./salon"

/** What of the salon rules a plan, as it is written to a file. */

const price = z.strictObject({ amount: number(limits.price), forG: number(limits.priceForG) })

const span = (limit: (typeof limits)[keyof typeof limits]) =>
  z.strictObject({ low: number(limit), high: number(limit) }).check(
    z.refine(({ low, high }) => low <= high, {
      path: ["low"],
      error: expected({ code: "no-more-than-high" }),
    }),
  )

export const productSheetSchema = z.strictObject({
  id,
  name: line(letters.name),
  kind: choice(["lightener", "oxidative-toner", "root-shade", "direct-toner"]),
  form: choice(["powder", "clay", "cream", "liquid"]),
  ratio: span(limits.sheetParts),
  developers: list(
    z.strictObject({
      volume: number(limits.developerVolume),
      levels: z.nullable(span(limits.liftLevels)),
    }),
    counts.developers,
    "developers",
  ),
  longestMin: z.nullable(number(limits.heldMin)),
  heatMin: z.nullable(number(limits.sheetHeatMin)),
  onScalp: z.nullable(z.boolean()),
  potLifeMin: z.nullable(number(limits.heldMin)),
  alertTest: z.nullable(z.boolean()),
  firstLookMin: z.optional(z.nullable(number(limits.heldMin))),
  additives: list(
    z.strictObject({
      name: line(letters.name),
      gPerG: number(limits.strandShare),
      replacesDeveloper: z.boolean(),
    }),
    counts.additives,
    "additives",
  ),
  price: z.nullable(price),
}) satisfies z.ZodMiniType<ProductSheet>

const amount = z.nullable(number(limits.price))

export const pricesSchema = z.strictObject({
  placement: amount,
  foil: amount,
  extraBowl: amount,
  toner: amount,
  chairHour: amount,
})

const placing = z.strictObject({
  low: number(limits.placeMin),
  mid: number(limits.placeMin),
  high: number(limits.placeMin),
})

const learntRange = z.strictObject({
  low: number(limits.learnt),
  mid: number(limits.learnt),
  high: number(limits.learnt),
})

export const foilKind = choice(foilKinds)

/** Whether three figures can lean on each other so: their correlations must leave each something of its own. */
const isPossible = ({ lossWithSoak: a, lossWithCoat: b, soakWithCoat: c }: GramsStart) =>
  1 - a * a - b * b - c * c + 2 * a * b * c > 1e-9

const spread = z.strictObject({ mid: number(limits.learnt), sd: number(limits.learntSd) })

/** What other salons learnt, joined, for one to start from. */
export const startSchema = z.strictObject({
  salons: wholeNumber(limits.salons),
  grams: z.nullable(
    z
      .strictObject({
        lossG: spread,
        soakGPerG: spread,
        coatMgPerCm2: spread,
        lossWithSoak: number(limits.leaning),
        lossWithCoat: number(limits.leaning),
        soakWithCoat: number(limits.leaning),
        scatterShare: number(limits.scatterShare),
        scatterShape: number(limits.scatterShape),
      })
      .check(z.refine(isPossible, { path: ["soakWithCoat"], error: expected({ code: "something-else" }) })),
  ),
  halfTimeMin: z.nullable(span(limits.heldMin)),
  paceMin: z.nullable(z.strictObject(byFoilKind(() => z.optional(placing)))),
}) satisfies z.ZodMiniType<StartFigures>

/** What the salon's shelf and a plan both hold. */
export const salonFields = {
  sheets: list(productSheetSchema, counts.sheets, "product-sheets"),
  bottles: list(number(limits.developerVolume), counts.developers, "bottles"),
  contact: z.optional(
    z.strictObject({ name: line(letters.name), phone: line(letters.name), emergency: line(letters.moment) }),
  ),
  scaleStepG: z.optional(number(limits.scaleStepG)),
  developerPrice: z.nullable(price),
  prices: pricesSchema,
  start: z.optional(startSchema),
}

export const salonSchema = z.strictObject({
  ...salonFields,
  learnt: list(
    z.strictObject({
      product: z.nullable(line(letters.name)),
      kind: z.nullable(foilKind),
      weighings: wholeNumber(limits.weighings),
      lossG: learntRange,
      soakGPerG: learntRange,
      coatMgPerCm2: learntRange,
    }),
    counts.learnt,
    "learnt-figures",
  ),
}) satisfies z.ZodMiniType<Salon>
