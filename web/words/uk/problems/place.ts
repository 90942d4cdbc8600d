import { endNames, fieldNames, rowNames } from "./fields"

/** A path of a file, "sections[2].depthMm.start", as a colourist reads it: "section 3, depth at the start". */
export function placeText(path: string): string {
  const keys = [...path.matchAll(/\[(\d+)\]|[^.[\]]+/g)].map(([key, row]) => row ?? key)
  return keys.reduce((place, key, i) => {
    if (/^\d+$/.test(key)) return place
    const end = endNames[key]
    if (end && place) return `${place} ${end}`
    const named = nameOf(key, keys[i + 1])
    return place ? `${place}, ${named}` : named
  }, "")
}

/** Lists count from 1. */
const nameOf = (field: string, next = "") =>
  /^\d+$/.test(next) ? `${rowNames[field] ?? field} ${Number(next) + 1}` : (fieldNames[field] ?? field)
