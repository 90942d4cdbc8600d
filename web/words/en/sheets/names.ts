import type { Direction } from "../../../../geometry/parting/direction"

/** Names of the common chapter that sheets use as well. */
export type Names = {
  /** "foils 1, 2 and 3" */
  foils(numbers: readonly number[]): string
  /** "3 foils" */
  foilCount(count: number): string
  direction(direction: Direction): string
}
