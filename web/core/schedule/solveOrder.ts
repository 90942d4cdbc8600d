import type { Service } from "./scheduleInput"
import { arranged, asGiven, puzzleOf, readySpread, spreadMin } from "./solveBlocks"
import { exactOrder } from "./solveExact"
import { nearbyOrders } from "./solveNearby"
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
  const nearby = nearbyOrders(puzzle, asGiven(puzzle), may.reorder)
  if (puzzle.blocks.length <= exactBlocks) {
    const solved = arranged(puzzle, exactOrder(puzzle, nearby[0], may.reorder))
    return isCloser(solved, service) ? solved : service
  }
  return notLonger(
    service,
    nearby.slice(0, mostTimed).map((arrangement) => arranged(puzzle, arrangement)),
  )
}

/** The first of some that is closer and, being searched for and not proved, keeps the client no longer in the chair. */
function notLonger(given: Service, found: readonly Service[]): Service {
  const most = planService(given).chairMin.mid + 1e-9
  return found.find((solved) => isCloser(solved, given) && planService(solved).chairMin.mid <= most) ?? given
}

/** So many are timed in full before the plan is left as it was given. */
const mostTimed = 24

/** How far apart, in minutes, the foils are expected to come to the goal. */
export const readySpreadMin = (service: Service) => spreadMin(readySpread(service))

const isCloser = (solved: Service, given: Service) => readySpreadMin(solved) < readySpreadMin(given) - 1e-9
