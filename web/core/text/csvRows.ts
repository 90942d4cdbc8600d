/** A row of a table that came as text, with the line it began on, from 1. */
export type CsvRow = { line: number; cells: readonly string[] }

/**
 * The rows of a table, blank ones left out, without the blanks around a cell. A cell in quotation marks may hold what
 * parts cells, a line's end, and the mark itself twice.
 */
export function csvRows(text: string, separator: string): CsvRow[] {
  const rows: CsvRow[] = []
  let cells: string[] = []
  let cell = ""
  let quoted = false
  let line = 1
  let begun = 1
  const endCell = () => {
    cells.push(cell.trim())
    cell = ""
  }
  const endRow = () => {
    endCell()
    if (cells.some((each) => each !== "")) rows.push({ line: begun, cells })
    cells = []
    begun = line
  }
  const plain = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n")
  for (let i = 0; i < plain.length; i++) {
    const letter = plain[i]
    if (letter === "\n") line++
    if (quoted && letter === '"' && plain[i + 1] === '"') cell += plain[++i]
    else if (letter === '"' && (quoted || cell.trim() === "")) quoted = !quoted
    else if (!quoted && letter === separator) endCell()
    else if (!quoted && letter === "\n") endRow()
    else cell += letter
  }
  endRow()
  return rows
}
