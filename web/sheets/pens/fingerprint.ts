import type { Page } from "./page"

const starts = [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b] as const

/**
 * 32 hexadecimal figures that follow from the pages alone, to a thousandth of a millimetre: four runs of the FNV-1a hash,
 * each from its own start. A drawing that is printed many times is read once.
 */
export function fingerprint(pages: readonly Page[]): string {
  let [first, second, third, fourth]: readonly number[] = starts
  const known = new Map<unknown, number>()
  const word = (value: number) => {
    first = Math.imul(first ^ value, 0x01000193)
    second = Math.imul(second ^ value, 0x01000193)
    third = Math.imul(third ^ value, 0x01000193)
    fourth = Math.imul(fourth ^ value, 0x01000193)
  }
  const text = (value: string) => {
    for (let i = 0; i < value.length; i++) word(value.charCodeAt(i))
    word(marks.end)
  }
  const read = (value: unknown) => {
    if (typeof value === "number") word(Math.round(value * 1000))
    else if (typeof value === "string") text(value)
    else if (Array.isArray(value)) list(value)
    else if (typeof value === "object" && value !== null) record(value)
    else word(value === true ? marks.yes : marks.no)
  }
  const list = (values: readonly unknown[]) => {
    for (const value of values) read(value)
    word(marks.end)
  }
  const record = (value: object) => {
    for (const [name, part] of Object.entries(value)) {
      text(name)
      if (name === "parts") once(part)
      else read(part)
    }
    word(marks.end)
  }
  const once = (parts: unknown) => {
    const number = known.get(parts)
    word(number ?? known.size)
    if (number !== undefined) return
    known.set(parts, known.size)
    read(parts)
  }
  list(pages)
  return [first, second, third, fourth].map(figures).join("")
}

/** Words that no letter and no place on paper is. */
const marks = { end: 0x7fffffff, yes: 0x7ffffffe, no: 0x7ffffffd }

const figures = (sum: number) => (sum >>> 0).toString(16).padStart(8, "0").toUpperCase()
