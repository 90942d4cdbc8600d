import type { Section, SectionKind } from "./section"

/** One pick-up of hair: from where to where along the parting, mm, and how much of the band's depth it takes, 0 to 1. */
export type Stitch = { fromMm: number; toMm: number; depthShare: number }

/** What the rest of the program asks of a kind of section. One row a kind. */
export type KindRow<K extends SectionKind> = {
  /** The share of the band's hair that is coated, 0 to 1, for a band whose ribs have these depths in mm. */
  takenShare(section: Section<K>, depthsMm?: ArrayLike<number>): number
  /** The share of the band's hair that no other section can take once this one has: coated, pushed to the root or kept back. */
  heldShare(section: Section<K>, depthsMm?: ArrayLike<number>): number
  /** The pick-ups along a parting of this length, in order. */
  stitches(section: Section<K>, partingMm: number): Stitch[]
  /** Where product begins at the earliest, mm from the scalp. */
  productStartMm(section: Section<K>): number
}
