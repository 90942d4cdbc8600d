import { type Item, tagged } from "../pens/page"
import type { Block } from "./block"
import type { Press } from "./press"
import { lowered, stack } from "./stack"
import { letters, rule, rulePt, type Type, type, wrap } from "./typesetting"

export const lineMm = 4.7
const titleMm = 7.4
const gapMm = 4
/** What a title adds over what stands under it. */
export const titledMm = titleMm + gapMm

/** Words over the whole of a width. */
export function paragraph(text: string, width: number, press: Press, setting: Type = type.body): Block {
  const lines = wrap(text, width, setting, press)
  return {
    heightMm: lines.length * lineMm + 0.8,
    items: tagged(
      lines.map((line, i) => letters(line, [0, 3.6 + i * lineMm], setting)),
      "P",
    ),
  }
}

/** Words after a sign of their own, such as a number or a bullet. */
export const signed = (sign: string, text: string, room: { width: number; signMm: number }, press: Press) => {
  const { heightMm, items } = paragraph(text, room.width - room.signMm, press)
  return {
    heightMm,
    items: [
      ...tagged([letters(sign, [0, 3.6], type.strong)], "P").map((item) => ({ ...item, ...tagOf(items) })),
      ...items.map((item) =>
        item.kind === "text" ? { ...item, at: [room.signMm, item.at[1]] as const } : item,
      ),
    ],
  }
}

/** The tag of what a sign stands before, so that both are read as one. */
const tagOf = ([first]: readonly Item[]) => (first?.tag ? { tag: first.tag } : {})

/** Blocks under a title, which takes the first of them along to the next page; nothing where there are none. */
export function underTitle(title: readonly Item[], [first, ...rest]: readonly Block[]): Block[] {
  if (!first) return []
  return [lowered(stack([{ heightMm: titleMm, items: tagged(title, "H2") }, first]), gapMm), ...rest]
}

/** The same under a rule over the whole width. */
export const titled = (title: string, width: number, blocks: readonly Block[]) =>
  underTitle([rule([0, 0], [width, 0], rulePt.fine), letters(title, [0, 5.2], type.heading)], blocks)
