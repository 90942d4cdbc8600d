/** What the fall of hair is reckoned with. Geometry knows none of them; presets/strands.ts says where each is from. */
export type StrandFigures = {
  /** Strands drawn; each stands for many hairs. */
  count: number
  /** Hair leaves the scalp at this angle to it, radians. */
  liftRadians: number
  /** The length over which a strand that hangs free turns most of the way down, mm. */
  bendMm: number
  /** How thick the hair lies over the scalp, from the lowest roots to the highest, mm; full only so far from the root. */
  layerMm: { lowest: number; highest: number; fullAfterMm: number }
  /** How much hair beside the face is combed back rather than straight from the parting, 0 to 1. */
  combedBack: number
  /** How far a lock strays from its way, as a slope, and over what length, mm. */
  stray: { slope: number; lengthMm: number }
  /** Hair this near to the hairline on the page is round the face, mm. */
  roundFaceMm: number
}
