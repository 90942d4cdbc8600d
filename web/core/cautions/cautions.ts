import {
  type Consultation,
  type Pass,
  type Question,
  questions,
  type StrandPart,
  strandParts,
} from "../document/consultation"
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

const findingsOf = ({ finds, ...row }: Rule, visit: Visit): Finding[] =>
  finds(visit).map((found) => ({
    ...found,
    ...row,
    pass: row.passable ? passOf(row.rule, found, visit.consultation) : null,
  }))

const passOf = (rule: string, { mixes, about }: Found, { passes }: Consultation) =>
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

/** What nobody has asked or looked at yet, in the words of the screen. */
export function notKnown(consultation: Consultation): string[] {
  const { answers, ageYears, scalp, liftToLevel, finish, brightest, rootDistanceMm } = consultation
  const asked = Object.keys(questions) as Question[]
  return [
    ...(liftToLevel === null ? ["The level to lift to"] : []),
    ...(finish === null ? ["The tone to finish on"] : []),
    ...(brightest.length === 0 ? ["Where it is to be brightest"] : []),
    ...(rootDistanceMm === null ? ["How near the root"] : []),
    ...(consultation.greyShare === null ? ["How much is grey"] : []),
    ...(consultation.upkeepWeeks === null ? ["How much upkeep she wants"] : []),
    ...hairNotKnown(consultation),
    ...(ageYears === null ? ["The client’s age"] : []),
    ...(scalp === null ? ["The scalp"] : []),
    ...asked
      .filter((question) => answers[question] === undefined && isOpen(question, answers))
      .map((question) => questions[question]),
  ]
}

const hairQuestions = {
  level: "The level now",
  history: "What the hair has been through",
  porosity: "Porosity",
  stretch: "Wet stretch",
} as const
const partNames: Record<StrandPart, string> = { roots: "roots", midLengths: "mid-lengths", ends: "ends" }

/** What was written down of no zone, strand part by strand part. */
function hairNotKnown({ hair }: Consultation): string[] {
  const strands = Object.values(hair)
  return (Object.keys(hairQuestions) as (keyof typeof hairQuestions)[]).flatMap((question) => {
    const missing = strandParts.filter((part) =>
      strands.every((strand) => (strand[part]?.[question] ?? null) === null),
    )
    if (missing.length === 0) return []
    const all = missing.length === strandParts.length
    return [
      `${hairQuestions[question]}${all ? "" : `: ${missing.map((part) => partNames[part]).join(", ")}`}`,
    ]
  })
}

/** What the black henna did is only asked of someone who had it. */
const isOpen = (question: Question, answers: Consultation["answers"]) =>
  question !== "blackHennaReaction" || answers.blackHennaTattoo === "yes"
