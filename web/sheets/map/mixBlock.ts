import { isCoatedWith, isFoil, type Section } from "../../../geometry/section/section"
import { type MixInPlan, mixesOfPlan } from "../../core/bowls/mixesOfPlan"
import type { Mix, Plan } from "../../core/document/schema"
import type { Bowl } from "../../core/mixing/bowls"
import { pouringOf } from "../../core/mixing/pouring"
import { labelPercent } from "../../core/mixing/strength"
import { bowlsMixed, type MixedBowl, mixesMixed } from "../../core/record/asMixed"
import { say } from "../../words/say"
import { type Item, moved } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, type Type, type, wrap } from "../setting/typesetting"
import { swatch } from "../views/swatch"

const textLeft = 17
const lineMm = 4.6
const swatchMm = [13, 4.6] as const

type Setting = { width: number; scale: number; press: Press }
type Line = { text: string; setting: Type }

/** One block for each mix that a foil uses: letter, hatch, product, strength, ratio, and its bowls with their minutes: as they were mixed where a service was done, else as they are planned. What was mixed for no foil that is left has one too. */
export function mixBlocks(plan: Plan, page: Setting): Block[] {
  const used = mixesOfPlan(plan).flatMap((planned, index) => {
    const sample = plan.sections.filter(isFoil).find((foil) => isCoatedWith(foil, planned.mix.id))
    if (!sample) return []
    const slice: Section<"slice"> = { ...sample, kind: "slice" }
    const hatch = swatch(slice, index, swatchMm, page.scale)
    return [{ id: planned.mix.id, hatch, lines: linesOf(planned, plan, page.press) }]
  })
  const known = new Set(used.map(({ id }) => id))
  const others = mixesMixed(plan).filter((id) => !known.has(id))
  return [
    ...used,
    ...others.map((id) => ({ id, hatch: [], lines: mixedLines(bowlsMixed(plan, id) ?? [], page.press) })),
  ].map((mix) => blockOf(mix, page))
}

function blockOf(
  { id, hatch, lines }: { id: string; hatch: readonly Item[]; lines: readonly Line[] },
  { width, press }: Setting,
): Block {
  const room = width - textLeft
  const fitting = lines.flatMap(({ text, setting }) =>
    wrap(text, room, setting, press).map((part) => ({ part, setting })),
  )
  return {
    heightMm: Math.max(15, 1.2 + fitting.length * lineMm),
    items: [
      letters(id, [0, 4.4], type.number),
      ...moved(hatch, 0, 7),
      ...fitting.map(({ part, setting }, i) => letters(part, [textLeft, 3.2 + i * lineMm], setting)),
    ],
  }
}

/** What is said of a mix: of each recipe that was weighed, else of what is planned. */
function linesOf({ mix, made }: MixInPlan, plan: Plan, press: Press): Line[] {
  const mixed = bowlsMixed(plan, mix.id)
  if (mixed && mixed.length > 0) return mixedLines(mixed, press)
  const planned = made?.bowls ?? []
  const bowls = mixed
    ? [press.words.formula.onSheet.notRecorded]
    : [...bowlLines(planned, press), ...pouredLines(mix, planned, plan, press)]
  return recipeLines(mix, strengthWords(mix, mixed ? [] : planned, press), bowls)
}

const recipeLines = (
  { product }: { product: string },
  strength: string,
  bowls: readonly string[],
): Line[] => [
  { text: product, setting: type.strong },
  ...[strength, ...bowls].map((text) => ({ text, setting: type.body })),
]

/** The trade's pair, the ratio, and for those who pour, the developer of each bowl in millilitres. */
function strengthWords(
  { developerVolume, ratio }: Pick<Mix, "developerVolume" | "ratio">,
  bowls: readonly Bowl[],
  { words }: Press,
): string {
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

/** What was weighed for each bowl, and when, under the recipe it was weighed by: bowls of one mix may differ. */
function mixedLines(bowls: readonly MixedBowl[], press: Press): Line[] {
  const recipes = [...new Set(bowls.map(recipeOf))]
  return recipes.flatMap((recipe) => {
    const own = bowls.filter((bowl) => recipeOf(bowl) === recipe)
    const said = own.map((bowl) => mixedWords(bowl, press))
    return recipeLines(own[0], strengthWords(own[0], [], press), said)
  })
}

const recipeOf = ({ product, developerVolume, ratio }: MixedBowl) =>
  JSON.stringify([product, developerVolume, ratio.lightener, ratio.developer])

function mixedWords({ additives = [], by, ...bowl }: MixedBowl, { words }: Press): string {
  const said = words.formula.onSheet.bowlMixed({
    bowl: words.formula.onSheet.bowl({ ...bowl, additives }),
    minute: bowl.atMin,
  })
  return by ? `${said} ${words.record.mixedBy(by)}` : said
}

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
