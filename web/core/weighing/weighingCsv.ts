import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { Weighing } from "../grams/calibration"
import { type CsvRow, csvRows } from "../text/csvRows"

/** Weighings as they come from a spreadsheet, each with the line it stood on; or what is wrong, one slip each. */
export type ReadWeighings =
  | { ok: true; rows: readonly (Weighing & { line: number })[] }
  | { ok: false; problems: ListProblem[] }

/** A slip in a list of weighings. Columns, cells and what to write in their place are as in the list. */
export type ListProblem =
  | { code: "file-too-large"; mostMb: number }
  | { code: "header-empty" }
  | { code: "header-separator"; separator: "semicolons" | "tabs" }
  | { code: "columns-missing"; columns: readonly string[] }
  | { code: "column-unknown"; column: string }
  | { code: "cells"; line: number; cells: number; columns: number }
  | (Cell & { code: "decimal-comma"; write: string })
  | (Cell & { code: "no-number" })
  | (Cell & { code: "negative" })
  | (Cell & { code: "nothing-used" })
  | (Cell & { code: "not-whole" })
  | (Cell & { code: "too-large"; most: number })
  | { code: "more-slips"; count: number }

/** A cell by its place, and what was found in it; nothing where it is empty. */
type Cell = { line: number; column: string; found: string }

/** The columns of such a list; `foils` is for rows that are a bowl of several. */
export const neededColumns = ["hairG", "strandAreaCm2", "productG"] as const
const known = [...neededColumns, "foils"] as const
type Column = (typeof known)[number]

const mostListed = 20

/** A list of weighings is small: nothing of a larger file is read. */
export const mostListMb = 5
export const tooLargeList = (): ReadWeighings => ({
  ok: false,
  problems: [{ code: "file-too-large", mostMb: mostListMb }],
})

/** Reads comma separated text: a header, then one weighed foil or bowl a line. */
export function readWeighings(text: string): ReadWeighings {
  const [header, ...rows] = csvRows(text, ",")
  const columns = header?.cells ?? []
  const headerProblem = headerProblemOf(columns)
  if (headerProblem) return { ok: false, problems: [headerProblem] }
  const read = rows.map((row) => readRow(row, columns as Column[]))
  const problems = read.flatMap((row) => ("problems" in row ? row.problems : []))
  if (problems.length > 0) return { ok: false, problems: shortened(problems) }
  return { ok: true, rows: read.flatMap((row) => ("problems" in row ? [] : [row])) }
}

function headerProblemOf(columns: readonly string[]): ListProblem | null {
  if (columns.length === 0) return { code: "header-empty" }
  if (columns.some((column) => column.includes(";")))
    return { code: "header-separator", separator: "semicolons" }
  if (columns.some((column) => column.includes("\t"))) return { code: "header-separator", separator: "tabs" }
  const missing = neededColumns.filter((column) => !columns.includes(column))
  if (missing.length > 0) return { code: "columns-missing", columns: missing }
  const other = columns.find(
    (column, i) => !known.some((each) => each === column) || columns.indexOf(column) < i,
  )
  return other === undefined ? null : { code: "column-unknown", column: other.slice(0, 40) }
}

type Row = (Weighing & { line: number }) | { problems: ListProblem[] }

function readRow({ line, cells }: CsvRow, columns: readonly Column[]): Row {
  if (cells.length !== columns.length)
    return { problems: [{ code: "cells", line, cells: cells.length, columns: columns.length }] }
  const problems = columns.flatMap((column, i) => cellProblem(column, cells[i], line))
  if (problems.length > 0) return { problems }
  const value = (column: Column) => Number(cells[columns.indexOf(column)])
  return {
    line,
    panels: columns.includes("foils") ? value("foils") : 1,
    hairG: value("hairG"),
    strandAreaCm2: value("strandAreaCm2"),
    productG: value("productG"),
  }
}

function cellProblem(column: Column, text: string, line: number): ListProblem[] {
  const value = Number(text)
  const most = calibrationFigures.most[column]
  const cell = { line, column, found: text.slice(0, 20) }
  if (/^-?\d+,\d+$/.test(text)) return [{ code: "decimal-comma", ...cell, write: text.replace(",", ".") }]
  if (text === "" || Number.isNaN(value)) return [{ code: "no-number", ...cell }]
  if (value < 0) return [{ code: "negative", ...cell }]
  if (value === 0 && column === "productG") return [{ code: "nothing-used", ...cell }]
  if (column === "foils" && !(Number.isInteger(value) && value >= 1)) return [{ code: "not-whole", ...cell }]
  return value > most ? [{ code: "too-large", ...cell, most }] : []
}

const shortened = (problems: readonly ListProblem[]): ListProblem[] =>
  problems.length <= mostListed
    ? [...problems]
    : [...problems.slice(0, mostListed), { code: "more-slips", count: problems.length - mostListed }]
