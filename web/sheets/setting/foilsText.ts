import type { Piece } from "../../core/kinds/kindRecord"
import type { Press } from "./press"
import { type Type, widthMm } from "./typesetting"

/** Foils by their numbers, and what they are called together where not all of them are foils. */
export type Called = { foils: readonly number[]; piece?: Piece | undefined }

/** Which foils are meant, by number where the room allows it, else how many. */
export function foilsText({ foils, piece }: Called, room: number, setting: Type, press: Press): string {
  const { foils: numbered, foilCount } = press.words.common
  const named = numbered(foils, piece)
  return widthMm(named, setting, press) <= room ? named : foilCount(foils.length, piece)
}
