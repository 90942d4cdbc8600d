import type { FoilKind } from "../../../geometry/section/section"
import { type CsvRow, csvRows } from "../text/csvRows"
import {
  type ColumnName,
  columns,
  kindsOf,
  type LearnRow,
  type NumberColumn,
  type NumberColumnName,
  numberColumns,
  numbersOf,
  type RowName,
  rowNames,
  unitOf,
} from "./learnRow"
import { strandsOf } from "./strandRows"

/** What is wrong with a file that a salon passed on, by line and column. */
export type LearnProblem =
  | { code: "too-large"; mostMb: number }
  | { code: "columns-missing"; columns: readonly string[] }
  | { code: "column-unknown"; column: string }
  | (LearnCell & { code: "unit"; unit: string })
  | { code: "cells"; line: number; cells: number; columns: number }
  | (LearnCell & { code: "word"; known: readonly string[] })
  | (LearnCell & { code: "number"; low: number; high: number; isWhole: boolean })
  | (LearnCell & { code: "not-of-row"; row: RowName })
  | { code: "strand"; strand: number; why: "order" | "printed" | "alike" | "too-many" }
  | { code: "no-rows" }
  | { code: "more"; count: number }

export type LearnCell = { line: number; column: string; found: string }

export type ReadRows =
  | { ok: true; rows: readonly LearnRow[] }
  | { ok: false; problems: readonly LearnProblem[] }

const mostMb = 2
const mostListed = 20

/** The rows of a file, or what is wrong with it. Anything but the known columns is refused, so nothing else comes along. */
export function readRows(text: string): ReadRows {
  if (text.length > mostMb * 1024 * 1024) return refused({ code: "too-large", mostMb })
  const [header, units, ...lines] = csvRows(text, ",")
  const named = header?.cells ?? []
  const wrong = headerProblems(named, units?.cells ?? [])
  if (wrong.length > 0) return refused(...wrong)
  const read = lines.map((line) => readRow(line, named as ColumnName[]))
  const problems = read.flatMap((row) => ("problems" in row ? row.problems : []))
  if (problems.length > 0) return refused(...problems)
  const rows = read.flatMap((row) => ("problems" in row ? [] : [row]))
  if (rows.length === 0) return refused({ code: "no-rows" })
  const strands = strandsOf(rows).flatMap(({ strand, fault }) =>
    fault ? [{ code: "strand" as const, strand, why: fault }] : [],
  )
  return strands.length > 0 ? refused(...strands) : { ok: true, rows }
}

const refused = (...problems: readonly LearnProblem[]): ReadRows => ({
  ok: false,
  problems:
    problems.length <= mostListed
      ? problems
      : [...problems.slice(0, mostListed), { code: "more", count: problems.length - mostListed }],
})

function headerProblems(named: readonly string[], units: readonly string[]): LearnProblem[] {
  const missing = columns.filter((column) => !named.includes(column))
  if (missing.length > 0) return [{ code: "columns-missing", columns: missing }]
  const other = named.find(
    (name, at) => !columns.some((column) => column === name) || named.indexOf(name) < at,
  )
  if (other !== undefined) return [{ code: "column-unknown", column: shown(other) }]
  return (named as readonly ColumnName[]).flatMap((column, at) =>
    units[at] === unitOf(column)
      ? []
      : [{ code: "unit" as const, line: 2, column, found: shown(units[at] ?? ""), unit: unitOf(column) }],
  )
}

/** No more of a cell is said again than shows which it is. */
const shown = (text: string) => text.slice(0, 20)

type Row = LearnRow | { problems: LearnProblem[] }

function readRow({ cells, line }: CsvRow, named: readonly ColumnName[]): Row {
  if (cells.length !== named.length)
    return { problems: [{ code: "cells", line, cells: cells.length, columns: named.length }] }
  const cell = (column: ColumnName): LearnCell => ({ line, column, found: cells[named.indexOf(column)] })
  const name = rowNames.find((each) => each === cell("row").found)
  if (!name) return { problems: [wordProblem(cell("row"), rowNames)] }
  const own = numbersOf[name]
  const problems = [
    ...(kindsOf[name].includes(cell("kind").found) ? [] : [wordProblem(cell("kind"), kindsOf[name])]),
    ...own.flatMap((column) => numberProblem(cell(column), numberColumns[column])),
    ...named
      .filter((column) => column in numberColumns && !own.includes(column as NumberColumnName))
      .flatMap((column) => (cell(column).found === "" ? [] : [strangerProblem(cell(column), name)])),
  ]
  if (problems.length > 0) return { problems }
  const kind = (cell("kind").found || null) as FoilKind | null
  const numbers = Object.fromEntries(own.map((column) => [column, Number(cell(column).found)]))
  return { row: name, ...(name !== "strand" && { kind }), ...numbers } as LearnRow
}

const wordProblem = (cell: LearnCell, known: readonly string[]): LearnProblem => ({
  code: "word",
  ...cell,
  found: shown(cell.found),
  known: known.filter((word) => word !== ""),
})

const strangerProblem = (cell: LearnCell, row: RowName): LearnProblem => ({
  code: "not-of-row",
  ...cell,
  found: shown(cell.found),
  row,
})

function numberProblem(cell: LearnCell, { low, high, isWhole }: NumberColumn): LearnProblem[] {
  const text = cell.found
  const found = shown(text)
  const value = text === "" ? Number.NaN : Number(text)
  const isFine = value >= low && value <= high && (!isWhole || Number.isInteger(value))
  return isFine ? [] : [{ code: "number", ...cell, found, low, high, isWhole: isWhole ?? false }]
}
