import { stitches as figures, type StitchWord } from "../../../../presets/placement/foils"
import type { Tools } from "../../tools"

/** Figures as the steps of a technique say them. */
export const stepWords = (t: Tools) => {
  const names: Record<StitchWord, string> = {
    fine: "fine stitches",
    medium: "medium stitches",
    chunky: "chunky stitches",
  }
  return {
    stitches: (word: StitchWord) => {
      const [low, high] = figures[word].stitchMm.range
      return `${names[word]} (${t.number(low)}–${t.mm(high)})`
    },
    mm: (mm: number) => t.told.mm(mm, 1),
  }
}
