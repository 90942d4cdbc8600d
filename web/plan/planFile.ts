import { headProblems } from "./headProblems"
import { liftToPresent } from "./lifts"
import { partingProblems } from "./partingProblems"
import { planKind, planVersion } from "./planKind"
import { planRules } from "./planRules"
import { firstProblems, isGroup, nameOf, type Problem, problemAt, problemsOf } from "./problem"
import { roundNumbers } from "./roundNumbers"
import { type Plan, planSchema } from "./schema"

export type Opened = { ok: true; plan: Plan } | { ok: false; problems: Problem[] }
type Read = { ok: true; raw: unknown } | { ok: false; problems: Problem[] }

const mostLetters = 5 * 1024 * 1024

/**
 * The only way into the program for a plan: the text of a file gives a plan to trust, or a list of what is wrong with it.
 * `check` looks at the drawing once the fields are in order.
 */
export function openPlan(text: string, check: (plan: Plan) => Problem[] = partingProblems): Opened {
  const read = readJson(text)
  if (!read.ok) return read
  const problem = versionProblem(read.raw)
  if (problem) return refuse([problem])
  const lifted = liftToPresent(read.raw, versionOf(read.raw))
  const parsed = planSchema.safeParse(lifted)
  if (!parsed.success) return refuse(parsed.error.issues.flatMap((issue) => problemsOf(issue, lifted)))
  const plan = parsed.data
  const broken = [...planRules(plan), ...headProblems(plan)]
  const problems = broken.length > 0 ? broken : check(plan)
  return problems.length > 0 ? refuse(problems) : { ok: true, plan }
}

const refuse = (problems: readonly Problem[]) => ({ ok: false as const, problems: firstProblems(problems) })
const refuseFile = (sentence: string) => refuse([problemAt([], sentence)])

function readJson(text: string): Read {
  if (text.length > mostLetters)
    return refuseFile(
      `expected a plan of at most 5 MB, found ${Math.ceil(text.length / 1024 / 1024)} MB; is it another file?`,
    )
  if (text.trim() === "") return refuseFile("the file is empty: expected a plan saved by Partline")
  try {
    return { ok: true, raw: JSON.parse(text.replace(/^\uFEFF/, "")) }
  } catch {
    return refuseFile(
      noNumberIn(text) ??
        "the file is cut short or is not a plan: expected the JSON text that Partline saves; save it again where it was made",
    )
  }
}

/** JSON has no word for what is no number, but careless programs write one; the field before it is named. */
function noNumberIn(text: string): string | null {
  const [, field, word] = /"(\w{1,40})"\s*:\s*(-?(?:NaN|Infinity))\b/.exec(text) ?? []
  return field ? `${nameOf(field)}: expected a number, found ${word}` : null
}

const versionOf = (raw: unknown) =>
  isGroup(raw) && typeof raw.version === "number" ? raw.version : Number.NaN

function versionProblem(raw: unknown): Problem | null {
  if (!isGroup(raw) || raw.kind !== planKind)
    return problemAt([], `this is not a Partline plan: expected "kind": "${planKind}"`)
  const version = versionOf(raw)
  if (!Number.isInteger(version) || version < 1)
    return problemAt(["version"], `expected a whole number, ${planVersion} at present`)
  if (version <= planVersion) return null
  const newer = `this file is version ${version}; this Partline reads up to ${planVersion}`
  return { path: "version", expected: `${newer}: open it with a newer Partline` }
}

/** The plan with its numbers as a file keeps them. */
export const roundPlan = (plan: Plan): Plan => planSchema.parse(roundNumbers(plan))

/** The text of a plan's file: fields always in the order of the schema, a point a line, a newline at the end. */
export const savePlan = (plan: Plan): string =>
  `${JSON.stringify(roundPlan(plan), null, 1).replace(pairOfNumbers, "[$1, $2]")}\n`

// A raw newline cannot stand inside a JSON string, so this finds points only.
const pairOfNumbers = /\[\n\s*(-?[\d.e-]+),\n\s*(-?[\d.e-]+)\n\s*\]/g
