import { readFileSync } from "node:fs"
import { fontFiles, loadFonts } from "../../web/sheets/pens/loadFonts"

/** The sheets' typeface as the headless command reads it. */
export const readFont = async (weight: keyof typeof fontFiles) =>
  new Uint8Array(readFileSync(`web/sheets/pens/fonts/${fontFiles[weight]}`))

export const sheetFonts = await loadFonts(readFont)
