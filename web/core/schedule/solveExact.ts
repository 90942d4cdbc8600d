import type { Service } from "./scheduleInput"
import type { Arrangement, Choice, Puzzle } from "./solveBlocks"
import { arranged, readySpread, spreadMin, timeOn } from "./solveBlocks"

type Node = { made: Arrangement; left: readonly number[]; mayWeaken: boolean }

/** Whether the order may change, which plans may be the answer, and arrangements worth trying first. */
type Bounds = {
  mayReorder: boolean
  isAllowed: (service: Service) => boolean
  first: readonly Arrangement[]
}

/**
 * The closest arrangement of all that are allowed, or null where none is closer than the plan itself, by trying every
 * one and leaving off where it can no longer beat the best: foils never go on sooner than the last one placed, and a
 * weaker mix never makes one ready sooner.
 */
export function exactOrder(puzzle: Puzzle, { mayReorder, isAllowed, first }: Bounds): Arrangement | null {
  let best: Arrangement | null = null
  let bestMin = spreadMin(readySpread(puzzle.service))
  const keep = (arrangement: Arrangement) => {
    const service = arranged(puzzle, arrangement)
    const min = spreadMin(readySpread(service))
    if (min >= bestMin - tolerance || !isAllowed(service)) return
    best = arrangement
    bestMin = min
  }
  for (const arrangement of first) keep(arrangement)
  const visit = (node: Node) => {
    if (node.left.length === 0) return keep(node.made)
    for (const choice of choicesAt(puzzle, node, mayReorder)) {
      const next = after(node, choice)
      if (leastSpreadMin(puzzle, next) < bestMin - tolerance) visit(next)
    }
  }
  visit({ made: [], left: puzzle.blocks.map((_, block) => block), mayWeaken: true })
  return best
}

const tolerance = 1e-9

function choicesAt({ blocks }: Puzzle, { left, mayWeaken }: Node, mayReorder: boolean): Choice[] {
  const next = mayReorder ? left : left.slice(0, 1)
  return next.flatMap((block) =>
    blocks[block].options.flatMap((_, option) => (option === 0 || mayWeaken ? [{ block, option }] : [])),
  )
}

const after = ({ made, left, mayWeaken }: Node, choice: Choice): Node => ({
  made: [...made, choice],
  left: left.filter((block) => block !== choice.block),
  mayWeaken: mayWeaken && choice.option > 0,
})

/** No way of going on from here comes closer together than this. */
function leastSpreadMin(puzzle: Puzzle, { made, left }: Node): number {
  const { first, last, lastOnMin } = readySpread(arranged(puzzle, made))
  const slowest = left.flatMap((block) => puzzle.blocks[block].options[0].map(timeOn))
  return Math.max(last.atMin, lastOnMin + Math.max(...slowest)) - first.atMin
}
