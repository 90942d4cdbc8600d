import type { Words } from "../../web/words/en/words"
import { type Language, languageNames, loadWords } from "../../web/words/every/languages"

/** The words of every language, for tests that walk them. */
export const everyLanguage: readonly (readonly [Language, Words])[] = await Promise.all(
  languageNames.map(async (language) => [language, await loadWords(language)] as const),
)

/** British English. */
export const en: Words = await loadWords("en-GB")

/** A foil by its word in each language. */
export const foilWord: Record<string, RegExp> = {
  en: /\bfoils?\b/i,
  de: /Folie/i,
  es: /papel/i,
  fr: /papillote/i,
  uk: /фольг/i,
}
