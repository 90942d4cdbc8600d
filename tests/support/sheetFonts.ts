import { readFileSync } from "node:fs"
import { papers } from "../../presets/sheets/papers"
import { fontFiles, loadFonts } from "../../web/sheets/pens/loadFonts"
import { type Press, pressOf } from "../../web/sheets/setting/press"
import type { SheetOptions } from "../../web/sheets/setting/sheetOptions"
import { en } from "./words"

/** The sheets' typeface as the headless command reads it. */
export const readFont = async (weight: keyof typeof fontFiles) =>
  new Uint8Array(readFileSync(`web/sheets/pens/fonts/${fontFiles[weight]}`))

export const sheetFonts = await loadFonts(readFont)

/** What sheets are set with in British English. */
export const british: Press = pressOf({ words: en, language: "en-GB" }, sheetFonts)

/** A sheet as most tests ask for it. */
export const sheetOptions = (options: Partial<SheetOptions> = {}): SheetOptions => ({
  paper: papers.a4,
  mirror: false,
  stops: "",
  zone: "UTC",
  language: "en-GB",
  words: en,
  ...options,
})
