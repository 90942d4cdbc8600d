import { headProblems } from "../checks/headProblems"
import { partingProblems } from "../checks/partingProblems"
import { planRules } from "../checks/planRules"
import { firstProblems, problemsOf } from "../checks/problem"
import { roundNumbers } from "../checks/roundNumbers"
import { planKind, planVersion } from "../document/planKind"
import { type Plan, planSchema } from "../document/schema"
import type { Problem } from "../fields/problem"
import { liftToPresent } from "./migrations"
import { type DocumentKind, readDocument } from "./readDocument"

export type Opened = { ok: true; plan: Plan } | { ok: false; problems: Problem[] }

export const mostPlanMb = 5

const planDocument: DocumentKind = {
  name: "plan",
  kind: planKind,
  version: planVersion,
  mostMb: mostPlanMb,
}

/**
 * The only way into the program for a plan: the text of a file gives a plan to trust, or a list of what is wrong with it.
 * `check` looks at the drawing once the fields are in order.
 */
export function openPlan(text: string, check: (plan: Plan) => Problem[] = partingProblems): Opened {
  const read = readDocument(text, planDocument)
  if (!read.ok) return refuse([read.problem])
  const lifted = liftToPresent(read.raw, read.version)
  const parsed = planSchema.safeParse(lifted)
  if (!parsed.success) return refuse(parsed.error.issues.flatMap((issue) => problemsOf(issue, lifted)))
  const plan = parsed.data
  const broken = [...planRules(plan), ...headProblems(plan)]
  const problems = broken.length > 0 ? broken : check(plan)
  return problems.length > 0 ? refuse(problems) : { ok: true, plan }
}

const refuse = (problems: readonly Problem[]) => ({ ok: false as const, problems: firstProblems(problems) })

/** The text of a plan's file, once it is known that it would be opened again; else the first thing that is wrong with it. */
export function writePlan(plan: Plan): { ok: true; text: string } | { ok: false; problem: Problem } {
  const raw = roundNumbers(plan)
  const parsed = planSchema.safeParse(raw)
  if (!parsed.success) return { ok: false, problem: problemsOf(parsed.error.issues[0], raw)[0] }
  const [problem] = [...planRules(parsed.data), ...headProblems(parsed.data)]
  return problem ? { ok: false, problem } : { ok: true, text: textOf(parsed.data) }
}

/** The plan with its numbers as a file keeps them. */
export const roundPlan = (plan: Plan): Plan => planSchema.parse(roundNumbers(plan))

/** The text of a plan's file: fields always in the order of the schema, a point a line, a newline at the end. */
export const savePlan = (plan: Plan): string => textOf(roundPlan(plan))

const textOf = (plan: Plan) => `${JSON.stringify(plan, null, 1).replace(pairOfNumbers, "[$1, $2]")}\n`

// A raw newline cannot stand inside a JSON string, so this finds points only.
const pairOfNumbers = /\[\n\s*(-?[\d.e-]+),\n\s*(-?[\d.e-]+)\n\s*\]/g
