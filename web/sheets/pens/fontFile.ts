import type { Weight } from "./page"
import type { SystemLetters } from "./systemLetters"

/** What layout needs to know of a typeface: which letters it has and how wide they run. */
export type FontFile = {
  bytes: Uint8Array
  has(codePoint: number): boolean
  /** Width of a line of text, in ems. */
  widthEm(text: string): number
}

/** The two weights of the sheets' typeface; beside them the letters of the system, where there is a screen. */
export type Fonts = Record<Weight, FontFile> & { system: SystemLetters | null }

/** Read a TrueType file with a format 4 character map, the kind this folder carries. */
export function readFontFile(bytes: Uint8Array): FontFile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = readTables(view)
  const glyphs = readCharacterMap(view, characterMapAt(view, tables.cmap))
  const unitsPerEm = view.getUint16(tables.head + 18)
  const fullWidths = view.getUint16(tables.hhea + 34)
  const advance = (glyph: number) => view.getUint16(tables.hmtx + 4 * Math.min(glyph, fullWidths - 1))
  return {
    bytes,
    has: (codePoint) => glyphs.has(codePoint),
    widthEm(text) {
      let units = 0
      for (const letter of text) units += advance(glyphs.get(letter.codePointAt(0) ?? 0) ?? 0)
      return units / unitsPerEm
    },
  }
}

/** Where each table of the file begins. */
function readTables(view: DataView): Record<string, number> {
  const tables: Record<string, number> = {}
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + 16 * i
    const tag = [0, 1, 2, 3].map((letter) => String.fromCharCode(view.getUint8(entry + letter))).join("")
    tables[tag] = view.getUint32(entry + 8)
  }
  return tables
}

function characterMapAt(view: DataView, cmap: number): number {
  for (let i = 0; i < view.getUint16(cmap + 2); i++) {
    const start = cmap + view.getUint32(cmap + 8 + 8 * i)
    if (view.getUint16(start) === 4) return start
  }
  throw new Error("the font file has no character map of format 4")
}

/** Format 4 lists ranges of code points: ends, starts, shifts and (for some ranges) a list of glyphs. */
function readCharacterMap(view: DataView, start: number): Map<number, number> {
  const ranges = view.getUint16(start + 6) / 2
  const glyphs = new Map<number, number>()
  for (let range = 0; range < ranges; range++) {
    const end = start + 14 + 2 * range
    const [first, last] = [view.getUint16(end + 2 + 2 * ranges), view.getUint16(end)]
    const shift = view.getUint16(end + 2 + 4 * ranges)
    const listAt = end + 2 + 6 * ranges
    const list = view.getUint16(listAt)
    for (let code = first; code <= last && code < 0xffff; code++) {
      const joinWords = list === 0 ? code : view.getUint16(listAt + list + 2 * (code - first))
      if (joinWords !== 0) glyphs.set(code, (joinWords + shift) & 0xffff)
    }
  }
  return glyphs
}
