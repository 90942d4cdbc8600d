import { remembered } from "../memory/remembered"
import { plainLetters } from "../text/plainLetters"
import type { CardEntry } from "./cardList"

const digitsOf = (text: string) => text.replace(/\D/g, "")

const keyOf = remembered(({ name, phone }: CardEntry) => ({
  name: plainLetters(name),
  digits: digitsOf(phone),
}))

/** The cards that every word typed is in: somewhere in the name, or as figures in the phone number. */
export function searchCards<Entry extends CardEntry>(
  entries: readonly Entry[],
  sought: string,
): readonly Entry[] {
  const words = plainLetters(sought).split(" ").filter(Boolean)
  if (words.length === 0) return entries
  const figures = digitsOf(sought)
  const isPhone = figures.length >= 3 && /^[\d\s+()/.-]+$/.test(sought.trim())
  return entries.filter((entry) => {
    const { name, digits } = keyOf(entry)
    return words.every((word) => name.includes(word)) || (isPhone && digits.includes(figures))
  })
}
