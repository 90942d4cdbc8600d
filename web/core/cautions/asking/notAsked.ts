import {
  type Consultation,
  type Question,
  questionNames,
  type StrandPart,
  strandParts,
} from "../../document/consultation"
import { type Days, isAsked, isCurrent, isOfToday } from "./questions"

/** A thing that can hurt and that nobody has asked or looked at for this visit; `before`: the day of an older answer. */
export type NotAsked =
  | { code: "age" }
  | { code: "scalp"; before: string | null }
  | { code: "question"; question: Question; before: string | null; isOld: boolean }
  /** To what, since when or how it showed. */
  | { code: "which-allergy" }
  | { code: "black-henna-date" }
  | { code: "changed-since"; product: string }
  /** Of no zone was this recorded; of which parts of the strand, where others are known. */
  | { code: "history" | "stretch"; parts: readonly StrandPart[] | null }

/** A thing not known yet without which the plan is less sure, but that hurts nobody. */
export type NotKnown =
  | { code: "target-level" }
  | { code: "finish" }
  | { code: "brightest" }
  | { code: "root-distance" }
  | { code: "grey" }
  | { code: "upkeep" }
  | { code: "level" | "porosity"; parts: readonly StrandPart[] | null }

/** What has to be asked or seen before anything is mixed. */
export function notAsked(known: Consultation, days: Days): readonly NotAsked[] {
  return [
    ...(known.ageYears === null ? [{ code: "age" } as const] : []),
    ...(!isOfToday(known.scalp?.on, days)
      ? [{ code: "scalp", before: known.scalp?.on ?? null } as const]
      : []),
    ...questionNames.flatMap((question) => openQuestion(question, known, days)),
    ...(known.answers.otherAllergy?.said === "yes" &&
    Object.values(known.otherAllergy).some((told) => told.trim() === "")
      ? [{ code: "which-allergy" } as const]
      : []),
    ...(known.answers.blackHennaTattoo?.said === "yes" && known.blackHennaOn === null
      ? [{ code: "black-henna-date" } as const]
      : []),
    ...known.alertTests
      .filter(({ result, changedSince }) => result?.outcome === "clear" && !isOfToday(changedSince?.on, days))
      .map(({ product }) => ({ code: "changed-since", product }) as const),
    ...hairNotKnown(known, "history"),
    ...hairNotKnown(known, "stretch"),
  ]
}

function openQuestion(question: Question, known: Consultation, days: Days): NotAsked[] {
  const answer = known.answers[question]
  if (!isAsked(question, known) || isCurrent(question, answer, days)) return []
  return [{ code: "question", question, before: answer?.on ?? null, isOld: answer !== undefined }]
}

/** What else nobody has asked or looked at yet. */
export function notKnown(known: Consultation): readonly NotKnown[] {
  const missing = (code: Exclude<NotKnown["code"], "level" | "porosity">, isMissing: boolean) =>
    isMissing ? [{ code }] : []
  return [
    ...missing("target-level", known.liftToLevel === null),
    ...missing("finish", known.finish === null),
    ...missing("brightest", known.brightest.length === 0),
    ...missing("root-distance", known.rootDistanceMm === null),
    ...missing("grey", known.greyShare === null),
    ...missing("upkeep", known.upkeepWeeks === null),
    ...hairNotKnown(known, "level"),
    ...hairNotKnown(known, "porosity"),
  ]
}

type HairField = "level" | "history" | "porosity" | "stretch"

function hairNotKnown<Code extends HairField>({ hair }: Consultation, code: Code) {
  const strands = Object.values(hair)
  const missing = strandParts.filter((part) =>
    strands.every((strand) => (strand[part]?.[code] ?? null) === null),
  )
  if (missing.length === 0) return []
  return [{ code, parts: missing.length === strandParts.length ? null : missing }]
}
