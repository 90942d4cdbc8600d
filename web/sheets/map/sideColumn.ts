import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Fonts } from "../pens/fontFile"
import type { Block } from "../setting/block"
import { millimetres } from "../setting/numbers"
import { stack } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { stitchesOf } from "../table/stitchesOf"
import { combStrip, type Depth } from "./combStrip"
import { mixBlocks } from "./mixBlock"
import { type Stitches, stitchStrips } from "./stitchStrip"
import { tonerBlocks } from "./tonerBlock"
import { workingBlocks } from "./workingBlock"

type Column = { width: number; scale: number; fonts: Fonts }

/** What stands beside the front view: the mixes, the comb and the stitches of the plan. */
export function sideColumn(plan: Plan, { width, scale, fonts }: Column): Block[] {
  const depths = depthsOf(plan)
  return [
    ...under("Bowls, at the upper figure", mixBlocks(plan, { width, scale, fonts })),
    ...under("Toner, after rinsing", tonerBlocks(plan, { width, fonts })),
    ...under("Working sections, in order", workingBlocks(plan, { width, fonts })),
    ...(depths.length > 0 ? [{ ...combStrip(depths, width, fonts), startsGroup: true }] : []),
    ...under("Stitch/gap, mm, true size", stitchStrips(stitchesIn(plan), width, fonts)),
  ]
}

/** The blocks with a heading over the first. */
function under(title: string, [first, ...rest]: readonly Block[]): Block[] {
  if (!first) return []
  const head: Block = { heightMm: 6.2, items: [letters(title, [0, 3.6], type.heading)] }
  return [{ ...stack([head, first]), startsGroup: true }, ...rest]
}

/** The different depths of the foils, the shallow ones first. */
export function depthsOf({ sections }: Plan): Depth[] {
  const foilsOf = new Map<string, Set<number>>()
  for (const section of sections.filter(isFoil))
    for (const depth of [section.depthMm.start, section.depthMm.end]) {
      const key = millimetres(depth)
      foilsOf.set(key, (foilsOf.get(key) ?? new Set()).add(section.mapNumber))
    }
  return Array.from(foilsOf, ([depth, foils]) => ({ depthMm: Number(depth), foils: ascending(foils) })).sort(
    (a, b) => a.depthMm - b.depthMm,
  )
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
