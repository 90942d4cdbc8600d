import type { HeadSizeFault } from "../../../geometry/scalp/headSize"
import { csvRows } from "../text/csvRows"
import { separatorOf } from "../text/separatorOf"

/** What is wrong with a list of a class or of its heads; columns and cells are as in the list. */
export type ClassProblem =
  | { code: "too-large"; mostMb: number }
  | { code: "columns-missing"; columns: readonly string[] }
  | { code: "column-twice"; column: string }
  | { code: "no-rows" }
  | { code: "cell-empty"; line: number; column: string }
  | { code: "no-file-name"; line: number; found: string }
  | { code: "twice"; line: number; first: number; column: string; found: string }
  | { code: "no-number"; line: number; column: string; found: string }
  | { code: "measures"; line: number }
  | { code: "no-hairline"; line: number; found: string; known: readonly string[] }
  | { code: "head-size"; line: number; fault: HeadSizeFault }
  | { code: "not-in-class"; line: number; found: string }
  | { code: "learner-without-file"; line: number; name: string; found: string }
  | { code: "file-without-learner"; found: string }

export type ClassRow = { line: number; cell(column: string): string }
export type ClassTable = { ok: true; rows: readonly ClassRow[] } | { ok: false; problems: ClassProblem[] }

/** A list of a class is small: nothing of a larger file is read. */
export const mostClassMb = 1

/** Reads a table with a heading: comma, semicolon or tab between its cells; columns that nobody asks for are left alone. */
export function readClassTable(text: string, needed: readonly string[]): ClassTable {
  if (text.length > mostClassMb * 1e6) return wrong({ code: "too-large", mostMb: mostClassMb })
  const separator = separatorOf(text.replace(/^\uFEFF/, ""))
  const [heading, ...rows] = csvRows(text, separator)
  const columns = (heading?.cells ?? []).map((each) => each.toLowerCase())
  const missing = needed.filter((column) => !columns.includes(column))
  if (missing.length > 0) return wrong({ code: "columns-missing", columns: missing })
  const twice = columns.find((column, i) => column !== "" && columns.indexOf(column) < i)
  if (twice !== undefined) return wrong({ code: "column-twice", column: twice })
  if (rows.length === 0) return wrong({ code: "no-rows" })
  const cellOf = (cells: readonly string[]) => (column: string) => cells[columns.indexOf(column)] ?? ""
  return { ok: true, rows: rows.map(({ line, cells }) => ({ line, cell: cellOf(cells) })) }
}

const wrong = (problem: ClassProblem): ClassTable => ({ ok: false, problems: [problem] })
