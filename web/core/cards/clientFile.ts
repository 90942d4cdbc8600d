import type { ClientCard } from "./card"
import { cardKind, cardVersion } from "./cardSchema"

/** All that is kept of one client: the card, and the texts of the plans that are on it. */
export type ClientExport = { madeAt: string; card: ClientCard; plans: readonly string[] }

/** One client as a file to be handed over: everything as it is kept, readable by anyone who has it. A plan that cannot be read goes as it was written. */
export const writeClient = ({ madeAt, card, plans }: ClientExport): string =>
  `${JSON.stringify(
    {
      kind: "partline-client",
      version: 1,
      madeAt,
      card: { kind: cardKind, version: cardVersion, ...card },
      plans: plans.map(asWritten),
    },
    null,
    1,
  )}\n`

function asWritten(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
