import { endNames, type fieldNames, type rowNames } from "./fields"

type Fields = { fieldNames: typeof fieldNames; rowNames: typeof rowNames }

/** A path of a file, "sections[2].depthMm.start", as a colourist reads it: "section 3, depth at the start". */
export function placeText(path: string, fields: Fields): string {
  const keys = [...path.matchAll(/\[(\d+)\]|[^.[\]]+/g)].map(([key, row]) => row ?? key)
  return keys.reduce((place, key, i) => {
    if (/^\d+$/.test(key)) return place
    const end = endNames[key]
    if (end && place) return `${place} ${end}`
    const named = nameOf(fields, key, keys[i + 1])
    return place ? `${place}, ${named}` : named
  }, "")
}

/** Lists count from 1. */
const nameOf = ({ fieldNames, rowNames }: Fields, field: string, next = "") =>
  /^\d+$/.test(next) ? `${rowNames[field] ?? field} ${Number(next) + 1}` : (fieldNames[field] ?? field)
