import type { z } from "../document/zod"

/** What is wrong with a file: where, and one sentence that names the field, what was expected and what was found. */
export type Problem = { path: string; expected: string }

const mostListed = 20

/** The first problems of a list, and how many more there are. */
export const firstProblems = (problems: readonly Problem[]): Problem[] =>
  problems.length <= mostListed
    ? [...problems]
    : [
        ...problems.slice(0, mostListed),
        { path: "file", expected: `and ${problems.length - mostListed} more problems like these` },
      ]

/** The problems that one issue of the schema stands for: one, or one for each field that should not be there. */
export function problemsOf(issue: z.core.$ZodIssue, raw: unknown, document = "plan"): Problem[] {
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => extraField(issue.path, key, document))
  return [problemAt(issue.path, `${issue.message}, ${found(valueAt(raw, issue.path))}`)]
}

/** A problem with the place put before the sentence in words. */
export function problemAt(path: readonly PropertyKey[], sentence: string): Problem {
  const place = placeInWords(path)
  return { path: pathOf(path), expected: place ? `${place}: ${sentence}` : sentence }
}

function extraField(path: readonly PropertyKey[], key: string, document: string): Problem {
  const { expected } = problemAt(path, `${quoted(key)} is not a field of a ${document}; take it out`)
  return { path: pathOf([...path, shown(key)]), expected }
}

const pathOf = (path: readonly PropertyKey[]) =>
  path.reduce<string>(
    (text, key) =>
      typeof key === "number" ? `${text}[${key}]` : text ? `${text}.${String(key)}` : String(key),
    "",
  ) || "file"

const valueAt = (raw: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (isGroup(value) && Object.hasOwn(value, key) ? value[key] : undefined),
    raw,
  )

export const isGroup = (value: unknown): value is Record<PropertyKey, unknown> =>
  typeof value === "object" && value !== null

function found(value: unknown): string {
  if (value === undefined) return "but it is missing"
  if (typeof value === "string") return `found ${quoted(value)}`
  if (typeof value === "number") return `found ${Number.isFinite(value) ? value : "a number without end"}`
  if (Array.isArray(value)) return `found a list of ${value.length}`
  return `found ${value === null ? "nothing (null)" : isGroup(value) ? "a group of fields" : String(value)}`
}

const quoted = (text: string) => `"${shown(text)}"`

/** The beginning of a text that may be anything, fit for one line. */
const shown = (text: string) => {
  const start = [...text.slice(0, 80).replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, "\uFFFD")]
  return start.length > 40 ? `${start.slice(0, 40).join("")}…` : start.join("")
}

const numbered: Record<string, string> = {
  sections: "section",
  mixes: "mix",
  parting: "parting, point",
  rows: "row",
  dividers: "dividing parting",
  named: "named",
  breaks: "break",
  log: "tap",
  steps: "step",
  moves: "move",
  spots: "spot",
}

const words: Record<string, string> = {
  depthMm: "depth",
  start: "at the start",
  end: "at the end",
  taken: "side taken",
  mapNumber: "map number",
  rootDistanceMm: "distance off the scalp",
  strand: "part of the strand coated",
  faces: "faces coated",
  widthMm: "width",
  elevationDeg: "elevation",
  overDirectionDeg: "over-direction",
  foilLie: "foil lie",
  stitchMm: "stitch",
  gapMm: "gap",
  dipMm: "dip",
  pushedShare: "share pushed to the root",
  cushionMm: "cushion",
  lengthMm: "length",
  breadthMm: "breadth",
  heightMm: "height",
  aroundMm: "tape around",
  overMm: "tape over the top, ear to ear",
  frontToNapeMm: "tape from front hairline to nape",
  densityPerCm2: "density",
  fibreUm: "fibre thickness",
  lengthCm: "length",
  developerVolume: "developer",
  bookingMin: "minutes booked",
  heatMin: "minutes of heat",
  strandTest: "strand test",
  startLevel: "level to start from",
  fromMin: "from minute",
  toMin: "to minute",
  clockNotes: "clock notes",
  ageYears: "age",
  workingSections: "working sections",
  mayCross: "may cross",
  at: "place",
  upkeepWeeks: "weeks until the next visit",
  liftToLevel: "level to lift to",
  fromLevel: "level now",
  towardNapeMm: "distance toward the nape",
  wornParting: "parting worn",
  offCentreMm: "distance from the middle",
  behindMm: "distance behind the hairline",
  toLevel: "level to lift to",
}

/** A field as a colourist calls it. */
export const nameOf = (field: string) => words[field] ?? field

/** A path as a colourist reads it: "section 3, depth at the start". Lists count from 1. */
const placeInWords = (path: readonly PropertyKey[]) =>
  path
    .flatMap((key, i) => {
      if (typeof key === "number") return []
      const name = String(key)
      const next = path[i + 1]
      return typeof next === "number" ? `${numbered[name] ?? name} ${next + 1}` : nameOf(name)
    })
    .join(", ")
    .replaceAll(", at the", " at the")
