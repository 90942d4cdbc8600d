import { isFoil, type Section } from "../../../geometry/section/section"
import { labelPercentPerVolume } from "../../../presets/developers"
import type { Measured } from "../../plan/measured"
import { mixGrams } from "../../plan/mixGrams"
import type { Mix, Plan } from "../../plan/schema"
import type { Fonts } from "../fontFile"
import type { Block } from "./block"
import { moved } from "./page"
import { swatch } from "./swatch"
import { letters, shorten, type } from "./typesetting"

const textLeft = 17
const swatchMm = [13, 4.6] as const

/** One block for each mix that a foil uses: letter, hatch, product, strength, ratio, grams at the upper figure. */
export function mixBlocks(
  plan: Plan,
  figures: Measured,
  page: { width: number; scale: number; fonts: Fonts },
): Block[] {
  return plan.mixes.flatMap((mix, index) => {
    const sample = plan.sections.filter(isFoil).find((foil) => foil.mix === mix.id)
    if (!sample) return []
    const upperG = figures.byMix.get(mix.id)?.productG.high ?? 0
    const room = page.width - textLeft
    const slice: Section<"slice"> = { ...sample, kind: "slice" }
    return {
      heightMm: 15,
      items: [
        letters(mix.id, [0, 4.4], type.number),
        ...moved(swatch(slice, index, swatchMm, page.scale), 0, 7),
        letters(shorten(mix.product, room, type.strong, page.fonts), [textLeft, 3.2], type.strong),
        letters(strengthWords(mix), [textLeft, 7.8], type.body),
        letters(gramsWords(mix, upperG), [textLeft, 12.4], type.body),
      ],
    }
  })
}

const strengthWords = ({ developerVolume, ratio }: Mix) =>
  `${developerVolume} volume (${short(developerVolume * labelPercentPerVolume)} %), ` +
  `${short(ratio.lightener)} : ${short(ratio.developer)}`

const short = (value: number) => String(Math.round(value * 100) / 100)

/** What to weigh for the upper figure. */
function gramsWords({ ratio }: Mix, upperG: number): string {
  const { lightenerG, developerG } = mixGrams(upperG, ratio)
  return `${lightenerG + developerG} g = ${lightenerG} g lightener + ${developerG} g developer`
}
