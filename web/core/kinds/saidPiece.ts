import type { FoilKind } from "../../../geometry/section/section"
import type { Piece } from "./kindRecord"
import { pieceOf } from "./kindRecords"

/** What some are called, said only where not all of them are foils. */
export function saidPiece(foils: readonly { kind?: FoilKind | undefined }[]): { piece?: Piece } {
  const piece = pieceOf(foils)
  return piece === "foil" ? {} : { piece }
}

type OfKind = { id: string; kind?: FoilKind | undefined }

/** What is told of foils by their ids, with what the first of them, of which it tells most, is called. */
export const calledBy = <Told extends { foils: readonly string[] }>(
  told: Told,
  foils: readonly OfKind[],
) => ({
  ...told,
  piece: pieceOf(foils.filter(({ id }) => id === told.foils[0])),
})
