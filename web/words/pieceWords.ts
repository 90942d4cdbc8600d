import type { Piece } from "../core/kinds/kindRecord"
import type { Forms, Tools } from "./tools"

/** What is told of some sections, with what those are called where it is known. */
export type OfPieces<T> = T extends unknown ? T & { piece?: Piece } : never

/** What sections are called together: foils, painted panels, or some of each. */
export function pieceWords(t: Tools, forms: Readonly<Record<Piece, Forms>>) {
  /** The word before their numbers. */
  const word = (count: number, piece: Piece = "foil") =>
    count === 1 ? (forms[piece].one ?? forms[piece].other) : (forms[piece].few ?? forms[piece].other)
  return {
    word,
    /** Each by its number on the map. */
    names: (numbers: readonly number[], piece?: Piece) =>
      `${word(numbers.length, piece)} ${t.and(numbers.map(t.whole))}`,
    /** So many of them. */
    count: (count: number, piece: Piece = "foil") => `${t.number(count)} ${t.count(count, forms[piece])}`,
  }
}
