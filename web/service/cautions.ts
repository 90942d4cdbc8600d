import { type Consultation, type Pass, type Question, questions } from "../plan/consultation"
import { clientRules } from "./rules/clientRules"
import { hairRules } from "./rules/hairRules"
import { mixRules } from "./rules/mixRules"
import type { Found, Rule, Visit } from "./rules/rule"

/** What a rule found, with all that is printed beside it. */
export type Finding = Found & Omit<Rule, "finds"> & { pass: Pass | null }

export const rules: readonly Rule[] = [...clientRules, ...hairRules, ...mixRules]

/**
 * The stops that hold the mix, and what else must be said. A stop that may be passed, and was, with a written
 * reason and a name, moves to the cautions and keeps its reason.
 */
export function checkVisit(visit: Visit): { stops: Finding[]; cautions: Finding[]; notKnown: string[] } {
  const findings = rules.flatMap((rule) => findingsOf(rule, visit))
  const isHolding = ({ severity, pass }: Finding) => severity === "stop" && pass === null
  return {
    stops: findings.filter(isHolding),
    cautions: findings.filter((finding) => !isHolding(finding)),
    notKnown: notKnown(visit.consultation),
  }
}

function findingsOf({ finds, ...row }: Rule, visit: Visit): Finding[] {
  const pass = row.passable ? passOf(row.rule, visit.consultation) : null
  return finds(visit).map((found) => ({ ...found, ...row, pass }))
}

const passOf = (rule: string, { passes }: Consultation) =>
  passes.find((pass) => pass.rule === rule && pass.reason.trim() !== "" && pass.by.trim() !== "") ?? null

/** What nobody has asked or looked at yet, in the words of the screen. */
export function notKnown({ answers, ageYears, scalp, hair, liftToLevel }: Consultation): string[] {
  const asked = Object.keys(questions) as Question[]
  return [
    ...(ageYears === null ? ["The client’s age"] : []),
    ...(scalp === null ? ["The scalp"] : []),
    ...(Object.keys(hair).length === 0 ? ["The hair as it is now"] : []),
    ...(liftToLevel === null ? ["The level to lift to"] : []),
    ...asked
      .filter((question) => answers[question] === undefined && isOpen(question, answers))
      .map((question) => questions[question]),
  ]
}

/** What the black henna did is only asked of someone who had it. */
const isOpen = (question: Question, answers: Consultation["answers"]) =>
  question !== "blackHennaReaction" || answers.blackHennaTattoo === "yes"
