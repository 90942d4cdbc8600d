import { stitches as figures, type StitchWord } from "../../../../presets/placement/foils"
import type { Tools } from "../../tools"

/** Figures as the steps of a technique say them. */
export const stepWords = (t: Tools) => {
  const names: Record<StitchWord, string> = {
    fine: "дрібними стібками",
    medium: "середніми стібками",
    chunky: "великими стібками",
  }
  return {
    stitches: (word: StitchWord) => {
      const [low, high] = figures[word].stitchMm.range
      return `${names[word]} (${t.number(low)}–${t.mm(high)})`
    },
    mm: (mm: number) => t.mm(mm, 1),
    /** After "доки не буде": rows and slices as they are counted. */
    rows: (count: number) =>
      t.count(count, { one: "# ряд", few: "# ряди", many: "# рядів", other: "# ряду" }),
    slices: (count: number) =>
      t.count(count, { one: "# слайс", few: "# слайси", many: "# слайсів", other: "# слайса" }),
  }
}
