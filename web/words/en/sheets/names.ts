import type { Direction } from "../../../../geometry/parting/direction"
import type { Piece } from "../../../core/kinds/kindRecord"

/** Names of the common chapter that sheets use as well. */
export type Names = {
  /** "foils 1, 2 and 3" */
  foils(numbers: readonly number[], piece?: Piece): string
  /** "3 foils" */
  foilCount(count: number, piece?: Piece): string
  direction(direction: Direction): string
}
