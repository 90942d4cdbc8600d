import type { Block } from "./block"
import { sumMm } from "./stack"

/** A block in a run over several pages; `again` stands over it where it begins a page, such as the head of its table. */
export type Flowing = Block & { again?: Block }

/** Blocks one under another, broken into pages of a height; a block higher than a page has one to itself. */
export function flow(blocks: readonly Flowing[], roomMm: number): Block[][] {
  const pages: Block[][] = []
  let page: Block[] = []
  for (const block of blocks) {
    if (page.length > 0 && sumMm(page) + block.heightMm > roomMm) {
      pages.push(page)
      page = block.again ? [block.again] : []
    }
    page.push(block)
  }
  return [...pages, page]
}
