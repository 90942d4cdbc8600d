import type { Fonts } from "../pens/fontFile"
import { type Type, widthMm } from "./typesetting"

/** Which foils are meant, by number where the room allows it, else how many. */
export function foilsText(foils: readonly number[], room: number, setting: Type, fonts: Fonts): string {
  const named = `${foils.length === 1 ? "foil" : "foils"} ${foils.join(", ")}`
  return widthMm(named, setting, fonts) <= room ? named : `${foils.length} foils`
}
