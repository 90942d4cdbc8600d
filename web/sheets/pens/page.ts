import type { Pair } from "../../../geometry/surface/frames"

/** A sheet of paper as data. All places and lengths in mm from the top left corner, y down; sizes of type in points. */
export type Page = { paper: Paper; items: readonly Item[] }
/** A laid-out sheet: its pages, and what its file says of itself. */
export type Sheet = { pages: readonly Page[]; title: string; date: string; language: string }
export type Item = (TextItem | RunItem | LinesItem | AreaItem | HatchItem | ClippedItem | StampItem) & Tagged

/** What items of one thing that is read have in common: they share the very same tag. A figure has words in its place. */
export type Tag = { role: "H1" | "H2" | "P" | "Figure"; alt?: string }
type Tagged = { tag?: Tag }

/** Items as one thing that is read, except those that are part of another already. */
export function tagged<T extends Item>(items: readonly T[], role: Tag["role"], alt?: string): T[] {
  const tag: Tag = alt ? { role, alt } : { role }
  return items.map((item) => (item.tag ? item : { ...item, tag }))
}

export type TextItem = {
  kind: "text"
  text: string
  /** Where the base line begins, is centred or ends. */
  at: Pair
  sizePt: number
  weight: Weight
  align: Align
  ink: string
  /** What follows is of the same line. */
  goesOn?: true
}
/** Letters of a line that the sheets' typeface lacks, in the system's own; they begin at `at`. */
export type RunItem = { kind: "run"; text: string; at: Pair; sizePt: number; weight: Weight; ink: string }
export type LinesItem = Stroke & { kind: "lines"; paths: readonly Path[]; closed: boolean }
export type AreaItem = { kind: "area"; path: Path; ink: string }
export type HatchItem = Stroke & { kind: "hatch"; segments: readonly (readonly [Pair, Pair])[] }
/** Whatever falls outside `path` is not printed. */
export type ClippedItem = { kind: "clipped"; path: Path; items: readonly Item[] }

/** A drawing that is printed in many places and kept once; `parts` lie about a point of their own, which stands at `at`. */
export type StampItem = { kind: "stamp"; parts: readonly StampPart[]; at: Pair }
export type StampPart = LinesItem | AreaItem | HatchItem | StampItem

export type Path = readonly Pair[]
export type Stroke = { weightPt: number; ink: string; dashPt: readonly number[] }
export type Weight = "regular" | "semibold"
export type Align = "left" | "center" | "right"

export type Paper = { name: string; widthMm: number; heightMm: number; marginMm: number }

export const mmPerPt = 25.4 / 72

/** The same items, further right and down. */
export const moved = (items: readonly Item[], right: number, down: number): Item[] =>
  right === 0 && down === 0
    ? [...items]
    : items.map((item) => moveItem(item, ([x, y]) => [x + right, y + down]))

function moveItem(item: Item, move: (at: Pair) => Pair): Item {
  switch (item.kind) {
    case "text":
    case "run":
    case "stamp":
      return { ...item, at: move(item.at) }
    case "lines":
      return { ...item, paths: item.paths.map((path) => path.map(move)) }
    case "area":
      return { ...item, path: item.path.map(move) }
    case "hatch":
      return { ...item, segments: item.segments.map(([from, to]) => [move(from), move(to)]) }
    case "clipped":
      return { ...item, path: item.path.map(move), items: item.items.map((each) => moveItem(each, move)) }
  }
}
