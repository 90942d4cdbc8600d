/**
 * What a plan may hold. These are the ends of what is possible on a head, not advice:
 * advice lives in the presets and the cautions. Panels offer no more than this, the file door takes no more.
 */
export type Limit = { low: number; high: number; unit: LimitUnit }

export type LimitUnit =
  | "none"
  | "mm"
  | "cm"
  | "um"
  | "cm2"
  | "hairs-per-cm2"
  | "degrees"
  | "celsius"
  | "g"
  | "vol"
  | "levels"
  | "minutes"
  | "milliseconds"
  | "weeks"
  | "years"
  | "parts"
  | "parts-of-developer"
  | "foils"

/** What the lists of a document hold. */
export type ListedThing =
  | "points"
  | "mixes"
  | "sections"
  | "dividers"
  | "working-sections"
  | "moves"
  | "zones"
  | "histories"
  | "alert-tests"
  | "strand-tests"
  | "overrides"
  | "doctors-letters"
  | "signatures"
  | "withdrawn-stops"
  | "questions"
  | "names"
  | "breaks"
  | "rows"
  | "services"
  | "taps"
  | "notes"
  | "alarms"
  | "foils"
  | "product-sheets"
  | "developers"
  | "bowls"
  | "toners"
  | "bottles"
  | "additives"
  | "learnt-figures"
  | "weighings"
  | "steps"
  | "spots"
  | "allergies"
  | "techniques"
  | "tools"
  | "faults"
  | "checks"

const limit = (low: number, high: number, unit: LimitUnit = "none"): Limit => ({ low, high, unit })

export const limits = {
  // Surveyed adults run from 535 to 640 mm around (ANSUR 1988, 2012): room below for the young, above for hair.
  lengthMm: limit(150, 240, "mm"),
  breadthMm: limit(115, 190, "mm"),
  heightMm: limit(90, 170, "mm"),
  aroundMm: limit(460, 680, "mm"),
  overMm: limit(260, 440, "mm"),
  frontToNapeMm: limit(260, 480, "mm"),
  // Farther than from one landmark to the next: there it is another hairline.
  landmarkMm: limit(-60, 60, "mm"),
  // From beside the middle to the recession.
  offCentreMm: limit(5, 60, "mm"),
  // Counted scalps run from 95 to 300 hairs a cm2; below 40 there is nothing to section.
  densityPerCm2: limit(40, 400, "hairs-per-cm2"),
  // Single fibres run from 15 to 120 µm; this is the mean of a head.
  fibreUm: limit(30, 120, "um"),
  hairLengthCm: limit(1, 150, "cm"),
  // Under half a millimetre no comb parts; 60 mm is a whole side of the head.
  depthMm: limit(0.5, 60, "mm"),
  // Hair left between two partings, none when they lie back to back.
  betweenMm: limit(0, 60, "mm"),
  // A comb parts no less; no more goes round the whole head.
  partingMm: limit(4, 600, "mm"),
  rootDistanceMm: limit(0, 300, "mm"),
  // Longer than any product stays on: how long one may, its sheet tells.
  rootsAfterMin: limit(0, 60, "minutes"),
  // Two years at the fastest growth measured.
  regrowthMm: limit(0, 400, "mm"),
  strandShare: limit(0, 1),
  carrierWidthMm: limit(20, 600, "mm"),
  carrierLengthMm: limit(20, 1500, "mm"),
  elevationDeg: limit(0, 180, "degrees"),
  overDirectionDeg: limit(-90, 90, "degrees"),
  stitchMm: limit(0.5, 60, "mm"),
  // Something must be left to coat.
  pushedShare: limit(0, 0.95),
  cushionMm: limit(0, 200, "mm"),
  featherMm: limit(0, 300, "mm"),
  // A band that holds nothing is none.
  saturation: limit(0.05, 1),
  mapNumber: limit(1, 999),
  // Half of the sections a technique may hold.
  pair: limit(1, 100),
  // The strongest developer sold is 40 volume; weaker ones are often blended down.
  developerVolume: limit(1, 40, "vol"),
  // Ten hours is more than any chair is booked for.
  bookingMin: limit(15, 600, "minutes"),
  visitMin: limit(0, 1440, "minutes"),
  // Nothing is left on hair for longer than two hours.
  heldMin: limit(1, 120, "minutes"),
  // Warm air is felt from 30; above 60 skin burns at once.
  heatC: limit(30, 60, "celsius"),
  placeMin: limit(0.1, 60, "minutes"),
  serviceMs: limit(0, 86_400_000, "milliseconds"),
  // A device that lay in a drawer for ten years.
  clockMs: limit(0, 315_360_000_000, "milliseconds"),
  // The scale of ten levels, black to lightest blonde.
  level: limit(1, 10),
  ageYears: limit(1, 120, "years"),
  upkeepWeeks: limit(1, 104, "weeks"),
  ratioPart: limit(0.1, 20, "parts"),
  // What a product sheet may print; see presets/sheetLimits.ts.
  sheetParts: limit(0.01, 10, "parts-of-developer"),
  // A toner without developer takes none.
  tonerParts: limit(0, 10, "parts-of-developer"),
  liftLevels: limit(0, 9, "levels"),
  sheetHeatMin: limit(0, 120, "minutes"),
  price: limit(0, 1_000_000),
  priceForG: limit(1, 100_000, "g"),
  // Above anything a foil can hold.
  learnt: limit(0, 1000),
  weighings: limit(0, 100_000),
  // What a salon starts from: as learnt from salon to salon. Nought would leave nothing to learn.
  learntSd: limit(0.0001, 1000),
  salons: limit(1, 10_000),
  leaning: limit(-0.999, 0.999),
  scatterShare: limit(0.001, 2),
  // At 2 and below a scatter has no mean.
  scatterShape: limit(2, 1000),
  bowlG: limit(0, 5000, "g"),
  // Counted from 0; nobody mixes a hundred in one visit.
  bowl: limit(0, 99),
  // Finer than any scale of a salon, and as coarse as would still weigh the smallest bowl.
  scaleStepG: limit(0.01, 10, "g"),
  panels: limit(0, 500, "foils"),
  strandAreaCm2: limit(0, 1_000_000, "cm2"),
  // Landmarks are counted from centre front to centre nape, negative on the left.
  landmark: limit(-7, 7),
  // The top of a large head lies under 200 mm from every edge; a little outside, because a hairline is a model.
  behindMm: limit(-5, 200, "mm"),
  // A depth or a gap in mm, or a number of rows; nothing where a technique has no such measure.
  measure: limit(0, 200),
} satisfies Record<string, Limit>

