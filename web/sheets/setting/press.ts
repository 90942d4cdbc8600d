import type { Words } from "../../words/en/words"
import type { Language } from "../../words/every/languages"
import { type Tools, toolsOf } from "../../words/tools"
import type { Fonts } from "../pens/fontFile"

/** What a sheet is set with: the letters there are, the words of its language, and how that writes figures. */
export type Press = { fonts: Fonts; words: Words; language: Language; figures: Tools }

export const pressOf = (said: { words: Words; language: Language }, fonts: Fonts): Press => ({
  fonts,
  words: said.words,
  language: said.language,
  figures: toolsOf(said.language),
})
