import { type CarrierKind, type Foil, type FoilKind, isFoil } from "../../../geometry/section/section"
import {
  clips,
  cushionFault,
  type Fault,
  faults,
  foilFault,
  seeThroughMm,
  trolley,
} from "../../../presets/sheets/teaching"
import { foilMin, looks } from "../../../presets/timing/pace"
import { sheetOf } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import { headOf, measured } from "../figures/measured"
import { workingSectionsOf } from "../figures/workingSections"
import { mixesUsed } from "../schedule/mixesUsed"
import { placesOf } from "../schedule/placesOf"
import { longestMin } from "../schedule/scheduleFromPlan"
import type { Zone } from "../schedule/scheduleInput"
import { countText } from "../text/figureText"
import { joinWords } from "../text/joinWords"
import { numberText } from "../text/numberText"
import { directionIn } from "../text/words"
import { type TeachingStep, teachingSteps } from "./teachingSteps"

const foilsOf = ({ sections }: Plan) => sections.filter(isFoil)

/** What the technique is for, in sentences made of what is drawn. */
export function aimOf(plan: Plan): string {
  const foils = foilsOf(plan)
  if (foils.length === 0) return "Nothing is drawn yet."
  const left = plan.sections.filter((section) => !isFoil(section)).map(({ name }) => name || "some hair")
  const what = teachingSteps(plan).filter(({ rows: [first] }) => isFoil(first))
  return [
    `Brighten ${placesOf(foils, plan, zoneWords)} with ${countText(foils.length, "section")}: ${joinWords([...new Set(what.map((step) => pieceOf(step, plan)))])}.`,
    ...(left.length > 0 ? [`Left as it is: ${joinWords([...new Set(left)])}.`] : []),
  ].join(" ")
}

const zoneWords: Record<Zone, string> = {
  hairline: "the hairline",
  top: "the top",
  left: "the sides",
  right: "the sides",
  back: "the back",
}

const pieces: Record<FoilKind, readonly [one: string, many: string]> = {
  slice: ["slice", "slices"],
  weave: ["weave", "weaves"],
  backcomb: ["backcombed section to melt", "backcombed sections to melt"],
}

function pieceOf({ rows: [first], sections }: TeachingStep, plan: Plan): string {
  if (!isFoil(first)) return ""
  const [one, many] = pieces[first.kind]
  const { name } = directionIn(first, headOf(plan))
  const way = name === "parallel to hairline" ? "along it" : name
  const thing = sections.length === 1 ? one : many
  return name === "parallel to hairline" ? `${thing} ${way}` : `${way} ${thing}`
}

/** What lies ready, a line each. */
export function toolsOf(plan: Plan): string[] {
  const parts = workingSectionsOf(plan).length
  const used = mixesUsed(plan.mixes, foilsOf(plan))
  return [
    trolley.comb,
    parts > 0 ? `Clips: ${parts}, one for each working section` : `Clips: ${clips.range.join(" to ")}`,
    ...carriersOf(plan),
    ...used.map((mix) => mixWords(mix, plan)),
    `${countText(Math.max(1, used.length), "bowl")}, not metal; scale`,
    trolley.keeping,
    trolley.minding,
  ]
}

const carrierWords: Record<CarrierKind, readonly [one: string, many: string]> = {
  foil: ["foil", "foils"],
  board: ["board", "boards"],
  "open-air": ["piece in the open air", "pieces in the open air"],
}

/** How many sheets of each size it takes. */
function carriersOf(plan: Plan): string[] {
  const counts = new Map<string, { foil: Foil; count: number }>()
  for (const { section, figures } of measured(plan).sections) {
    if (!isFoil(section)) continue
    const key = sizeWords(section)
    const count = section.carrier.kind === "foil" ? Math.max(1, figures.foils) : 1
    counts.set(key, { foil: section, count: (counts.get(key)?.count ?? 0) + count })
  }
  return [...counts].map(
    ([size, { foil, count }]) => `${countText(count, ...carrierWords[foil.carrier.kind])}${size}`,
  )
}

const sizeWords = ({ carrier: { kind, widthMm, lengthMm } }: Foil) =>
  kind === "open-air" ? "" : `, ${numberText(widthMm, 0)} × ${numberText(lengthMm, 0)} mm`

