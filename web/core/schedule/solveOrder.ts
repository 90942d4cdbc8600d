import type { Service } from "./scheduleInput"
import { arranged, asGiven, puzzleOf, readySpread, spreadMin } from "./solveBlocks"
import { exactOrder } from "./solveExact"
import { nearbyOrder } from "./solveNearby"
import { planService } from "./timing"

/** What may be changed. */
export type Freedom = { reorder: boolean; weaken: boolean }

/** So many blocks are solved for certain. */
const exactBlocks = 7

/**
 * The same foils in an order, and early ones in a weaker mix, such that all come to the goal closest together.
 * Working sections stay together, no mix is made stronger, only the first ones are made weaker, and never so weak
 * that the goal is not reached in time. The service itself comes back where nothing is better.
 */
export function solveOrder(service: Service, may: Freedom): Service {
  const puzzle = puzzleOf(service, may.weaken)
  if (puzzle.blocks.length === 0) return service
  const nearby = nearbyOrder(puzzle, asGiven(puzzle), may.reorder)
  const best = puzzle.blocks.length <= exactBlocks ? exactOrder(puzzle, nearby, may.reorder) : nearby
  const solved = arranged(puzzle, best)
  return isCloser(solved, service) && !isLongerFound(puzzle.blocks.length, solved, service) ? solved : service
}

/** What was searched for, not proved, is not to keep the client longer in the chair than the plan that was given. */
const isLongerFound = (blocks: number, solved: Service, given: Service) =>
  blocks > exactBlocks && planService(solved).chairMin.mid > planService(given).chairMin.mid + 1e-9

/** How far apart, in minutes, the foils are expected to come to the goal. */
export const readySpreadMin = (service: Service) => spreadMin(readySpread(service))

const isCloser = (solved: Service, given: Service) => readySpreadMin(solved) < readySpreadMin(given) - 1e-9
