import type { Words } from "../../words/en/words"
import type { Language } from "../../words/every/languages"
import { type Tools, toolsOf } from "../../words/tools"
import type { Fonts } from "../pens/fontFile"
import type { SheetOptions } from "./sheetOptions"

/** What a sheet is set with: the letters there are, the words of its language, and how that writes figures. */
export type Press = { fonts: Fonts; words: Words; language: Language; figures: Tools } & Pick<
  SheetOptions,
  "onStep"
>

export const pressOf = (
  { words, language, onStep }: Pick<SheetOptions, "words" | "language" | "onStep">,
  fonts: Fonts,
): Press => ({ fonts, words, language, figures: toolsOf(language), ...(onStep && { onStep }) })
