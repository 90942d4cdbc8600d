/** A line of a table as text; no cell is taken for a formula by the program that opens it. */
export const csvLine = (cells: readonly (string | number)[]): string => `${cells.map(csvCell).join(",")}\r\n`

function csvCell(value: string | number): string {
  if (typeof value === "number") return String(value)
  const plain = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value
  return /[",\r\n;]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}
