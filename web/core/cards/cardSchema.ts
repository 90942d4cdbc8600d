import { choice, day, group, id, line, lines, list } from "../fields/fields"
import { counts, letters } from "../fields/limits"
import { z } from "../fields/zod"
import { allergyKinds, type ClientCard, cardColours, type StandingAllergy } from "./card"

/** The card of a client as it is written down. */

export const cardKind = "partline-card"
export const cardVersion = 1

export const allergySchema = group({
  kind: choice(allergyKinds),
  to: line(letters.name),
  since: line(letters.name),
}) satisfies z.ZodMiniType<StandingAllergy>

export const standingAllergies = list(allergySchema, counts.allergies, "allergies")

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
