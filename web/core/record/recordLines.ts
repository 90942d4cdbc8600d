import { isAsked } from "../cautions/asking/questions"
import {
  type Consultation,
  type FinishTone,
  type Question,
  questionNames,
  type Scalp,
  type StrandResult,
} from "../document/consultation"
import type { Plan } from "../document/schema"
import { hairRuns, type ZoneHair } from "../text/hairRuns"
import { clockIn, dayIn, momentMs } from "../text/zonedTime"
import { peopleOf, type RecordPerson } from "./recordPeople"

/** A day and a time as the wall clock of the salon shows them: "2026-03-06", "10:00". */
export type DayTime = { day: string; time: string }

/** A line of the salon's own record. What was not asked or read is null. */
export type RecordLine =
  | {
      code: "measures"
      densityPerCm2: number
      fibreUm: number
      frontCm: number
      sidesCm: number
      backCm: number
    }
  | { code: "no-consultation" }
  | ({ code: "hair" } & ZoneHair)
  | {
      code: "wanted"
      liftToLevel: number | null
      finish: FinishTone | null
      upkeepWeeks: number | null
      greyShare: number | null
    }
  | {
      code: "health"
      scalp: Scalp | null
      ageYears: number | null
      yes: readonly Question[]
      no: number
      open: number
    }
  | {
      code: "patch-test"
      product: string
      place: string
      applied: DayTime | null
      result: { outcome: "clear" | "reacted"; readBy: string; read: DayTime | null } | null
    }
  | { code: "strand-test"; product: string; outcome: StrandResult["outcome"] }
  /** `on`: the day it was written; null where nobody knows. */
  | {
      code: "override"
      rule: string
      mix: string | null
      about: string | null
      by: string
      on: string | null
      reason: string
    }
  | { code: "letter"; rule: string; from: string; dated: string }
  /** What stopped the plan once and was taken back. */
  | { code: "withdrawn"; rule: string; about: string | null; at: DayTime | null; by: string }
  | { code: "asked-by"; by: string }
  /** Signed that so many questions were asked aloud and answered with no. */
  | { code: "asked-aloud"; by: string; at: DayTime | null; questions: number }
  | { code: "people"; people: readonly RecordPerson[] }

/** Who worked at the last service; nothing where nobody said and one worked alone. */
export function peopleLines({ service }: Plan): RecordLine[] {
  const people = service ? peopleOf(service) : []
  return people.length > 0 ? [{ code: "people", people }] : []
}

/** The hair, what was asked and wanted, and the tests with their results. */
export function clientLines(plan: Plan, zone: string): RecordLine[] {
  const { consultation } = plan
  if (!consultation) return [measuresOf(plan), { code: "no-consultation" }]
  return [
    measuresOf(plan),
    ...hairRuns(consultation.hair).map((zones) => ({ code: "hair" as const, ...zones })),
    ...wanted(consultation),
    health(consultation),
    ...askedBy(consultation, zone),
    ...consultation.alertTests.map((test) => patchTest(test, zone)),
    ...consultation.strandTests.map(({ product, outcome }) => ({
      code: "strand-test" as const,
      product,
      outcome,
    })),
    ...consultation.passes.map(({ rule, reason, by, on = null, mix = null, about = null }) => ({
      code: "override" as const,
      rule,
      mix,
      about,
      by,
      on,
      reason,
    })),
    ...consultation.letters.map(({ rule, from, dated }) => ({ code: "letter" as const, rule, from, dated })),
    ...consultation.withdrawn.map(({ rule, about = null, at, by }) => ({
      code: "withdrawn" as const,
      rule,
      about,
      at: dayTime(at, zone),
      by,
    })),
  ]
}

const measuresOf = ({ hair: { densityPerCm2, fibreUm, lengthCm } }: Plan): RecordLine => ({
  code: "measures",
  densityPerCm2,
  fibreUm,
  frontCm: lengthCm.front,
  sidesCm: lengthCm.sides,
  backCm: lengthCm.back,
})

function wanted({ liftToLevel, finish, upkeepWeeks, greyShare }: Consultation): RecordLine[] {
  const asked = [liftToLevel, finish, upkeepWeeks, greyShare].some((value) => value !== null)
  return asked ? [{ code: "wanted", liftToLevel, finish, upkeepWeeks, greyShare }] : []
}

/** Every yes by its question; the rest counted. */
function health(known: Consultation): RecordLine {
  const { scalp, ageYears, answers } = known
  const yes = questionNames.filter((name) => answers[name]?.said === "yes")
  const asked = questionNames.filter((name) => isAsked(name, known))
  const no = questionNames.filter((name) => answers[name]?.said === "no").length
  return {
    code: "health",
    scalp: scalp?.seen ?? null,
    ageYears,
    yes,
    no,
    open: asked.length - yes.length - no,
  }
}

/** Who asked, and who signed that what was open was asked aloud. */
const askedBy = ({ askedBy: by, signatures }: Consultation, zone: string): RecordLine[] => [
  ...(by.trim() === "" ? [] : [{ code: "asked-by" as const, by }]),
  ...signatures.map(({ by: signed, at, questions }) => ({
    code: "asked-aloud" as const,
    by: signed,
    at: dayTime(at, zone),
    questions: questions.length,
  })),
]

const patchTest = (
  { product, place, appliedAt, result }: Consultation["alertTests"][number],
  zone: string,
): RecordLine => ({
  code: "patch-test",
  product,
  place,
  applied: dayTime(appliedAt, zone),
  result: result && {
    outcome: result.outcome,
    readBy: result.readBy,
    read: dayTime(result.readAt, zone),
  },
})

/** Null where the moment cannot be read. */
function dayTime(moment: string, zone: string): DayTime | null {
  const ms = momentMs(moment)
  return ms === null ? null : { day: dayIn(zone, ms), time: clockIn(zone, ms).slice(11) }
}
