/** How the soft edge runs across a panel that is laid flat, from one side to the other. */
export type EdgeShape = "straight" | "v" | "w" | "u" | "freehand"
export const edgeShapes = ["straight", "v", "w", "u", "freehand"] as const satisfies readonly EdgeShape[]

/** How full each band of the product is, as shares of a full coat, from the soft edge on. */
export type Saturation = { soft: number; middle: number; full: number }
export type BandName = keyof Saturation

/** How the face of a panel is painted. Shares are of the length of the hair, 0 at the root and 1 at the ends. */
export type Painting = {
  edge: EdgeShape
  /** How much nearer to the ends the edge runs where it hangs lowest than where it starts. */
  dropShare: number
  /** The edge as it was drawn, 0 where it starts and 1 where it hangs lowest, at even steps across the panel. */
  drawn: readonly number[]
  /** How far along the hair product fades in from the edge, mm: half of it the soft band, half the middle one. */
  featherMm: number
  saturation: Saturation
}
