import type { Range, TradeFigures } from "../../../geometry/hair/tradeFigures"
import { fitAxes } from "../../../geometry/scalp/fit"
import { type Head, makeHeadFromAxes } from "../../../geometry/scalp/head"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { type Zone, zoneAt } from "../../../geometry/scalp/zones"
import { measureSection } from "../../../geometry/section/measureSection"
import { isFoil, rootsOf, type Section } from "../../../geometry/section/section"
import { headFigures } from "../../../presets/client/headSizes"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { movesOf } from "../document/hairlineMoves"
import type { Plan } from "../document/schema"
import { remembered, rememberedByText, rememberedLast } from "../memory/remembered"
import { type CoatedFigures, coatedFigures } from "./coatFigures"
import { figuresFor } from "./figuresFor"
import { netFigures } from "./netFigures"
import { type Overlap, sharedHair, takersBefore, toldOverlaps } from "./overlaps"
import { type TotalsFigures, takenTwiceBy, totalsOf } from "./totals"

/**
 * All figures of a plan: of each section in order of application, and of its foils together. Every total is made here.
 * Left-out hair is in none, and hair that two sections take is counted in the one that goes on first.
 */
export type Measured = {
  head: Head
  /** As drawn, and without the hair that those before have taken. */
  sections: readonly { section: Section; figures: CoatedFigures; net: CoatedFigures }[]
  /** Pairs of sections whose shared hair is worth telling. */
  overlaps: readonly Overlap[]
  totals: TotalsFigures
  /** How much less the totals are than all foils as drawn. */
  takenTwice: { hairG: number; productG: Range }
  byZone: Readonly<Record<Zone, TotalsFigures>>
  byMix: ReadonlyMap<string, TotalsFigures>
}

/** Measures what has changed and remembers it for as long as the plan lives. */
export const measured = remembered((plan: Plan): Measured => {
  const head = headOf(plan)
  const shared = sharedHair(plan.sections, head)
  const before = takersBefore(shared)
  const sections = plan.sections.map((section) => bothFigures(section, plan, before.get(section) ?? []))
  const foils = sections.filter(({ section }) => isFoil(section))
  const total = (belongs: (section: Section) => boolean) => totalWhere(belongs, foils)
  const zones = new Map(foils.map(({ section }) => [section, zoneAt(head, middleOf(section))]))
  const inZone = (zone: Zone) => total((section) => zones.get(section) === zone)
  return {
    head,
    sections,
    overlaps: toldOverlaps(shared, head),
    totals: total(() => true),
    takenTwice: takenTwiceBy(foils),
    byZone: { top: inZone("top"), left: inZone("left"), right: inZone("right"), back: inZone("back") },
    byMix: new Map(plan.mixes.map(({ id }) => [id, totalOfMix(id, foils)])),
  }
})

const totalWhere = (belongs: (section: Section) => boolean, all: Measured["sections"]) =>
  totalsOf(
    all.filter(({ section }) => isFoil(section) && belongs(section)).map(({ net }) => net),
    tradeFigures,
  )

/** What one mix coats: of a strand that has two, its own stretch alone. */
const totalOfMix = (mix: string, foils: Measured["sections"]) =>
  totalsOf(
    foils.flatMap(({ net }) => {
      const coat = net.coats.find((each) => each.mix === mix)
      // A foil in one mix is taken as it stands: it is asked for at every stroke.
      return coat ? (coat.part === "whole" ? net : { ...net, ...coat }) : []
    }),
    tradeFigures,
  )

/** The totals of some of a plan's sections, with hair that one before them has taken left to that one. */
export const totalsAmong = (sections: readonly Section[], plan: Plan): TotalsFigures =>
  totalWhere((section) => sections.includes(section), measured(plan).sections)

function bothFigures(section: Section, plan: Plan, before: readonly Section[]) {
  const figures = figuresOf(section, plan)
  const on = { head: headOf(plan), hair: plan.hair, ruling: rulingOf(section, plan) }
  return { section, figures, net: netFigures(section, figures, before, on) }
}

/** The figures of one foil of a plan as they count in every total. */
export function netOf({ id }: Section, plan: Plan): CoatedFigures {
  const found = measured(plan).sections.find(({ section }) => section.id === id)
  if (!found) throw new Error(`Section ${id} is not in the plan`)
  return found.net
}

/** A section belongs to the zone in which the middle of its parting lies. */
const middleOf = ({ parting }: Section) => parting[parting.length >> 1]

/** What a section's figures follow from beside itself. */
type Ground = { head: Head; hair: Plan["hair"]; own: TradeFigures; ofRoots: TradeFigures | null }

/** The figures of one section on the plan's head and hair, remembered until either, or what rules it, is another. */
export function figuresOf(section: Section, plan: Plan): CoatedFigures {
  const roots = isFoil(section) && rootsOf(section)
  return figuresOn(section, {
    head: headOf(plan),
    hair: plan.hair,
    own: figuresFor(section, plan),
    ofRoots: roots ? figuresFor(section, plan, roots.mix) : null,
  })
}

const rulingOf = (section: Section, plan: Plan) => (mix: string) => figuresFor(section, plan, mix)

const figuresOn = rememberedLast(
  (a: Ground, b: Ground) =>
    a.head === b.head && a.hair === b.hair && a.own === b.own && a.ofRoots === b.ofRoots,
  (section: Section, { head, hair, own, ofRoots }: Ground): CoatedFigures => {
    const mixOfRoots = isFoil(section) ? rootsOf(section)?.mix : undefined
    const ruling = (mix: string) => (mix === mixOfRoots && ofRoots) || own
    return coatedFigures(section, ruling, (part, figures) => measureSection(part, head, hair, figures))
  },
)

const mostHeads = 8

/** The head of a plan; the same object for the same size and hairline, with the same scalp for the same size. */
export const headOf = ({ head }: Pick<Plan, "head">): Head => headFor(head)

const headFor = rememberedByText(
  mostHeads,
  ({ size, hairline }: Plan["head"]) => {
    const { axes, surface } = scalpFor(size)
    return makeHeadFromAxes(axes, hairline.form, movesOf(hairline), surface)
  },
  remembered(({ size, hairline }: Plan["head"]) => JSON.stringify([size, hairline])),
)

const scalpFor = rememberedByText(mostHeads, (size: Plan["head"]["size"]) => {
  const axes = fitAxes(size, headFigures)
  return { axes, surface: headSurface(axes) }
})
