import { plainLetters } from "../text/plainLetters"
import { type CardRow, digitsOf } from "./cardList"

/** The cards that every word typed is in: somewhere in the name, or as figures in the phone number. */
export function searchCards<Row extends Pick<CardRow, "sought">>(
  rows: readonly Row[],
  typed: string,
): readonly Row[] {
  const words = plainLetters(typed).split(" ").filter(Boolean)
  if (words.length === 0) return rows
  const figures = digitsOf(typed)
  const isPhone = figures.length >= 3 && /^[\d\s+()/.-]+$/.test(typed.trim())
  return rows.filter(
    ({ sought: { name, digits } }) =>
      words.every((word) => name.includes(word)) || (isPhone && digits.includes(figures)),
  )
}
