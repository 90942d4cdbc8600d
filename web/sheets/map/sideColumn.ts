import { type Foil, isFoil } from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import type { Plan } from "../../core/document/schema"
import { stitchesOf } from "../../core/figures/stitchesOf"
import { pieceOf } from "../../core/kinds/kindRecords"
import { isMixed } from "../../core/record/asMixed"
import { coatMm, lightenedLine } from "../../core/regrowth/coatedTwice"
import { paintedBlocks } from "../painted/paintedBlocks"
import type { Block } from "../setting/block"
import type { Called } from "../setting/foilsText"
import { millimetres } from "../setting/numbers"
import type { Press } from "../setting/press"
import { stack } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { combStrip, type Depth } from "./combStrip"
import { mixBlocks } from "./mixBlock"
import { type Start, startStrips } from "./startStrip"
import { type Stitches, stitchStrips } from "./stitchStrip"
import { tonerBlocks } from "./tonerBlock"
import { workingBlocks } from "./workingBlock"

type Column = { width: number; scale: number; press: Press }

/** What stands beside the front view: the mixes, the comb, the starts and the stitches of the plan. */
export function sideColumn(plan: Plan, { width, scale, press }: Column): Block[] {
  const depths = depthsOf(plan)
  const said = press.words.sheets.map
  return [
    ...under(
      isMixed(plan) ? said.bowls.doneTitle : said.bowls.title,
      mixBlocks(plan, { width, scale, press }),
    ),
    ...under(said.toner.title, tonerBlocks(plan, { width, press })),
    ...under(said.working.title, workingBlocks(plan, { width, press })),
    ...under(said.painted.title, paintedBlocks(plan, { width, press })),
    ...(depths.length > 0 ? [{ ...combStrip(depths, width, press), startsGroup: true }] : []),
    ...together(said.ruler.starts, startStrips(startsIn(plan), width, press)),
    ...under(said.ruler.stitches, stitchStrips(stitchesIn(plan), width, press)),
  ]
}

/** The blocks with a heading over the first. */
function under(title: string, [first, ...rest]: readonly Block[]): Block[] {
  if (!first) return []
  const head: Block = { heightMm: 6.2, items: [letters(title, [0, 3.6], type.heading)] }
  return [{ ...stack([head, first]), startsGroup: true }, ...rest]
}

/** The same as one block, which no page breaks. */
const together = (title: string, blocks: readonly Block[]): Block[] =>
  under(title, blocks.length > 0 ? [stack(blocks)] : [])

/** Where product starts and to where, each with its foils, the nearest first. */
export function startsIn(plan: Plan): Start[] {
  const starts = new Map<string, Omit<Start, keyof Called> & { of: Foil[] }>()
  for (const foil of plan.sections.filter(isFoil)) {
    const startMm = kindOf(foil).productStartMm(foil)
    const begins = lightenedLine(foil, plan)
    const line = begins ? [begins.lowMm, begins.highMm].map(millimetres) : []
    const key = [millimetres(startMm), foil.strand.from, foil.strand.to, ...line].join(" ")
    const before = starts.get(key)
    const coat = begins && farthest(coatMm(foil, plan), before?.lightened?.coat)
    const of = [...(before?.of ?? []), foil]
    starts.set(key, {
      startMm,
      strand: foil.strand,
      of,
      ...(begins && coat && { lightened: { coat, begins } }),
    })
  }
  return Array.from(starts.values(), ({ of, ...start }): Start => ({ ...start, ...called(of) })).sort(
    (a, b) => a.strand.from - b.strand.from || a.startMm - b.startMm,
  )
}

type Coat = { fromMm: number; toMm: number }

/** Of strands that start so, from the nearest start to the farthest end. */
const farthest = (one: Coat, other: Coat = one): Coat => ({
  fromMm: Math.min(one.fromMm, other.fromMm),
  toMm: Math.max(one.toMm, other.toMm),
})

/** The different depths of the foils, the shallow ones first. */
export function depthsOf({ sections }: Plan): Depth[] {
  const foilsOf = new Map<string, Set<Foil>>()
  for (const section of sections.filter(isFoil))
    for (const depth of [section.depthMm.start, section.depthMm.end]) {
      const key = millimetres(depth)
      foilsOf.set(key, (foilsOf.get(key) ?? new Set()).add(section))
    }
  return Array.from(
    foilsOf,
    ([depth, foils]): Depth => ({ depthMm: Number(depth), ...called([...foils]) }),
  ).sort((a, b) => a.depthMm - b.depthMm)
}

/** Their numbers, and what they are where they are not foils. */
function called(foils: readonly Foil[]): Called {
  const piece = pieceOf(foils)
  return { foils: ascending(foils.map(({ mapNumber }) => mapNumber)), ...(piece !== "foil" && { piece }) }
}

/** The different rows of stitches of the foils, in the order in which they are first needed. */
export function stitchesIn({ sections }: Plan): Stitches[] {
  const rows = new Map<string, Stitches>()
  for (const section of sections) {
    const stitches = stitchesOf(section)
    if (!stitches || !isFoil(section)) continue
    const { stitchMm, gapMm, dipMm } = stitches
    const key = [stitchMm, gapMm, dipMm].map(millimetres).join(" ")
    const foils = [...(rows.get(key)?.foils ?? []), section.mapNumber]
    rows.set(key, { stitchMm, gapMm, dipMm, foils: ascending(foils) })
  }
  return [...rows.values()]
}

const ascending = (numbers: Iterable<number>) => [...new Set(numbers)].sort((a, b) => a - b)
