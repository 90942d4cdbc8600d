import { readFileSync } from "node:fs"

/** The rows of a CSV file without quotes in tests/reference/data, as objects keyed by its header. */
export function readCsv(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../reference/data/${name}`, import.meta.url), "utf8")
  const [header, ...lines] = text.trim().split(/\r?\n/)
  const keys = header.split(",")
  return lines.map((line) => {
    const cells = line.split(",")
    return Object.fromEntries(keys.map((key, i) => [key, cells[i]]))
  })
}
