import type { Fonts } from "../pens/fontFile"
import type { Block } from "./block"
import { letters, rule, rulePt, type Type, type, wrap } from "./typesetting"

/**
 * What a placement map must say, in the fewest words. Gloves and eyes: label words required by Regulation (EC)
 * 1223/2009, Annex III. Air and powder: HSE, COSHH Essentials SR11. Heat, metal, pain: Bouschon et al., Ann Dermatol
 * Venereol 2018;145:359. Warmth: Moritz and Henriques 1947. Looks: common practice. Dryness: J Cosmet Sci 2021;72.
 */
const cautions = [
  "The maker’s directions come first. This sheet only plans.",
  "Gloves on. Keep off eyes and brows; rinse an eye at once.",
  "Mix powder in fresh air. A lid on the bowl, never sealed.",
  "No heat unless the product’s sheet allows it. No metal.",
  "Ask the client to speak up at any warmth, tingling or pain.",
  "Hot or swelling foil, burning skin: off and rinse well, at once.",
  "Look every 5 to 10 minutes. Stop at the planned level, the longest time or dryness, whichever is first.",
  "Hairs and grams are estimates, so they carry a range.",
  "Local rule: ______________________________",
] as const
const missingLetters = "Some letters cannot be printed. Each of them shows as □."

const topMm = 3.4
const gutterMm = 6
const lineMmPerPt = 4.15 / 9.5
const bullet = "·"
const indentMm = 2.6

/** `setting` is the type they are set in: small on the map, where every line counts. */
export type CautionWords = { stops: string; lettersMissing: boolean; setting?: Type }
type Line = { text: string; isFirst: boolean; setting: Type }

/** Whether the mix is held, then the cautions, in two columns under a rule. */
export function cautionBlock(width: number, words: CautionWords, fonts: Fonts): Block {
  const { stops, lettersMissing, setting: body = type.small } = words
  const lineMm = body.sizePt * lineMmPerPt
  const columnMm = (width - gutterMm) / 2
  const sentences = lettersMissing ? [...cautions, missingLetters] : cautions
  const half = Math.ceil(sentences.length / 2)
  const linesOf = (text: string, setting: Type): Line[] =>
    wrap(text, columnMm - indentMm, setting, fonts).map((part, i) => ({
      text: part,
      isFirst: i === 0,
      setting,
    }))
  const set = (column: readonly string[]) => column.flatMap((sentence) => linesOf(sentence, body))
  const held = stops ? linesOf(stops, type.smallStrong) : []
  const columns = [[...held, ...set(sentences.slice(0, half))], set(sentences.slice(half))]
  const items = columns.flatMap((lines, column) =>
    lines.flatMap(({ text, isFirst, setting }, i) => {
      const [x, y] = [column * (columnMm + gutterMm), topMm + 3.2 + i * lineMm]
      return [
        ...(isFirst ? [letters(bullet, [x, y], { ...setting, weight: "semibold" })] : []),
        letters(text, [x + indentMm, y], setting),
      ]
    }),
  )
  return {
    heightMm: topMm + Math.max(...columns.map(({ length }) => length)) * lineMm,
    items: [rule([0, 0], [width, 0], rulePt.fine), ...items],
  }
}
