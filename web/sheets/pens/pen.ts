import type { Align, Path, RunItem, StampItem, Tag, Weight } from "./page"

/** All that paper asks of whoever draws on it. Places in mm from the page's top left corner, y down. */
export type Pen = {
  style(style: PenStyle): void
  path(paths: readonly Path[], paint: "stroke" | "closed stroke" | "fill"): void
  clip(path: Path): void
  text(text: string, at: readonly [number, number], align: Align, goesOn?: boolean): void
  /** Letters in the system's own fonts. */
  run(run: RunItem): void
  /** A drawing that may have been printed before; `draw` draws its parts about a point of their own. */
  stamp(stamp: StampItem, draw: () => void): void
  /** What follows belongs to one thing that is read; null is ornament; a picture of letters has them in `spoken`. */
  mark?(tag: Tag | null, spoken?: string): void
  save(): void
  restore(): void
}

export type PenStyle = {
  /** Colour of lines, areas and letters, "#rrggbb". */
  ink: string
  line?: { weightPt: number; dashPt: readonly number[] }
  type?: { weight: Weight; sizePt: number }
}
