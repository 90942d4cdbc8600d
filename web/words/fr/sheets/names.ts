import type { Direction } from "../../../../geometry/parting/direction"

/** Names of the common chapter that sheets use as well. */
export type Names = {
  /** "papillotes 1, 2 et 3" */
  foils(numbers: readonly number[]): string
  /** "3 papillotes" */
  foilCount(count: number): string
  direction(direction: Direction): string
}
