import { line, number } from "../fields/fields"
import { letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import type { Toning } from "./toning"

/** What is toned with, as it is written to a file. */

const choice = z.nullable(
  z.strictObject({
    product: line(letters.name),
    developerVolume: z.nullable(number(limits.developerVolume)),
    parts: number(limits.tonerParts),
  }),
)

export const toningSchema = z.strictObject({
  toner: choice,
  rootShade: choice,
}) satisfies z.ZodMiniType<Toning>
