/**
 * How every kind of line and tone looks, on screen and on paper. Weights, dashes and letter heights are points
 * of the page (1/72 inch) and do not grow with the head. Dark enough to be read in grey and by colour-blind eyes.
 */
export type Ink = { color: string; weightPt: number; dashPt?: readonly number[]; opacity?: number }

export const paper = "#fbf8f2"
export const black = "#1f1b17"
export const accent = "#a8321a"
/** Warm grey of the shade under the lines of the head, on screen only. */
export const shadeRgb = [92, 76, 58] as const

/** One colour a mix, in the order of their letters; never the only sign: letter and hatch come first. */
export const mixColors = ["#1d5692", "#8f4700", "#17654a", "#842a66", "#5a5300", "#3c4956"] as const

/**
 * The wash of each working section, in their order; never the only sign: its number comes first. Paler than any mix,
 * and told apart by eyes that lack one kind of cone as well. Seven and more begin again at the first.
 */
export const workingTints = ["#f2f2aa", "#cdedff", "#fde1ec", "#dcf7ce", "#c6feff", "#e4edd7"] as const

const fixedInks = {
  "head-bold": { color: black, weightPt: 1.5 },
  "head-medium": { color: black, weightPt: 1 },
  "head-fine": { color: "#4a443c", weightPt: 0.7 },
  hairline: { color: "#5c5144", weightPt: 0.9, dashPt: [1, 2.4] },
  worn: { color: "#5c5144", weightPt: 0.8, dashPt: [5, 2.2] },
  whorl: { color: "#5c5144", weightPt: 0.9 },
  "left-out-edge": { color: "#4a443c", weightPt: 0.9, dashPt: [3.5, 2] },
  "left-out-hatch": { color: "#4a443c", weightPt: 0.6 },
  "twice-edge": { color: black, weightPt: 1.3 },
  "twice-hatch": { color: black, weightPt: 0.8 },
  selected: { color: accent, weightPt: 2.2 },
  "selected-many": { color: accent, weightPt: 1 },
  box: { color: accent, weightPt: 1.2, dashPt: [4, 3] },
  handle: { color: accent, weightPt: 1.6 },
  guide: { color: accent, weightPt: 1, dashPt: [5, 3] },
  leader: { color: "#4a443c", weightPt: 0.6 },
  number: { color: black, weightPt: 18 },
  arrow: { color: black, weightPt: 1 },
  divider: { color: "#3a2f7a", weightPt: 1.1, dashPt: [8, 3, 1.2, 3] },
  "working-number": { color: "#3a2f7a", weightPt: 14.4 },
  "working-ring": { color: "#3a2f7a", weightPt: 1 },
  "working-ground": { color: paper, weightPt: 0, opacity: 0.85 },
  "strand-coat": { color: black, weightPt: 0 },
  "not-past": { color: accent, weightPt: 2 },
  crossing: { color: black, weightPt: 1.8 },
} satisfies Record<string, Ink>

type TintInks = Record<`working-tint-${0 | 1 | 2 | 3 | 4 | 5}`, Ink>
export type TintName = keyof TintInks

const tintInks = Object.fromEntries(
  workingTints.map((color, index) => [`working-tint-${index}`, { color, weightPt: 0, opacity: 1 }]),
) as TintInks

/** The wash of the working section that is so many places from the first. */
export const tintOf = (place: number): TintName => tintNames[place % tintNames.length]

const tintNames = workingTints.map((_, index) => `working-tint-${index}` as TintName)

type MixInks = Record<`mix-${"edge" | "fill" | "hatch"}-${0 | 1 | 2 | 3 | 4 | 5}`, Ink>

const mixInks = Object.fromEntries(
  mixColors.flatMap((color, index) => [
    [`mix-edge-${index}`, { color, weightPt: 1.6 }],
    [`mix-fill-${index}`, { color, weightPt: 0, opacity: 0.3 }],
    [`mix-hatch-${index}`, { color, weightPt: 0.7 }],
  ]),
) as MixInks

export const inks = { ...fixedInks, ...mixInks, ...tintInks } satisfies Record<string, Ink>
export type InkName = keyof typeof fixedInks | keyof MixInks | TintName