export const counts = {
  /** A parting is a short line: a point every 2 mm round the whole hairline is well under 200. */
  partingPoints: { low: 2, high: 200 },
  /** A finger draws no finer. */
  drawnSteps: { low: 2, high: 33 },
  /** The finest work places under 200 foils. */
  sections: { low: 0, high: 1000 },
  mixes: { low: 1, high: 26 },
  dividers: { low: 0, high: 24 },
  workingSections: { low: 0, high: 100 },
  /** Eight landmarks on each side. */
  landmarkMoves: { low: 0, high: 16 },
  zones: { low: 0, high: 5 },
  histories: { low: 0, high: 6 },
  tests: { low: 0, high: 40 },
  passes: { low: 0, high: 100 },
  questions: { low: 0, high: 40 },
  people: { low: 0, high: 2 },
  bowls: { low: 0, high: 100 },
  /** The root melt, the mid-lengths and the hairline. */
  toners: { low: 0, high: 3 },
  breaks: { low: 0, high: 8 },
  /** As many as presets/lift.ts narrows by. */
  strandRows: { low: 0, high: 6 },
  /** A client who comes every six weeks fills it in ten years and more. */
  services: { low: 0, high: 100 },
  taps: { low: 0, high: 5000 },
  sheets: { low: 0, high: 100 },
  developers: { low: 0, high: 20 },
  additives: { low: 0, high: 10 },
  learnt: { low: 0, high: 200 },
  weighings: { low: 0, high: 5000 },
  steps: { low: 0, high: 40 },
  techniqueSections: { low: 1, high: 200 },
  techniquesLaid: { low: 0, high: 100 },
  allergies: { low: 0, high: 20 },
  /** Ten services of a hundred foils each: of more, the oldest have long grown out. */
  lightened: { low: 0, high: 1000 },
}

/** The least share of a strand that can be coated, so that from and to stay apart when rounded. */
export const leastStrandShare = 0.01

export const letters = { moment: 40, tag: 35, initials: 6, name: 80, aim: 200, step: 500, note: 2000 }
