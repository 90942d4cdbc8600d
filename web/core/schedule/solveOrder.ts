import type { Service } from "./scheduleInput"
import { arranged, asGiven, puzzleOf, readySpread, spreadMin } from "./solveBlocks"
import { exactOrder } from "./solveExact"
import { climbedOrders, nearbyOrders } from "./solveNearby"
import { chairMinAt } from "./timing"

/** What may be changed. `mayTakeLonger` is for a cure, whose price counts the minutes that the client sits longer. */
export type Freedom = { reorder: boolean; weaken: boolean; mayTakeLonger?: boolean }

/** So many blocks are solved for certain. */
const exactBlocks = 7

/**
 * The same foils in an order, and early ones in a weaker mix, such that all come to the goal closest together.
 * Working sections stay together, no mix is made stronger, only the first ones are made weaker, never so weak that the
 * goal is not reached in time, and the client sits no longer than before unless that is allowed. The service itself
 * comes back where nothing is better.
 */
export function solveOrder(service: Service, may: Freedom): Service {
  const puzzle = puzzleOf(service, may.weaken)
  if (puzzle.blocks.length === 0) return service
  const isNoLonger = noLongerThan(service)
  const isAllowed = may.mayTakeLonger ? () => true : isNoLonger
  // Roots that go on later come between foils that follow: what a beginning comes to is not told by itself.
  const isApart = !service.foils.some(({ roots }) => roots?.later)
  if (puzzle.blocks.length <= exactBlocks && isApart) {
    const first = climbedOrders(puzzle, asGiven(puzzle), may.reorder)
    const exact = exactOrder(puzzle, { mayReorder: may.reorder, isAllowed, first })
    return exact ? arranged(puzzle, exact) : service
  }
  const closer = nearbyOrders(puzzle, asGiven(puzzle), may.reorder)
    .slice(0, mostTimed)
    .map((arrangement) => arranged(puzzle, arrangement))
    .filter((solved) => isCloser(solved, service))
  return closer.find(isNoLonger) ?? closer.find(isAllowed) ?? service
}

/** Whether the client sits no longer than in a plan. */
function noLongerThan(given: Service) {
  const mostMin = chairMinAt(given, "mid") + 1e-9
  return (solved: Service) => chairMinAt(solved, "mid") <= mostMin
}

/** So many are timed in full before the plan is left as it was given. */
const mostTimed = 24

/** How far apart, in minutes, the foils are expected to come to the goal. */
export const readySpreadMin = (service: Service) => spreadMin(readySpread(service))

const isCloser = (solved: Service, given: Service) => readySpreadMin(solved) < readySpreadMin(given) - 1e-9
