import type { Fonts } from "../fontFile"
import type { Block } from "./block"
import { letters, rule, rulePt, type, wrap } from "./typesetting"

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
] as const
const missingLetters = "Some letters cannot be printed. Each of them shows as □."

const topMm = 3.4
const lineMm = 4.15
const gutterMm = 6
const bullet = "·"
const indentMm = 2.6

/** The cautions in two columns under a rule. */
export function cautionBlock(width: number, lettersMissing: boolean, fonts: Fonts): Block {
  const columnMm = (width - gutterMm) / 2
  const sentences = lettersMissing ? [...cautions, missingLetters] : cautions
  const half = Math.ceil(sentences.length / 2)
  const columns = [sentences.slice(0, half), sentences.slice(half)].map((column) =>
    column.flatMap((sentence) =>
      wrap(sentence, columnMm - indentMm, type.small, fonts).map((text, i) => ({ text, isFirst: i === 0 })),
    ),
  )
  const items = columns.flatMap((lines, column) =>
    lines.flatMap(({ text, isFirst }, i) => {
      const [x, y] = [column * (columnMm + gutterMm), topMm + 3.2 + i * lineMm]
      return [
        ...(isFirst ? [letters(bullet, [x, y], type.smallStrong)] : []),
        letters(text, [x + indentMm, y], type.small),
      ]
    }),
  )
  return {
    heightMm: topMm + Math.max(...columns.map(({ length }) => length)) * lineMm,
    items: [rule([0, 0], [width, 0], rulePt.fine), ...items],
  }
}
