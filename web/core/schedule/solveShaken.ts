import type { Arrangement, Puzzle } from "./solveBlocks"
import { spreadMin } from "./solveBlocks"
import { type BestSoFar, type Climb, withTried } from "./solveFound"

/** An arrangement as it is shaken: the order, the weaker option each block would have, and how many of the first have theirs. */
type Shaken = { order: readonly number[]; wanted: readonly number[]; weakened: number }

/**
 * What is tried when no single step helps any more: small changes by lot, the worse ones taken too while it is early
 * (simulated annealing; Kirkpatrick, Gelatt, Vecchi, Science 1983;220:671).
 */
export function shaken({ blocks }: Puzzle, begun: BestSoFar, { mayReorder, look, tries }: Climb): BestSoFar {
  const lot = lots()
  let [now, best] = [begun[begun.length - 1], begun]
  let state = stateOf(blocks, now.arrangement)
  for (let i = 0; i < tries; i++) {
    const changed = changedByLot(blocks, state, mayReorder, lot)
    const next = look(arrangementOf(blocks, changed))
    const warmthMin = hottestMin * (1 - i / tries) ** 2 + coldestMin
    const worseMin = spreadMin(next.spread) - spreadMin(now.spread)
    if (worseMin > 0 && lot() >= Math.exp(-worseMin / warmthMin)) continue
    state = changed
    now = next
    best = withTried(best, now)
  }
  return best
}

const hottestMin = 5
const coldestMin = 0.02

function stateOf(blocks: Puzzle["blocks"], arrangement: Arrangement): Shaken {
  const wanted = blocks.map(() => 1)
  for (const { block, option } of arrangement) if (option > 0) wanted[block] = option
  return {
    order: arrangement.map(({ block }) => block),
    wanted,
    weakened: arrangement.filter(({ option }) => option > 0).length,
  }
}

/** The first so many blocks are weaker, as far as they can be: one that cannot ends that. */
function arrangementOf(blocks: Puzzle["blocks"], { order, wanted, weakened }: Shaken): Arrangement {
  let mayWeaken = true
  return order.map((block, at) => {
    const most = blocks[block].options.length - 1
    mayWeaken &&= at < weakened && most > 0
    return { block, option: mayWeaken ? Math.min(wanted[block], most) : 0 }
  })
}

/** Another number of the first ones weakened, one block's weaker mix or all of theirs, two blocks exchanged, or one moved. */
function changedByLot(
  blocks: Puzzle["blocks"],
  state: Shaken,
  mayReorder: boolean,
  lot: () => number,
): Shaken {
  const { order, wanted } = state
  const pick = () => Math.floor(lot() * order.length)
  const [from, to, kind] = [pick(), pick(), mayReorder ? lot() : lot() * 0.4]
  if (kind < 0.2) return { ...state, weakened: Math.floor(lot() * (order.length + 1)) }
  if (kind < 0.4) {
    const most = Math.max(1, blocks[order[from]].options.length - 1)
    const option = 1 + Math.floor(lot() * most)
    return { ...state, wanted: kind < 0.25 ? wanted.map(() => option) : wanted.with(order[from], option) }
  }
  if (kind < 0.7) return { ...state, order: order.with(from, order[to]).with(to, order[from]) }
  return { ...state, order: order.toSpliced(from, 1).toSpliced(to, 0, order[from]) }
}

/** Park and Miller's generator: the same plan has the same answer on every machine. */
function lots() {
  let state = 20261130
  return () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
}
