import type { Consultation, Pass } from "../document/consultation"
import { type NotKnown, notKnown } from "./notKnown"
import { clientRules } from "./rules/clientRules"
import { hairRules } from "./rules/hairRules"
import { mixRules } from "./rules/mixRules"
import type { Found, Rule, Visit } from "./rules/rule"

const table = { ...clientRules, ...hairRules, ...mixRules }

/** The name of a row, as a pass and a file know it. */
export type RuleName = keyof typeof table
export type NamedRule = Rule & { rule: RuleName }

/** Every row in the order it is told. */
export const rules: readonly NamedRule[] = (Object.keys(table) as RuleName[]).map((rule) => ({
  rule,
  ...table[rule],
}))

/** What a rule found, with all that is printed beside it. */
export type Finding = Found & Omit<NamedRule, "finds"> & { pass: Pass | null }

/**
 * The stops that hold the mix, and what else must be said. A stop that may be passed, and was, with a written
 * reason and a name, moves to the cautions and keeps its reason.
 */
export function checkVisit(visit: Visit): {
  stops: Finding[]
  cautions: Finding[]
  notKnown: readonly NotKnown[]
} {
  const findings = rules.flatMap((rule) => findingsOf(rule, visit))
  const isHolding = ({ severity, pass }: Finding) => severity === "stop" && pass === null
  return {
    stops: findings.filter(isHolding),
    cautions: findings.filter((finding) => !isHolding(finding)),
    notKnown: notKnown(visit.consultation),
  }
}

const findingsOf = ({ finds, ...row }: NamedRule, visit: Visit): Finding[] =>
  finds(visit).map((found) => ({
    ...found,
    ...row,
    pass: row.passable ? passOf(row.rule, found, visit.consultation) : null,
  }))

const passOf = (rule: RuleName, { mixes, about }: Found, { passes }: Consultation) =>
  passes.find(
    (pass) =>
      pass.rule === rule &&
      (pass.mix === undefined || mixes?.includes(pass.mix)) &&
      (pass.about === undefined || pass.about === about) &&
      pass.reason.trim() !== "" &&
      pass.by.trim() !== "",
  ) ?? null

/** The stops that hold one mix: those of the whole visit, and its own. */
export const holding = (stops: readonly Finding[], mix: string) =>
  stops.filter(({ mixes }) => !mixes || mixes.includes(mix))
