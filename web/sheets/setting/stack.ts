import { moved } from "../pens/page"
import type { Block } from "./block"

export const sumMm = (blocks: readonly Block[]) => blocks.reduce((sum, { heightMm }) => sum + heightMm, 0)

/** Blocks one under another, as one block. */
export function stack(blocks: readonly Block[]): Block {
  let heightMm = 0
  const items = blocks.flatMap((block) => {
    const placed = moved(block.items, 0, heightMm)
    heightMm += block.heightMm
    return placed
  })
  return { heightMm, items }
}

const mostSpaceMm = 6
const leastSpaceMm = 2.5

/** Blocks with the least room between their groups at which these are told apart. */
export const apart = (blocks: readonly Block[]): Block[] =>
  blocks.map((block, i) => (block.startsGroup && i > 0 ? lowered(block, leastSpaceMm) : block))

/** Blocks one under another, with what is left of a height shared between their groups. */
export function spreadGroups(blocks: readonly Block[], heightMm: number): Block {
  const groups = blocks.filter(({ startsGroup }) => startsGroup).length
  const spaceMm = Math.min(mostSpaceMm, (heightMm - sumMm(blocks)) / groups)
  return stack(blocks.map((block, i) => (block.startsGroup && i > 0 ? lowered(block, spaceMm) : block)))
}

/** Blocks side by side, the first at the left edge and each at its own distance from it, as one block. */
export const beside = (...blocks: readonly { block: Block; leftMm: number }[]): Block => ({
  heightMm: Math.max(...blocks.map(({ block }) => block.heightMm)),
  items: blocks.flatMap(({ block, leftMm }) => moved(block.items, leftMm, 0)),
})

/** A block with room above it. */
export const lowered = ({ heightMm, items }: Block, downMm: number): Block => ({
  heightMm: heightMm + downMm,
  items: moved(items, 0, downMm),
})

/** As many blocks from the start as fit into a height, and the rest. */
export function split(blocks: readonly Block[], heightMm: number): [fitting: Block[], rest: Block[]] {
  let used = 0
  let count = 0
  while (count < blocks.length && used + blocks[count].heightMm <= heightMm + 1e-9)
    used += blocks[count++].heightMm
  return [blocks.slice(0, count), blocks.slice(count)]
}
