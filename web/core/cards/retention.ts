import type { CardRow } from "./cardList"

/** After how many years without a visit a salon may want to be asked about a card: choices, not advice. */
export const retentionYears = [1, 2, 3, 5, 7, 10] as const
export type RetentionYears = (typeof retentionYears)[number]

/** When the salon is asked about old cards, and of which it has said that they stay, each on a day. `years` of null: never. */
export type Retention = { years: RetentionYears | null; stays: Readonly<Record<string, string>> }

export const noRetention: Retention = { years: null, stays: {} }

/** A card that nobody came for in so long. `since`: the day of the latest plan, else the day the card was written last. */
export type LongUnseen = { id: string; name: string; since: string }

/**
 * The cards to be asked about on a day, the longest unseen first. A card without a day of any kind is not among them;
 * one that stays is asked about again once as many years have gone since that was said.
 */
export function longUnseen(
  rows: readonly Pick<CardRow, "id" | "name" | "latestDay">[],
  { years, stays }: Retention,
  { today, writtenOn }: { today: string; writtenOn: ReadonlyMap<string, string> },
): LongUnseen[] {
  if (years === null) return []
  const before = yearsBefore(today, years)
  return rows
    .flatMap(({ id, name, latestDay }) => {
      const since = latestDay ?? writtenOn.get(id)
      return since !== undefined && since < before && (stays[id] ?? "") < before ? [{ id, name, since }] : []
    })
    .sort((a, b) => a.since.localeCompare(b.since) || a.name.localeCompare(b.name))
}

/** The same day of an earlier year; the 29th of February of a common year stands after the 28th. */
const yearsBefore = (day: string, years: number) =>
  `${String(Number(day.slice(0, 4)) - years).padStart(4, "0")}${day.slice(4)}`
