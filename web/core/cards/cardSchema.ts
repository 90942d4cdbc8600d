import { standingAllergies } from "../document/consultationSchema"
import { choice, day, group, id, line, lines } from "../fields/fields"
import { letters } from "../fields/limits"
import { z } from "../fields/zod"
import { type ClientCard, cardColours } from "./card"

/** The card of a client as it is written down. */

export const cardKind = "partline-card"
export const cardVersion = 1

export const cardSchema = group({
  kind: z.literal(cardKind),
  version: z.literal(cardVersion),
  id,
  name: line(letters.name),
  colour: choice(cardColours),
  phone: line(letters.name),
  sheetLanguage: line(letters.tag),
  allergies: standingAllergies,
  note: lines(letters.note),
  consent: z.nullable(group({ said: choice(["yes", "no"]), on: day })),
}) satisfies z.ZodMiniType<ClientCard>
