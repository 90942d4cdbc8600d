import type { Consultation, DoctorLetter, Pass } from "../document/consultation"
import { type NotAsked, type NotKnown, notAsked, notKnown } from "./asking/notAsked"
import { isOfVisit } from "./asking/questions"
import { clientRules } from "./rules/clientRules"
import { hairRules } from "./rules/hairRules"
import { heatHabitsBroken, mixRules } from "./rules/mixRules"
import type { Found, Rule, Visit } from "./rules/rule"
import { testRules } from "./rules/testRules"

const table = { ...clientRules, ...testRules, ...hairRules, ...mixRules }

/** The name of a row, as a pass and a file know it. */
export type RuleName = keyof typeof table
export type NamedRule = Rule & { rule: RuleName }

/** Every row in the order it is told. */
export const rules: readonly NamedRule[] = (Object.keys(table) as RuleName[]).map((rule) => ({
  rule,
  ...table[rule],
}))

/** What a rule found, with all that is printed beside it. */
export type Finding = Found &
  Omit<NamedRule, "finds"> & {
    pass: Pass | null
    /** The doctor's letter that answers it. */
    answered: DoctorLetter | null
  }

/**
 * The stops that hold the mix, and what else must be said. A stop that may be overridden, and was, with a written
 * reason and a name, or that a doctor's letter answers, moves to the cautions and keeps its reason.
 */
export function checkVisit(visit: Visit): {
  stops: Finding[]
  cautions: Finding[]
  notAsked: readonly NotAsked[]
  notKnown: readonly NotKnown[]
} {
  const findings = rules.flatMap((rule) => findingsOf(rule, visit))
  const isHolding = ({ severity, pass, answered }: Finding) =>
    severity === "stop" && pass === null && answered === null
  return {
    stops: findings.filter(isHolding),
    cautions: findings.filter((finding) => !isHolding(finding)),
    notAsked: notAsked(visit.consultation, visit.days),
    notKnown: notKnown(visit.consultation),
  }
}

const findingsOf = ({ finds, ...row }: NamedRule, visit: Visit): Finding[] =>
  finds(visit).map((found) => ({
    ...found,
    ...row,
    pass: row.passable ? passOf(row.rule, found, visit.consultation) : null,
    answered: row.letter ? letterFor(row.rule, visit) : null,
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

/** The mixes for which the usual limits of heat were overridden in writing. */
export const heatOverridden = (
  rule: keyof typeof heatHabitsBroken,
  { consultation, mixes }: Pick<Visit, "consultation" | "mixes">,
): string[] =>
  heatHabitsBroken[rule]({ mixes }).flatMap(
    (found) => (passOf(rule, found, consultation) && found.mixes) || [],
  )

/** A letter counts for the visit it was entered for, and never before its own date. */
const letterFor = (rule: RuleName, { consultation: { letters }, days }: Visit) =>
  letters.find(
    (letter) =>
      letter.rule === rule &&
      isOfVisit(letter.visit, days) &&
      letter.dated <= days.today &&
      letter.from.trim() !== "",
  ) ?? null

/** The stops that hold any of these mixes: those of the whole visit, and their own. */
export const holding = (stops: readonly Finding[], ...these: readonly string[]) =>
  stops.filter(({ mixes }) => !mixes || these.some((mix) => mixes.includes(mix)))
