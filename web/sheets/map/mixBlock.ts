import { isFoil, type Section } from "../../../geometry/section/section"
import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import type { Mix, Plan } from "../../core/document/schema"
import type { Bowl } from "../../core/mixing/bowls"
import { pouredWords } from "../../core/mixing/pouredWords"
import { labelPercent } from "../../core/mixing/strength"
import type { Fonts } from "../pens/fontFile"
import { moved } from "../pens/page"
import type { Block } from "../setting/block"
import { letters, shorten, type, wrap } from "../setting/typesetting"
import { swatch } from "../views/swatch"

const textLeft = 17
const lineMm = 4.6
const swatchMm = [13, 4.6] as const

/** One block for each mix that a foil uses: letter, hatch, product, strength, ratio, and its bowls with their minutes. */
export function mixBlocks(plan: Plan, page: { width: number; scale: number; fonts: Fonts }): Block[] {
  return mixesOfPlan(plan).flatMap(({ mix, made }, index) => {
    const sample = plan.sections.filter(isFoil).find((foil) => foil.mix === mix.id)
    if (!sample) return []
    const room = page.width - textLeft
    const words = made ? [...bowlLines(made.bowls), ...pouredLines(mix, made.bowls, plan)] : []
    const bowls = words.flatMap((line) => wrap(line, room, type.body, page.fonts))
    const slice: Section<"slice"> = { ...sample, kind: "slice" }
    return {
      heightMm: Math.max(15, 10.4 + bowls.length * lineMm),
      items: [
        letters(mix.id, [0, 4.4], type.number),
        ...moved(swatch(slice, index, swatchMm, page.scale), 0, 7),
        letters(shorten(mix.product, room, type.strong, page.fonts), [textLeft, 3.2], type.strong),
        letters(strengthWords(mix, made?.bowls ?? []), [textLeft, 7.8], type.body),
        ...bowls.map((words, line) => letters(words, [textLeft, 12.4 + line * lineMm], type.body)),
      ],
    }
  })
}

/** The trade's pair, the ratio, and for those who pour, the developer of each bowl in millilitres. */
function strengthWords({ developerVolume, ratio }: Mix, bowls: readonly Bowl[]): string {
  const pair = `${short(developerVolume)} volume (${short(labelPercent(developerVolume))} %)`
  const poured = [...new Set(bowls.map(({ developerMl }) => short(developerMl)))].join(" or ")
  return `${pair}, ${short(ratio.lightener)} : ${short(ratio.developer)}${poured ? `; ${poured} mL` : ""}`
}

const short = (value: number) => String(Math.round(value * 100) / 100)

/** What to weigh for each bowl, and when: bowls alike share a line. */
function bowlLines(bowls: readonly Bowl[]): string[] {
  const lines = new Map<string, number[]>()
  for (const { lightenerG, developerG, additives, atMin } of bowls) {
    const stirredIn = additives.map(({ name, grams }) => ` + ${short(grams)} g ${name}`).join("")
    const words = `${short(lightenerG)} g lightener + ${short(developerG)} g developer${stirredIn}`
    lines.set(words, [...(lines.get(words) ?? []), Math.round(atMin)])
  }
  return Array.from(lines, ([words, minutes]) => `${words}, minute ${minutes.join(", ")}`)
}

/** How the developer of a bowl is poured from the bottles that stand on the shelf, once for bowls alike. */
function pouredLines({ developerVolume }: Mix, bowls: readonly Bowl[], { salon }: Plan): string[] {
  const words = bowls.map(({ developerG }) => pouredWords(developerVolume, salon?.bottles ?? [], developerG))
  return [...new Set(words.filter((line) => line !== null))]
}
