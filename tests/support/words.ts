import type { Words } from "../../web/words/en/words"
import { type Language, languageNames, loadWords } from "../../web/words/every/languages"

/** The words of every language, for tests that walk them. */
export const everyLanguage: readonly (readonly [Language, Words])[] = await Promise.all(
  languageNames.map(async (language) => [language, await loadWords(language)] as const),
)

/** British English. */
export const en: Words = await loadWords("en-GB")
