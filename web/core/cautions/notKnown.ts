import {
  type Consultation,
  type Question,
  questionNames,
  type StrandPart,
  strandParts,
} from "../document/consultation"

/** A thing nobody has asked or looked at yet. */
export type NotKnown =
  | { code: "target-level" }
  | { code: "finish" }
  | { code: "brightest" }
  | { code: "root-distance" }
  | { code: "grey" }
  | { code: "upkeep" }
  | { code: "age" }
  | { code: "scalp" }
  | { code: "question"; question: Question }
  /** Of no zone was this written down; of which parts of the strand, where others are known. */
  | { code: HairNotKnown; parts: readonly StrandPart[] | null }

export type HairNotKnown = "level" | "history" | "porosity" | "stretch"
const hairFields: readonly HairNotKnown[] = ["level", "history", "porosity", "stretch"]

/** What nobody has asked or looked at yet. */
export function notKnown(consultation: Consultation): readonly NotKnown[] {
  const { answers, ageYears, scalp, liftToLevel, finish, brightest, rootDistanceMm } = consultation
  const missing = (code: Exclude<NotKnown["code"], "question" | HairNotKnown>, isMissing: boolean) =>
    isMissing ? [{ code }] : []
  return [
    ...missing("target-level", liftToLevel === null),
    ...missing("finish", finish === null),
    ...missing("brightest", brightest.length === 0),
    ...missing("root-distance", rootDistanceMm === null),
    ...missing("grey", consultation.greyShare === null),
    ...missing("upkeep", consultation.upkeepWeeks === null),
    ...hairNotKnown(consultation),
    ...missing("age", ageYears === null),
    ...missing("scalp", scalp === null),
    ...questionNames
      .filter((question) => answers[question] === undefined && isAsked(question, consultation))
      .map((question) => ({ code: "question", question }) as const),
  ]
}

function hairNotKnown({ hair }: Consultation): NotKnown[] {
  const strands = Object.values(hair)
  return hairFields.flatMap((code) => {
    const missing = strandParts.filter((part) =>
      strands.every((strand) => (strand[part]?.[code] ?? null) === null),
    )
    if (missing.length === 0) return []
    return [{ code, parts: missing.length === strandParts.length ? null : missing }]
  })
}

/** What the black henna did is only asked of someone who had it. */
export const isAsked = (question: Question, { answers }: Consultation) =>
  question !== "blackHennaReaction" || answers.blackHennaTattoo === "yes"
