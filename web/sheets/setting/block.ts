import type { Item } from "../pens/page"

/** A piece of a sheet, laid out from its own top left corner, mm; `startsGroup` where a heading stands over it. */
export type Block = { heightMm: number; items: readonly Item[]; startsGroup?: boolean }
