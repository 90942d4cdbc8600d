import { expectedOf } from "../fields/expected"
import type { DocumentName, Found, Problem, ProblemCode } from "../fields/problem"
import type { z } from "../fields/zod"

const mostListed = 20

/** The first problems of a list, and how many more there are. */
export const firstProblems = (problems: readonly Problem[]): Problem[] =>
  problems.length <= mostListed
    ? [...problems]
    : [
        ...problems.slice(0, mostListed),
        problemAt([], { code: "more-like-these", count: problems.length - mostListed }),
      ]

/** The problems that one issue of the schema stands for: one, or one for each field that should not be there. */
export function problemsOf(
  issue: z.core.$ZodIssue,
  raw: unknown,
  document: DocumentName = "plan",
): readonly [Problem, ...Problem[]] {
  const [key, ...keys] = issue.code === "unrecognized_keys" ? issue.keys : []
  if (key !== undefined)
    return [
      extraField(issue.path, key, document),
      ...keys.map((each) => extraField(issue.path, each, document)),
    ]
  return [problemAt(issue.path, { ...expectedOf(issue.message), found: foundIn(valueAt(raw, issue.path)) })]
}

/** A problem at a place. */
export const problemAt = (path: readonly PropertyKey[], code: ProblemCode): Problem => ({
  path: pathOf(path),
  ...code,
})

const extraField = (path: readonly PropertyKey[], key: string, document: DocumentName): Problem =>
  problemAt([...path, shown(key)], { code: "extra-field", field: shown(key), within: pathOf(path), document })

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

function foundIn(value: unknown): Found {
  if (value === undefined) return { is: "missing" }
  if (typeof value === "string") return { is: "text", text: shown(value) }
  if (typeof value === "number")
    return Number.isFinite(value) ? { is: "number", value } : { is: "endless-number" }
  if (typeof value === "boolean") return { is: "truth", value }
  if (Array.isArray(value)) return { is: "list", length: value.length }
  return { is: value === null ? "nothing" : "group" }
}

/** The beginning of a text that may be anything, fit for one line. */
const shown = (text: string) => {
  const start = [...text.slice(0, 80).replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, "\uFFFD")]
  return start.length > 40 ? `${start.slice(0, 40).join("")}…` : start.join("")
}
