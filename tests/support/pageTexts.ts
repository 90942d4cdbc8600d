import type { Item, Page, TextItem } from "../../web/sheets/pens/page"
import { sheetFonts } from "./sheetFonts"

const flat = (items: readonly Item[]): Item[] =>
  items.flatMap((item) => (item.kind === "clipped" ? flat(item.items) : [item]))

/** Every text of some pages, whatever it stands in. */
export const texts = (pages: readonly Page[]): (TextItem & Pick<Item, "tag">)[] =>
  pages.flatMap((page) => flat(page.items)).filter((item) => item.kind === "text")

/** Where a text is printed, from its left end to its right, mm. */
export function spanOf({ text, at, align, sizePt, weight }: TextItem): [number, number] {
  const width = (sheetFonts[weight].widthEm(text) * sizePt * 25.4) / 72
  const left = align === "left" ? at[0] : align === "right" ? at[0] - width : at[0] - width / 2
  return [left, left + width]
}
