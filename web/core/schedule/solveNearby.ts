import type { Arrangement, Choice, Puzzle, Spread } from "./solveBlocks"
import { arranged, readySpread, timeOn } from "./solveBlocks"
import { type BestSoFar, better, type Climb, type Found, withTried } from "./solveFound"
import { shaken } from "./solveShaken"

/** Arrangements tried before the search stops where it is, for 120 foils; for fewer more, as each takes less time. */
const triesOf120 = 700
const mostTries = 4000
const triesFor = ({ service }: Puzzle) =>
  Math.min(mostTries, Math.floor(triesOf120 * (120 / Math.max(1, service.foils.length)) ** 2))

/**
 * A good arrangement for many blocks: what climbing comes to, and from there small changes by lot while tries are left.
 * The best comes first, then what was best before it.
 */
export function nearbyOrders(puzzle: Puzzle, start: Arrangement, mayReorder: boolean): Arrangement[] {
  const { best, tries } = climbed(puzzle, start, mayReorder)
  return bestFirst(shaken(puzzle, best, { mayReorder, look: lookAt(puzzle), tries }))
}

/** The same without the changes by lot, where every arrangement is tried afterwards. */
export const climbedOrders = (puzzle: Puzzle, start: Arrangement, mayReorder: boolean): Arrangement[] =>
  bestFirst(climbed(puzzle, start, mayReorder).best)

const bestFirst = (best: BestSoFar) => best.map(({ arrangement }) => arrangement).reverse()

const lookAt =
  (puzzle: Puzzle) =>
  (arrangement: Arrangement): Found => ({
    arrangement,
    spread: readySpread(arranged(puzzle, arrangement)),
  })

/**
 * From the better of the given order, slowest first, and slowest first with the first so many weakened, take the best
 * small change of the blocks that set the spread, until none helps; then once more from the next best of the beginnings
 * while tries are left. What was best in its turn, and the tries that are left.
 */
function climbed(puzzle: Puzzle, start: Arrangement, mayReorder: boolean) {
  const look = lookAt(puzzle)
  const beginnings = startsOf(puzzle, start, mayReorder)
    .map(look)
    .sort((a, b) => (a === b ? 0 : better(a, b) === a ? -1 : 1))
  let best: BestSoFar = [beginnings[0]]
  let tries = triesFor(puzzle) - beginnings.length
  for (const begun of beginnings.slice(0, mostClimbs)) {
    if (tries <= 0) break
    const { found, tried } = climb(puzzle, begun, { mayReorder, look, tries })
    tries -= tried
    best = withTried(best, found)
  }
  return { best, tries }
}

/** As many of the beginnings are followed up, best first. */
const mostClimbs = 3

function climb(puzzle: Puzzle, begun: Found, { mayReorder, look, tries }: Climb) {
  let found = begun
  let tried = 0
  while (tried < tries) {
    const changes = changesOf(puzzle, found, mayReorder).slice(0, tries - tried)
    const next = changes.map(look).reduce(better, found)
    tried += changes.length
    if (next === found) break
    found = next
  }
  return { found, tried }
}

/** The given order; slowest first; and the first so many, of those that can be, in each weaker mix, slowest first. */
function startsOf(puzzle: Puzzle, start: Arrangement, mayReorder: boolean): Arrangement[] {
  if (!mayReorder) return [start, ...weakenedStarts(puzzle, start)]
  const slowest = slowestFirst(puzzle, start)
  return [start, slowest, ...weakenedStarts(puzzle, slowest)]
}

/** For each number of blocks and each weaker option those at the front weakened; they and the rest each stay slowest first. */
function weakenedStarts({ blocks }: Puzzle, order: Arrangement): Arrangement[] {
  const most = Math.max(...blocks.map(({ options }) => options.length)) - 1
  return Array.from({ length: most }, (_, i) => i + 1).flatMap((option) =>
    order.flatMap((_, at) => {
      const weak = order
        .slice(0, at + 1)
        .map(({ block }) => ({ block, option: Math.min(option, blocks[block].options.length - 1) }))
      return weak.every(({ option }) => option > 0) ? [[...weak, ...order.slice(at + 1)]] : []
    }),
  )
}

/** Where all foils take as long to place, this order is the best there is. */
function slowestFirst({ blocks }: Puzzle, start: Arrangement): Arrangement {
  const slowest = ({ block, option }: Choice) => Math.max(...blocks[block].options[option].map(timeOn))
  return [...start].sort((a, b) => slowest(b) - slowest(a))
}

function changesOf(puzzle: Puzzle, { arrangement, spread }: Found, mayReorder: boolean): Arrangement[] {
  const moves = mayReorder ? movesOf(puzzle, arrangement, spread) : []
  return [...moves, ...mixChanges(puzzle, arrangement)].filter(isEarlyOnly)
}

/** The last to be ready goes on sooner, or the first to be ready later. */
function movesOf({ blocks }: Puzzle, arrangement: Arrangement, { first, last }: Spread): Arrangement[] {
  const whereIs = (id: string) =>
    arrangement.findIndex(({ block, option }) => blocks[block].options[option].some((foil) => foil.id === id))
  const [lastAt, firstAt] = [whereIs(last.id), whereIs(first.id)]
  return [
    ...arrangement.flatMap((_, to) => (to < lastAt ? [moved(arrangement, lastAt, to)] : [])),
    ...arrangement.flatMap((_, to) =>
      to > firstAt && firstAt >= 0 ? [moved(arrangement, firstAt, to)] : [],
    ),
  ]
}

function mixChanges({ blocks }: Puzzle, arrangement: Arrangement): Arrangement[] {
  const weakened = arrangement.findIndex(({ option }) => option === 0)
  return arrangement
    .slice(0, weakened + 1 || arrangement.length)
    .flatMap((choice, at) =>
      blocks[choice.block].options.flatMap((_, option) =>
        option === choice.option ? [] : [arrangement.with(at, { ...choice, option })],
      ),
    )
}

/** Only blocks before every unweakened one are weaker. */
export const isEarlyOnly = (arrangement: Arrangement) =>
  arrangement.every(({ option }, at) => option === 0 || at === 0 || arrangement[at - 1].option > 0)

const moved = (arrangement: Arrangement, from: number, to: number): Arrangement =>
  arrangement.toSpliced(from, 1).toSpliced(to, 0, arrangement[from])
