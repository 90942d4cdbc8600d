import { isFoil, type Section } from "../../../geometry/section/section"
import { mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import type { Mix, Plan } from "../../core/document/schema"
import type { Bowl } from "../../core/mixing/bowls"
import { pouringOf } from "../../core/mixing/pouring"
import { labelPercent } from "../../core/mixing/strength"
import { bowlsMixed, type MixedBowl } from "../../core/record/asMixed"
import { say } from "../../words/say"
import { moved } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, shorten, type, wrap } from "../setting/typesetting"
import { swatch } from "../views/swatch"

const textLeft = 17
const lineMm = 4.6
const swatchMm = [13, 4.6] as const

/** One block for each mix that a foil uses: letter, hatch, product, strength, ratio, and its bowls with their minutes: as they were mixed where a service was done, else as they are planned. */
export function mixBlocks(plan: Plan, page: { width: number; scale: number; press: Press }): Block[] {
  return mixesOfPlan(plan).flatMap(({ mix, made }, index) => {
    const sample = plan.sections.filter(isFoil).find((foil) => foil.mix === mix.id)
    if (!sample) return []
    const room = page.width - textLeft
    const planned = made?.bowls ?? []
    const mixed = bowlsMixed(plan, mix.id)
    const words = mixed
      ? mixedLines(mixed, page.press)
      : [...bowlLines(planned, page.press), ...pouredLines(mix, planned, plan, page.press)]
    const bowls = words.flatMap((line) => wrap(line, room, type.body, page.press))
    const slice: Section<"slice"> = { ...sample, kind: "slice" }
    return {
      heightMm: Math.max(15, 10.4 + bowls.length * lineMm),
      items: [
        letters(mix.id, [0, 4.4], type.number),
        ...moved(swatch(slice, index, swatchMm, page.scale), 0, 7),
        letters(shorten(mix.product, room, type.strong, page.press), [textLeft, 3.2], type.strong),
        letters(strengthWords(mix, mixed ? [] : planned, page.press), [textLeft, 7.8], type.body),
        ...bowls.map((words, line) => letters(words, [textLeft, 12.4 + line * lineMm], type.body)),
      ],
    }
  })
}

/** The trade's pair, the ratio, and for those who pour, the developer of each bowl in millilitres. */
function strengthWords({ developerVolume, ratio }: Mix, bowls: readonly Bowl[], { words }: Press): string {
  return words.formula.onSheet.strength({
    volume: developerVolume,
    percent: labelPercent(developerVolume),
    ratio,
    pouredMl: [...new Set(bowls.map(({ developerMl }) => developerMl))],
  })
}

/** What to weigh for each bowl, and when: bowls alike share a line. */
function bowlLines(bowls: readonly Bowl[], { words }: Press): string[] {
  const w = words.formula.onSheet
  const lines = new Map<string, number[]>()
  for (const bowl of bowls) {
    const said = w.bowl(bowl)
    lines.set(said, [...(lines.get(said) ?? []), bowl.atMin])
  }
  return Array.from(lines, ([bowl, minutes]) => w.bowlAt({ bowl, minutes }))
}

/** What was weighed for each bowl, and when. */
const mixedLines = (bowls: readonly MixedBowl[], { words }: Press): string[] =>
  bowls.map(({ additives = [], ...bowl }) =>
    words.formula.onSheet.bowlMixed({
      bowl: words.formula.onSheet.bowl({ ...bowl, additives }),
      minute: bowl.atMin,
    }),
  )

/** How the developer of a bowl is poured from the bottles in stock, once for bowls alike. */
function pouredLines(
  { developerVolume }: Mix,
  bowls: readonly Bowl[],
  { salon }: Plan,
  { words }: Press,
): string[] {
  const lines = bowls.map(({ developerG }) => pouringOf(developerVolume, salon?.bottles ?? [], developerG))
  return [...new Set(lines.flatMap((line) => (line ? say(words.formula.mixing.poured, line) : [])))]
}
