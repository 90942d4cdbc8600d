import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { numberText } from "../text/numberText"
import type { Weighing } from "./calibration"

/** Weighings as they come from a spreadsheet, each with the line it stood on; or what is wrong, one sentence a slip. */
export type ReadWeighings =
  | { ok: true; rows: readonly (Weighing & { line: number })[] }
  | { ok: false; problems: string[] }

const needed = ["hairG", "strandAreaCm2", "productG"] as const
const known = [...needed, "foils"] as const
type Column = (typeof known)[number]

const expectedColumns = `expected the columns ${needed.join(",")} (and foils, where a row is a bowl of several)`
const mostListed = 20

/** Reads comma separated text: a header, then one weighed foil or bowl a line. */
export function readWeighings(text: string): ReadWeighings {
  const [header, ...lines] = text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/)
  const columns = cellsOf(header)
  const headerProblem = headerProblemOf(header, columns)
  if (headerProblem) return { ok: false, problems: [headerProblem] }
  const read = lines.flatMap((line, i) => (line.trim() ? [readRow(line, i + 2, columns as Column[])] : []))
  const problems = read.flatMap((row) => ("problems" in row ? row.problems : []))
  if (problems.length > 0) return { ok: false, problems: shortened(problems) }
  return { ok: true, rows: read.flatMap((row) => ("problems" in row ? [] : [row])) }
}

function headerProblemOf(header: string, columns: readonly string[]): string | null {
  if (!header.trim()) return `Line 1 is empty: ${expectedColumns}.`
  const separator = header.includes(";") ? "semicolons" : header.includes("\t") ? "tabs" : null
  if (separator)
    return `Line 1: the columns are parted by ${separator}; save the list with commas between columns and points in numbers, 4.5.`
  const missing = needed.filter((column) => !columns.includes(column))
  if (missing.length > 0) return `Line 1: ${missing.join(" and ")} missing; ${expectedColumns}.`
  const other = columns.find(
    (column, i) => !known.some((each) => each === column) || columns.indexOf(column) < i,
  )
  return other === undefined
    ? null
    : `Line 1: "${other.slice(0, 40)}" is one column too many; ${expectedColumns}.`
}

type Row = (Weighing & { line: number }) | { problems: string[] }

function readRow(text: string, line: number, columns: readonly Column[]): Row {
  const cells = cellsOf(text)
  if (cells.length !== columns.length)
    return {
      problems: [
        `Line ${line} has ${cells.length} values for ${columns.length} columns; if commas stand in numbers, write points: 4.5 for 4,5.`,
      ],
    }
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

function cellProblem(column: Column, cell: string, line: number): string[] {
  const value = Number(cell)
  const most = calibrationFigures.most[column]
  const found = cell === "" ? "it is empty" : `found "${cell.slice(0, 20)}"`
  if (/^-?\d+,\d+$/.test(cell))
    return [`Line ${line}, ${column}: ${found}; write a point, ${cell.replace(",", ".")}.`]
  if (cell === "" || Number.isNaN(value)) return [`Line ${line}, ${column}: expected a number, ${found}.`]
  if (value < 0)
    return [`Line ${line}, ${column}: expected 0 or more, ${found}; weigh again or leave the line out.`]
  if (value === 0 && column === "productG")
    return [
      `Line ${line}, ${column}: expected grams above 0, ${found}; leave the line out if nothing was used.`,
    ]
  if (column === "foils" && !(Number.isInteger(value) && value >= 1))
    return [`Line ${line}, ${column}: expected a whole number from 1, ${found}.`]
  return value > most ? [`Line ${line}, ${column}: expected at most ${numberText(most)}, ${found}.`] : []
}

const shortened = (problems: readonly string[]) =>
  problems.length <= mostListed
    ? [...problems]
    : [...problems.slice(0, mostListed), `And ${problems.length - mostListed} more like these.`]

/** Longer lines are no list of weighings, and slow to take apart. */
const longestLine = 400

/** The cells of a line; a cell in quotation marks may hold a comma. */
const cellsOf = (line: string): string[] =>
  line
    .slice(0, longestLine)
    .split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/)
    .map((cell) => cell.replaceAll('"', "").trim())
