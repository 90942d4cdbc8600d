import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Fonts } from "./fontFile"
import type { Weight } from "./page"

const oddSpace = /[^\S \u00a0]/gu
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu
/** Joins letters of Arabic and of India, or keeps them apart, and makes one picture of several. */
const joiner = /[\u200c\u200d]/u
const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" })
const code = /\[U\+[0-9A-F+U]+\]/g

/** The text as it can be printed: a letter that neither the sheets' typeface nor the system has is put as its code. */
export function toPrintable(text: string, fonts: Fonts): string {
  const joined = text.normalize("NFC")
  if (isPlain(joined, fonts)) return joined
  return Array.from(graphemes.segment(joined), ({ segment }) => printableLetter(segment, fonts)).join("")
}

/** Whether a letter of the text is put as its code. */
export const lacksLetter = (text: string, fonts: Fonts): boolean => {
  const joined = text.normalize("NFC")
  if (isPlain(joined, fonts)) return false
  return Array.from(graphemes.segment(joined)).some(
    ({ segment }) => !isOwn(seenOf(segment), fonts) && !isOfSystem(segment, fonts),
  )
}

/** Whether a letter is lost from what a plan's own words put on paper. */
export const isWholeOnPaper = (plan: Plan, fonts: Fonts): boolean =>
  wordsOf(plan).every((text) => !lacksLetter(text, fonts))

function wordsOf({ name, client, mixes, sections, toning }: Plan): string[] {
  return [
    name,
    client.initials,
    ...mixes.flatMap(({ product, additives = [] }) => [product, ...additives]),
    ...sections.flatMap((section) => (isFoil(section) ? [] : section.name)),
    ...[toning?.toner, toning?.rootShade].flatMap((choice) => choice?.product ?? []),
  ]
}

/** The letters of a printable text, a code counting as one: what is not to be broken in two. */
export function atomsOf(text: string): string[] {
  const codes = text.match(code) ?? []
  return text
    .split(code)
    .flatMap((between, i) => [
      ...Array.from(graphemes.segment(between), ({ segment }) => segment),
      ...codes.slice(i, i + 1),
    ])
}

/** Letters that are set in one way: in the sheets' typeface, or in the system's. */
export type Run = { text: string; isOwn: boolean }

/** A printable text in its runs. Signs and spaces between two words of the system's letters go with them. */
export function runsOf(text: string, fonts: Fonts, weight: Weight): Run[] {
  const own = fonts[weight]
  if (has(own, text)) return [{ text, isOwn: true }]
  const runs: Run[] = []
  for (const { segment } of graphemes.segment(text)) {
    const isOwnLetter = has(own, segment)
    const last = runs[runs.length - 1]
    if (last?.isOwn === isOwnLetter) last.text += segment
    else runs.push({ text: segment, isOwn: isOwnLetter })
  }
  return joinedOver(runs)
}

function joinedOver(runs: readonly Run[]): Run[] {
  const joined: Run[] = []
  for (const [i, run] of runs.entries()) {
    const last = joined[joined.length - 1]
    const isBetween = run.isOwn && i > 0 && i < runs.length - 1 && !/[\p{L}[\]]/u.test(run.text)
    if (last && !last.isOwn && (isBetween || !run.isOwn)) last.text += run.text
    else joined.push({ ...run })
  }
  return joined
}

/** Width of a printable line, in ems. */
export const lineWidthEm = (text: string, fonts: Fonts, weight: Weight): number =>
  runsOf(text, fonts, weight).reduce(
    (sum, run) =>
      sum + (run.isOwn ? fonts[weight].widthEm(run.text) : (fonts.system?.widthEm(run.text, weight) ?? 0)),
    0,
  )

const has = (font: Fonts[Weight], text: string) =>
  [...text].every((each) => font.has(each.codePointAt(0) ?? 0))

/** Nothing to be done: every letter is the typeface's own, and is seen. */
const isPlain = (text: string, { regular }: Fonts) => has(regular, text) && !text.match(unseen)

const seenOf = (letter: string) =>
  letter
    .replace(/[\u2007\u202f]/g, "\u00a0")
    .replace(oddSpace, " ")
    .replace(unseen, "")
const isOwn = (letter: string, { regular }: Fonts) => has(regular, letter)

const isOfSystem = (letter: string, { system }: Fonts) =>
  system !== null && [...seenOf(letter)].every((each) => system.has(each.codePointAt(0) ?? 0))

function printableLetter(letter: string, fonts: Fonts): string {
  const seen = seenOf(letter)
  if (isOwn(seen, fonts)) return seen
  if (isOfSystem(letter, fonts)) return letter.replace(unseen, (sign) => (joiner.test(sign) ? sign : ""))
  const codes = [...seen].map(
    (each) => `U+${(each.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`,
  )
  return `[${codes.join("+")}]`
}
