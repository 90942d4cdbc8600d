import type { Fonts } from "./fontFile"
import { type Item, mmPerPt, type RunItem, type TextItem } from "./page"
import { lineWidthEm, runsOf, toPrintable } from "./printable"

/** Items as they can be drawn: each text printable, and the letters that the sheets' typeface lacks in runs of their own. */
export const inRuns = (items: readonly Item[], fonts: Fonts): Item[] =>
  items.flatMap((item): Item[] => {
    if (item.kind === "clipped") return [{ ...item, items: inRuns(item.items, fonts) }]
    return item.kind === "text" ? textRuns(item, fonts) : [item]
  })

const shareBefore = { left: 0, center: 0.5, right: 1 } as const

function textRuns(item: Item & TextItem, fonts: Fonts): Item[] {
  const text = toPrintable(item.text, fonts)
  const runs = runsOf(text, fonts, item.weight)
  if (runs.every(({ isOwn }) => isOwn)) return [text === item.text ? item : { ...item, text }]
  const { sizePt, weight, ink, at, align, tag = { role: "P" } } = item
  const em = sizePt * mmPerPt
  let x = at[0] - shareBefore[align] * lineWidthEm(text, fonts, weight) * em
  return runs.map((run, i): (TextItem | RunItem) & Pick<Item, "tag"> => {
    const set = { text: run.text, at: [x, at[1]] as const, sizePt, weight, ink, tag }
    x += lineWidthEm(run.text, fonts, weight) * em
    if (!run.isOwn) return { kind: "run", ...set }
    return { kind: "text", align: "left", ...set, ...(i < runs.length - 1 ? { goesOn: true } : {}) }
  })
}
