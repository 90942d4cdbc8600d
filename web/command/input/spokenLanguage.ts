import { type Language, languageNames } from "../../words/every/languages"

/** A language that there are words for, by a BCP 47 tag: the very one, or the first of the same tongue; null for another. */
export function knownLanguage(tag: string): Language | null {
  const tongue = (name: string) => name.toLowerCase().split("-")[0]
  return (
    languageNames.find((name) => name.toLowerCase() === tag.toLowerCase()) ??
    languageNames.find((name) => tongue(name) === tag.toLowerCase()) ??
    null
  )
}
