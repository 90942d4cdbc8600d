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
    /** What was written for another visit, the latest: it overrides nothing any more. */
    lapsed: Pass | null
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
  finds(visit).map((found) => {
    const passes = row.passable ? passesOf(row.rule, found, visit.consultation) : []
    const isOfThis = (pass: Pass) => pass.visit !== undefined && isOfVisit(pass.visit, visit.days)
    return {
      ...found,
      ...row,
      pass: passes.find(isOfThis) ?? null,
      lapsed: passes.findLast((pass) => !isOfThis(pass)) ?? null,
      answered: row.letter ? letterFor(row.rule, visit) : null,
    }
  })

/** What was written to override a finding, for whichever visit. */
const passesOf = (rule: RuleName, { mixes, about }: Found, { passes }: Consultation): Pass[] =>
  passes.filter(
    (pass) =>
      pass.rule === rule &&
      (pass.mix === undefined || mixes?.includes(pass.mix)) &&
      (pass.about === undefined || pass.about === about) &&
      pass.reason.trim() !== "" &&
      pass.by.trim() !== "",
  )

/**
 * The mixes for which the usual limits of heat were overridden in writing, for the visit of that day or a later one: a
 * clock knows no today, and a day gone by is asked anew by the stops.
 */
export const heatOverridden = (
  rule: keyof typeof heatHabitsBroken,
  { consultation, mixes, date }: Pick<Visit, "consultation" | "mixes"> & { date: string },
): string[] =>
  heatHabitsBroken[rule]({ mixes }).flatMap((found) =>
    passesOf(rule, found, consultation).some(({ visit }) => visit !== undefined && visit >= date)
      ? (found.mixes ?? [])
      : [],
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
