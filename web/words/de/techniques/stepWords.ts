import { stitches as figures, type StitchWord } from "../../../../presets/placement/foils"
import type { stepWords as english } from "../../en/techniques/stepWords"

/** Figures as the steps of a technique say them. */
export const stepWords: typeof english = (t) => {
  const names: Record<StitchWord, string> = {
    fine: "feine Stiche",
    medium: "mittlere Stiche",
    chunky: "grobe Stiche",
  }
  return {
    stitches: (word) => {
      const [low, high] = figures[word].stitchMm.range
      return `${names[word]} (${t.number(low)}–${t.mm(high)})`
    },
    mm: (mm) => t.mm(mm, 1),
  }
}