/** The product by its kind, not its name: the class has its own. */
function mixWords({ id, product, developerVolume, ratio }: Mix, plan: Plan): string {
  const sheet = sheetOf(product, plan)
  const what = sheet?.kind === "lightener" ? `${sheet.form} lightener` : "product by its directions"
  return `Mix ${id}: ${what}, ${numberText(developerVolume)} volume, ${numberText(ratio.lightener)} : ${numberText(ratio.developer)}`
}

/** When to look, and how long at most: from the sheets, else as is usual. */
export function timingOf(plan: Plan): string[] {
  const foils = foilsOf(plan)
  const used = mixesUsed(plan.mixes, foils)
  const { low, high } = foilMin.learner
  const count = measured(plan).totals.foils
  return [
    `First look ${looks.firstMin} minutes after the first foil is on, ${looks.firstDelicateMin} on fine, porous or lightened hair; then every ${looks.everyMin} (common practice). What the product’s directions say comes first.`,
    ...used.map((mix) => longestWords(mix, plan)),
    "Each foil’s time runs from the minute it goes on: write that down, and take each off when it is ready.",
    `At a learner’s ${numberText(low)} to ${numberText(high)} minutes a foil, ${countText(count, "foil")} take ${numberText(low * count, 0)} to ${numberText(high * count, 0)} minutes to place (common practice).`,
  ]
}

function longestWords({ id, product }: Mix, plan: Plan): string {
  const sheet = sheetOf(product, plan)
  const source = (sheet?.longestMin ?? null) === null ? "common practice, no sheet says" : "from its sheet"
  const first = sheet?.firstLookMin ? `, first look after ${numberText(sheet.firstLookMin)} minutes` : ""
  return `Mix ${id}: longest time ${numberText(longestMin(sheet ?? undefined))} minutes (${source})${first}.`
}

/** What a student ticks before the assessor comes. */
export function selfChecks(plan: Plan): string[] {
  const foils = foilsOf(plan)
  const thin = foils.filter(
    ({ kind, depthMm }) => kind === "slice" && Math.max(depthMm.start, depthMm.end) <= seeThroughMm,
  )
  const woven = foils.find(({ kind }) => kind === "weave")
  const left = plan.sections.filter((section) => !isFoil(section)).map(({ name }) => name || "left-out hair")
  const root = Math.min(...foils.map(({ rootDistanceMm }) => rootDistanceMm))
  return [
    ...(thin.length > 0 ? [`I can see light through ${numbersOf("slice", thin)}.`] : []),
    ...(woven && "stitchMm" in woven
      ? [
          `My stitches are even: ${numberText(woven.stitchMm)} mm taken, ${numberText(woven.gapMm)} mm left, all along ${numbersOf("weave", [woven])}.`,
        ]
      : []),
    ...(foils.some(({ kind }) => kind === "backcomb") ? ["The cushion is dry; product starts past it."] : []),
    ...(foils.length > 0
      ? [`Product starts ${numberText(root)} mm or more from the scalp, nowhere on the skin.`]
      : []),
    ...(foils.some(({ faces }) => faces === 2)
      ? ["Both faces of each strand are coated, without dry spots."]
      : []),
    ...(left.length > 0 ? [`Left out and still dry: ${joinWords([...new Set(left)])}.`] : []),
    ...(plan.sections.some(({ twin }) => twin) ? ["Left and right match, seen in the mirror."] : []),
    "I wrote down the minute each foil went on, and looked in time.",
    "No foil slips or swells, and none feels warm.",
  ].slice(0, 8)
}

const numbersOf = (kind: string, foils: readonly Foil[]) =>
  foils.length > 8
    ? `every ${kind}`
    : `${kind}${foils.length > 1 ? "s" : ""} ${joinWords(foils.map(({ mapNumber }) => String(mapNumber)))}`

/** The faults that what is drawn can have. */
export function faultsOf(plan: Plan): Fault[] {
  const foils = foilsOf(plan)
  return [
    ...faults,
    ...(foils.some(({ carrier }) => carrier.kind === "foil") ? [foilFault] : []),
    ...(foils.some(({ kind }) => kind === "backcomb") ? [cushionFault] : []),
  ]
}
