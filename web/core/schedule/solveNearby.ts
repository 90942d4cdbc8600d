import type { Arrangement, Choice, Puzzle, Spread } from "./solveBlocks"
import { arranged, readySpread, spreadMin, timeOn } from "./solveBlocks"

type Found = { arrangement: Arrangement; spread: Spread }

/** Arrangements tried before the search stops where it is: bounds the time for the longest services. */
const mostTries = 700

/**
 * A good arrangement for many blocks: from the better of the given order and slowest first, take the best small
 * change of the two blocks that set the spread, the first to be ready and the last, until none helps.
 */
export function nearbyOrder(puzzle: Puzzle, start: Arrangement, mayReorder: boolean): Arrangement {
  const look = (arrangement: Arrangement): Found => ({
    arrangement,
    spread: readySpread(arranged(puzzle, arrangement)),
  })
  let best = look(start)
  if (mayReorder) best = better(best, look(slowestFirst(puzzle, start)))
  for (let tries = 0; tries < mostTries; ) {
    const changes = changesOf(puzzle, best, mayReorder).slice(0, mostTries - tries)
    const found = changes.map(look).reduce(better, best)
    if (found === best) break
    tries += changes.length
    best = found
  }
  return best.arrangement
}

/** The one whose foils come closer together; of two as close, the one whose foils wait less in all. */
function better(a: Found, b: Found): Found {
  const closerMin = spreadMin(a.spread) - spreadMin(b.spread)
  if (Math.abs(closerMin) > tolerance) return closerMin > 0 ? b : a
  return b.spread.waitMin < a.spread.waitMin - tolerance ? b : a
}

const tolerance = 1e-9

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
