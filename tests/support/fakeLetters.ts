import type { Fonts } from "../../web/sheets/pens/fontFile"
import type { SystemLetters } from "../../web/sheets/pens/systemLetters"
import { sheetFonts } from "./sheetFonts"

/** A system that has the letters of some scripts, each one em wide and drawn as a full square. */
export function systemOf(script: RegExp): SystemLetters {
  const widthEm = (run: string) => [...run].length
  return {
    has: (codePoint) => script.test(String.fromCodePoint(codePoint)),
    widthEm,
    picture: (run) => ({
      pixels: { data: new Uint8ClampedArray(4 * 8 * 8).fill(255), width: 8, height: 8 },
      leftEm: 0,
      topEm: -0.8,
      widthEm: widthEm(run),
      heightEm: 1,
    }),
  }
}

/** The sheets' typeface beside a system that has Japanese, Korean and Arabic. */
export const fontsOfScreen: Fonts = {
  ...sheetFonts,
  system: systemOf(/[\p{Script=Han}\p{Script=Kana}\p{Script=Hira}\p{Script=Hang}\p{Script=Arab}]/u),
}
