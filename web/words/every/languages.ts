import type { Words } from "../en/words"
import { type Tools, toolsOf } from "../tools"

/** The languages of screens and sheets by their BCP 47 tags, each called as it calls itself. */
export const languages = {
  "en-GB": "English (UK)",
  "en-US": "English (US)",
  es: "Español",
  fr: "Français",
  de: "Deutsch",
  uk: "Українська",
} as const

export type Language = keyof typeof languages
export const languageNames = Object.keys(languages) as Language[]

const files: Record<Language, () => Promise<{ words: (tools: Tools) => Words }>> = {
  "en-GB": () => import("../en/words"),
  "en-US": () => import("../en-us/words"),
  es: () => import("../es/words"),
  fr: () => import("../fr/words"),
  de: () => import("../de/words"),
  uk: () => import("../uk/words"),
}

/** The words of a language; each is a file of its own that nothing loads before it is asked for. */
export async function loadWords(language: Language): Promise<Words> {
  const { words } = await files[language]()
  return words(toolsOf(language))
}

/** The first language of a list of BCP 47 tags that there are words for; British English where there is none. */
export function languageFor(tags: readonly string[]): Language {
  for (const tag of tags) {
    const found =
      languageNames.find((name) => name.toLowerCase() === tag.toLowerCase()) ??
      languageNames.find((name) => name.split("-")[0] === tag.toLowerCase().split("-")[0])
    if (found) return found
  }
  return "en-GB"
}
