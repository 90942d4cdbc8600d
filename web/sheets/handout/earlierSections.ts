import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { planMarks, type Scene } from "../../drawing/marks"
import type { StampItem, StampPart } from "../pens/page"
import { markItems, type ToPaper } from "../views/viewItems"

/** The sections in the order of the steps, and how many of them are done before a step. */
export type Earlier = { all: readonly Section[]; count: number }

export const nothingEarlier: Earlier = { all: [], count: 0 }

/** Where they are drawn; `name` is the same for drawings that lie alike. */
export type EarlierPlace = { name: string; plan: Plan; scene: Scene; toPaper: ToPaper }
type Layer = "tones" | "lines"

/** Blocks of sections that are drawn already, by the place, the layer and the first and number of their sections. */
const drawnOf = new WeakMap<readonly Section[], Map<string, readonly StampPart[]>>()

/**
 * What is done before a step, light. The sections are drawn in blocks of one, two, four, eight and so on, each block made
 * of two smaller ones and kept once: so a handout grows with the sections it has, and not with their square.
 */
export function earlierSections({ all, count }: Earlier, place: EarlierPlace): StampItem[] {
  const drawn = drawnOf.get(all) ?? new Map<string, readonly StampPart[]>()
  drawnOf.set(all, drawn)
  const block = (from: number, size: number, layer: Layer): StampItem => {
    const name = `${place.name} ${layer} ${from} ${size}`
    const half = size / 2
    const parts =
      drawn.get(name) ??
      (size === 1
        ? lightItems(all[from], layer, place)
        : [block(from, half, layer), block(from + half, half, layer)])
    drawn.set(name, parts)
    return { kind: "stamp", parts, at: [0, 0] }
  }
  const blocks = blocksOf(count)
  return (["tones", "lines"] as const).flatMap((layer) =>
    blocks.map(([from, size]) => block(from, size, layer)),
  )
}

/** So many things as blocks, each half as large as the one before it or smaller: 13 as 8, 4 and 1. */
export function blocksOf(count: number): [from: number, size: number][] {
  const blocks: [number, number][] = []
  let from = 0
  for (let size = 2 ** 30; size >= 1; size /= 2) {
    if (count - from < size) continue
    blocks.push([from, size])
    from += size
  }
  return blocks
}

function lightItems(section: Section, layer: Layer, { plan, scene, toPaper }: EarlierPlace): StampPart[] {
  const { tones, lines } = markItems(planMarks({ ...plan, sections: [section] }, scene), toPaper)
  if (layer === "tones") return tones.map((tone) => ({ ...tone, ink: lightTone }))
  return lines.map((line) => ({ ...line, ink: lightInk, weightPt: Math.min(line.weightPt, lightPt) }))
}

const lightInk = "#8f887c"
const lightTone = "#efece6"
const lightPt = 0.5
