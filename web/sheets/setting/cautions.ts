import { moved, type Tag } from "../pens/page"
import type { Block } from "./block"
import type { Press } from "./press"
import { letters, rule, rulePt, type Type, type, widthMm, wrap } from "./typesetting"

/**
 * What a placement map must say. Gloves and eyes: label words required by Regulation (EC)
 * 1223/2009, Annex III. Air and powder: HSE, COSHH Essentials SR11. Heat, metal, pain: Bouschon et al., Ann Dermatol
 * Venereol 2018;145:359. Warmth: Moritz and Henriques 1947. Checks: common practice. Dryness: J Cosmet Sci 2021;72.
 * Its words are `cautions` of the chapter of sheets.
 */
const topMm = 3.4
const gutterMm = 6
const fillMm = 6.4
const fillGapMm = 3
const lineMmPerPt = 4.15 / 9.5
const bullet = "·"
const indentMm = 2.6

/** `setting` is the type they are set in: small on the map, where every line counts. */
export type CautionWords = {
  stops: string
  lettersMissing: boolean
  setting?: Type
  /** What is filled in by hand under the cautions, before the local rule. */
  fills?: readonly string[]
}
type Line = { text: string; isFirst: boolean; setting: Type; tag: Tag }

/** Whether the mix is held, then the cautions, in two columns under a rule. */
export function cautionBlock(width: number, words: CautionWords, press: Press): Block {
  const { stops, lettersMissing, setting: body = type.small, fills = [] } = words
  const lineMm = body.sizePt * lineMmPerPt
  const columnMm = (width - gutterMm) / 2
  const said = press.words.sheets.cautions
  const sentences = [...said.all, ...(lettersMissing ? [said.codedLetters] : [])]
  const linesOf = (text: string, setting: Type): Line[] => {
    // One sentence is one thing that is read, however many lines it takes.
    const tag: Tag = { role: "P" }
    return wrap(text, columnMm - indentMm, setting, press).map((part, i) => ({
      text: part,
      isFirst: i === 0,
      setting,
      tag,
    }))
  }
  const held = stops ? [linesOf(stops, type.smallStrong)] : []
  const columns = evenColumns([...held, ...sentences.map((sentence) => linesOf(sentence, body))])
  const items = columns.flatMap((lines, column) =>
    lines.flatMap(({ text, isFirst, setting, tag }, i) => {
      const [x, y] = [column * (columnMm + gutterMm), topMm + 3.2 + i * lineMm]
      return [
        ...(isFirst ? [{ ...letters(bullet, [x, y], { ...setting, weight: "semibold" }), tag }] : []),
        { ...letters(text, [x + indentMm, y], setting), tag },
      ]
    }),
  )
  const bottomMm = topMm + Math.max(...columns.map(({ length }) => length)) * lineMm
  const toFill = fillLine([...fills, said.localRule], width, body, press)
  return {
    heightMm: bottomMm + toFill.heightMm,
    items: [rule([0, 0], [width, 0], rulePt.fine), ...items, ...moved(toFill.items, 0, bottomMm)],
  }
}

/** Labels along a line, each with a rule to write on as far as the next. */
function fillLine(labels: readonly string[], width: number, setting: Type, press: Press): Block {
  const labelsMm = labels.map((label) => widthMm(label, setting, press) + 2)
  const ruleMm = (width - labelsMm.reduce((sum, mm) => sum + mm, 0)) / labels.length - fillGapMm
  let left = 0
  const items = labels.flatMap((label, i) => {
    const x = left
    left += labelsMm[i] + ruleMm + fillGapMm
    const from = x + labelsMm[i]
    return [
      letters(label, [x, fillMm - 1.4], setting),
      rule([from, fillMm - 1], [from + ruleMm, fillMm - 1], rulePt.hair),
    ]
  })
  return { heightMm: fillMm, items }
}

/** Sentences in two columns, broken between them where the higher one is lowest. */
function evenColumns(sentences: readonly (readonly Line[])[]): (readonly Line[])[] {
  const columnsAt = (at: number) => [sentences.slice(0, at).flat(), sentences.slice(at).flat()]
  const highest = (at: number) => Math.max(...columnsAt(at).map(({ length }) => length))
  const places = sentences.map((_, i) => i + 1)
  return columnsAt(places.reduce((best, at) => (highest(at) < highest(best) ? at : best)))
}
