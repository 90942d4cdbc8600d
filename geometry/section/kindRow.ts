import type { Section, SectionKind, Treatment } from "./section"

/** One pick-up of hair: from where to where along the parting, mm, and how much of the band's depth it takes, 0 to 1. */
export type Stitch = { fromMm: number; toMm: number; depthShare: number }

/** What the rest of the program asks of a kind of section. One row a kind. */
export type KindRow<K extends SectionKind> = {
  /** Of the hair within its pick-ups the share that is coated, 0 to 1. */
  takenShare(section: Section<K>): number
  /** Of the hair within its pick-ups the share that no other section can take: coated, pushed to the root or kept back. */
  heldShare(section: Section<K>): number
  /** How deep its pick-ups reach at most, mm from the parting; infinite when they reach as deep as the band. */
  dipMm(section: Section<K>): number
  /** The pick-ups along a parting of this length, in order; none when the whole band is one. */
  stitches(section: Section<K>, partingMm: number): Stitch[]
  /** Where product begins at the earliest, mm from the scalp. */
  productStartMm(section: Section<K>): number
  /** The share of a hair's length at which its product begins, so far along the parting, 0 to 1. */
  startShare(section: Section<K>, along: number): number
  /** What so many centimetres coated come to, as centimetres of a full coat. */
  fullCm(section: Section<K>, coatedCm: number): number
}

/** Product that begins as far along each hair, as full from there to its end. */
export const evenly = {
  startShare: ({ strand }: Pick<Treatment, "strand">) => strand.from,
  fullCm: (_: unknown, coatedCm: number) => coatedCm,
}
