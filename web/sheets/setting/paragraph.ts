import type { Fonts } from "../pens/fontFile"
import type { Item } from "../pens/page"
import type { Block } from "./block"
import { lowered, stack } from "./stack"
import { letters, rule, rulePt, type, wrap } from "./typesetting"

export const lineMm = 4.7
const titleMm = 7.4
const gapMm = 4

/** Words over the whole of a width. */
export function paragraph(text: string, width: number, fonts: Fonts, setting = type.body): Block {
  const lines = wrap(text, width, setting, fonts)
  return {
    heightMm: lines.length * lineMm + 0.8,
    items: lines.map((line, i) => letters(line, [0, 3.6 + i * lineMm], setting)),
  }
}

/** Words after a sign of their own, such as a number or a bullet. */
export const signed = (sign: string, text: string, room: { width: number; signMm: number }, fonts: Fonts) => {
  const { heightMm, items } = paragraph(text, room.width - room.signMm, fonts)
  return {
    heightMm,
    items: [
      letters(sign, [0, 3.6], type.strong),
      ...items.map((item) =>
        item.kind === "text" ? { ...item, at: [room.signMm, item.at[1]] as const } : item,
      ),
    ],
  }
}

/** Blocks under a title, which takes the first of them along to the next page; nothing where there are none. */
export function underTitle(title: readonly Item[], [first, ...rest]: readonly Block[]): Block[] {
  if (!first) return []
  return [lowered(stack([{ heightMm: titleMm, items: title }, first]), gapMm), ...rest]
}

/** The same under a rule over the whole width. */
export const titled = (title: string, width: number, blocks: readonly Block[]) =>
  underTitle([rule([0, 0], [width, 0], rulePt.fine), letters(title, [0, 5.2], type.heading)], blocks)
