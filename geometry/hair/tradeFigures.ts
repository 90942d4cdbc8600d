/** A figure that is not known exactly. */
export type Range = { low: number; mid: number; high: number }

/** The trade's figures that the sums need. Geometry knows none of them; presets/tradeFigures.ts says where each is from. */
export type TradeFigures = {
  /** Mass of hair substance. */
  hairGPerCm3: number
  /** Density of hairs by region, as factors on the mean over the head. */
  density: { vertex: number; frontal: number; occipital: number; side: number; hairlineBand: number }
  /** Width of the sparser band along the hairline, and of the change from one region to the next, mm. */
  hairlineBandMm: number
  hairlineBlendMm: number
  regionBlendMm: number
  /** Where, in mm on the y axis of the unscaled head, the length changes from sides to front and from sides to back. */
  frontLengthMm: { from: number; to: number }
  backLengthMm: { from: number; to: number }
  /** Product that stays in each foil, g; that soaks in, g per g of hair; that coats, mg per cm2 of strand face. */
  lossG: Range
  soakGPerG: Range
  coatMgPerCm2: Range
  /** Width of a foil kept free of hair, mm. */
  foilMarginMm: number
  /** Length of ends that are folded back up into a foil too short for them, mm. */
  foilFoldMm: number
  /** By which factor a count of hairs may be out. */
  hairsFactor: Range
}
