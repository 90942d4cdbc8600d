import type { Pair } from "../../../geometry/surface/frames"
import { type Align, type Item, mmPerPt, type Path, type TextItem, type Weight } from "../pens/page"
import { atomsOf, lineWidthEm, toPrintable } from "../pens/printable"
import type { Press } from "./press"

export type Type = { sizePt: number; weight: Weight }

/** The few sizes of type the sheets use. Numbers of foils are the largest after the name, to be read from the chair. */
export const type = {
  title: { sizePt: 21, weight: "semibold" },
  number: { sizePt: 18, weight: "semibold" },
  heading: { sizePt: 12, weight: "semibold" },
  strong: { sizePt: 11, weight: "semibold" },
  body: { sizePt: 11, weight: "regular" },
  small: { sizePt: 9.5, weight: "regular" },
  smallStrong: { sizePt: 9.5, weight: "semibold" },
  /** For a reader at home, with or without glasses. */
  largeHeading: { sizePt: 17, weight: "semibold" },
  large: { sizePt: 14, weight: "regular" },
  largeStrong: { sizePt: 14, weight: "semibold" },
} as const satisfies Record<string, Type>

export const ink = "#1f1b17"
export const white = "#ffffff"
export const rulePt = { hair: 0.25, fine: 0.6, medium: 0.9, bold: 1.6 }

/** Height of a capital letter, mm: seven tenths of the size, near enough for any sans. */
export const capMm = ({ sizePt }: Type) => 0.66 * sizePt * mmPerPt

export const widthMm = (text: string, { sizePt, weight }: Type, { fonts }: Press) =>
  lineWidthEm(toPrintable(text, fonts), fonts, weight) * sizePt * mmPerPt

export const letters = (text: string, at: Pair, setting: Type, align: Align = "left"): TextItem => ({
  kind: "text",
  text,
  at,
  align,
  ink,
  ...setting,
})

export const rule = (from: Pair, to: Pair, weightPt: number): Item => strokes([[from, to]], weightPt)

export const strokes = (paths: readonly Path[], weightPt: number, closed = false): Item => ({
  kind: "lines",
  paths,
  closed,
  weightPt,
  ink,
  dashPt: [],
})

export const rectangle = (x: number, y: number, width: number, height: number): Path => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

/** A space, but not between a number and the thing it counts. */
const breakAt = /(?<!(?:^|\s)\d+) | (?!\p{L})/u

/** The text broken between words so that no line is wider than `width` mm; a word that is wider is broken between its letters. */
export function wrap(text: string, width: number, setting: Type, press: Press): string[] {
  const fits = (line: string) => widthMm(line, setting, press) <= width
  const lines: string[] = []
  for (const word of toPrintable(text, press.fonts).split(breakAt).filter(Boolean)) {
    const line = lines.length > 0 ? `${lines[lines.length - 1]} ${word}` : word
    if (lines.length > 0 && fits(line)) lines[lines.length - 1] = line
    else lines.push(...(fits(word) ? [word] : broken(word, fits)))
  }
  return lines
}

function broken(word: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = []
  for (const atom of atomsOf(word)) {
    const last = lines[lines.length - 1]
    if (last !== undefined && fits(last + atom)) lines[lines.length - 1] = last + atom
    else lines.push(atom)
  }
  return lines
}

/** The first lines of a text broken between words, the last of them cut with an ellipsis where there are more. */
export function firstLines(text: string, most: number, width: number, setting: Type, press: Press): string[] {
  const lines = wrap(text, width, setting, press)
  if (lines.length <= most) return lines
  return [...lines.slice(0, most - 1), shorten(lines.slice(most - 1).join(" "), width, setting, press)]
}

/** The text cut with an ellipsis when it is wider than `width` mm. */
export function shorten(text: string, width: number, setting: Type, press: Press): string {
  const printable = toPrintable(text, press.fonts)
  if (widthMm(printable, setting, press) <= width) return printable
  const kept = atomsOf(printable)
  while (kept.length > 0 && widthMm(`${kept.join("")}…`, setting, press) > width) kept.pop()
  return `${kept.join("").trimEnd()}…`
}
