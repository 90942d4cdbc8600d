import type { Range } from "../../../geometry/hair/tradeFigures"
import { labelPercent } from "../mixing/strength"
import type { TonerInPlan } from "./toners"

/** What to weigh for a toner mix, the toner first; `wantedG` is what goes on the hair. */
export type TonerBowlCode =
  | { code: "toner-alone"; product: string; tonerG: number; clearG: number; wantedG: Range }
  | {
      code: "toner-mixed"
      product: string
      tonerG: number
      /** Of the maker's clear; 0 where none is wanted. */
      clearG: number
      developerG: number
      developerMl: number
      volume: number
      percent: number
      wantedG: Range
    }

/** Null while the toner is not chosen or there is no hair for it. */
export function tonerBowlOf({ choice, bowl, wantedG }: TonerInPlan): TonerBowlCode | null {
  if (!choice || !bowl) return null
  const { product, developerVolume: volume } = choice
  const { lightenerG: tonerG, clearG, developerG, developerMl } = bowl
  return volume === null
    ? { code: "toner-alone", product, tonerG, clearG, wantedG }
    : {
        code: "toner-mixed",
        product,
        tonerG,
        clearG,
        developerG,
        developerMl,
        volume,
        percent: labelPercent(volume),
        wantedG,
      }
}
