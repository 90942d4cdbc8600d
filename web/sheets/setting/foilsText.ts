import type { Press } from "./press"
import { type Type, widthMm } from "./typesetting"

/** Which foils are meant, by number where the room allows it, else how many. */
export function foilsText(foils: readonly number[], room: number, setting: Type, press: Press): string {
  const { foils: numbered, foilCount } = press.words.common
  const named = numbered(foils)
  return widthMm(named, setting, press) <= room ? named : foilCount(foils.length)
}
