/** What was asked and seen before the service. Nothing is compulsory: null, or a missing answer, is "not known". */
export type Consultation = {
  hair: Partial<Record<Zone, Partial<Record<StrandPart, HairState>>>>
  /** 0 to 1. */
  greyShare: number | null
  /** Two goals: the level before toning, and the tone to finish on. */
  liftToLevel: number | null
  finish: FinishTone | null
  brightest: readonly Zone[]
  rootDistanceMm: number | null
  /** How far a root melt is drawn down past the root; null where none is planned. */
  rootMeltMm: number | null
  /** How often the client wants to come back. */
  upkeepWeeks: number | null
  /** Who asks; the name stands beside what is taken back. */
  askedBy: string
  ageYears: number | null
  /** What was seen of the scalp, on which day; a day of null: nobody knows when. */
  scalp: { seen: Scalp; on: string | null } | null
  answers: Partial<Record<Question, Answer>>
  /** An allergy to anything but dye: to what, since when, and how it showed. */
  otherAllergy: { which: string; when: string; how: string }
  /** The day of the latest black henna tattoo. */
  blackHennaOn: string | null
  alertTests: readonly AlertTest[]
  strandTests: readonly StrandResult[]
  passes: readonly Pass[]
  letters: readonly DoctorLetter[]
  /** Who asked aloud and heard no to the questions that may be asked so. */
  signatures: readonly Signature[]
  /** What stopped the plan once and was taken back. */
  withdrawn: readonly Withdrawn[]
}

export const scalps = ["calm", "sensitive", "irritated", "broken"] as const
export type Scalp = (typeof scalps)[number]

/**
 * What was answered, on which day, and for the visit of which day; days are "YYYY-MM-DD" by the salon's calendar. Null
 * where nobody knows: such an answer has to be confirmed.
 */
export type Answer = { said: "yes" | "no"; on: string | null; visit: string | null }

/** An allergy that stands on the client's card: to what, and since when, in the words of whoever wrote it down. */
export type StandingAllergy = { kind: AllergyKind; to: string; since: string }

/** What an allergy is to decides who may clear it: what nobody knows is held like hair dye. */
export const allergyKinds = ["dye", "other", "not-known"] as const
export type AllergyKind = (typeof allergyKinds)[number]

/** A doctor's letter that answers one stop, for one visit. */
export type DoctorLetter = { rule: string; from: string; dated: string; visit: string }

export type Signature = { by: string; at: string; questions: readonly Question[] }

/** A stop that was found once and whose answer or test was changed or removed: what, when (a moment), by whom. */
export type Withdrawn = { rule: string; about?: string | undefined; at: string; by: string }

export const zoneNames = ["hairline", "top", "left", "right", "back"] as const
export type Zone = (typeof zoneNames)[number]
export const strandParts = ["roots", "midLengths", "ends"] as const
export type StrandPart = (typeof strandParts)[number]
export const finishTones = ["cool", "neutral", "warm"] as const
export type FinishTone = (typeof finishTones)[number]

export type HairState = {
  level: number | null
  /** Empty is never treated; null is not known. */
  history: readonly HairHistory[] | null
  porosity: "low" | "usual" | "high" | null
  /** What a wet hair does when it is drawn out. */
  stretch: "springs-back" | "stays-stretched" | "breaks" | null
}

/** "henna" is henna of which nobody knows whether metal salts were in it. */
export const hairHistories = [
  "coloured",
  "lightened",
  "permed",
  "relaxed",
  "henna",
  "metallic-salts",
] as const
export type HairHistory = (typeof hairHistories)[number]

/** An alert test on skin. Times are moments: ISO 8601 with their offset. */
export type AlertTest = {
  product: string
  place: string
  appliedAt: string
  result: { outcome: "clear" | "reacted"; readBy: string; readAt: string } | null
  /** The last day it counts, by the maker’s sheet; null where that does not say: it then counts for one visit. */
  validUntil: string | null
  /** The day of the visit it was made for. */
  visit: string | null
  /** Whether anything has changed since: illness, medicine, a tattoo, a reaction; and the day it was asked. */
  changedSince: { said: "yes" | "no"; on: string | null } | null
}

export type StrandResult = { product: string; outcome: "held" | "failed" }

/**
 * A stop that was passed: why, in writing, and by whom; of one mix alone where it names one, and of what it was then
 * about, such as a product: another one is not passed with it. It counts for the visit it was written for; where nobody
 * knows for which, as in an earlier Partline, it has to be written again. Days are "YYYY-MM-DD".
 */
export type Pass = {
  rule: string
  reason: string
  by: string
  /** The day it was written, and the day of the visit it is for. */
  on?: string | undefined
  visit?: string | undefined
  mix?: string | undefined
  about?: string | undefined
}

/** What is asked, in the order it is asked: breath, skin and body first, then the hair, then who mixes. */
export const questionNames = [
  "breathingReaction",
  "dyeAllergy",
  "otherAllergy",
  "faceRash",
  "expecting",
  "pastReaction",
  "asthma",
  "scalpToday",
  "scalpCondition",
  "medicines",
  "chemotherapy",
  "blackHennaTattoo",
  "blackHennaReaction",
  "recentRelaxer",
  "homeColour",
  "extensions",
  "hairlineLoss",
  "lenses",
  "browsOrLashes",
  "colouristBreathing",
] as const
export type Question = (typeof questionNames)[number]

export const newConsultation = (): Consultation => ({
  hair: {},
  greyShare: null,
  liftToLevel: null,
  finish: null,
  brightest: [],
  rootDistanceMm: null,
  rootMeltMm: null,
  upkeepWeeks: null,
  askedBy: "",
  ageYears: null,
  scalp: null,
  answers: {},
  otherAllergy: { which: "", when: "", how: "" },
  blackHennaOn: null,
  alertTests: [],
  strandTests: [],
  passes: [],
  letters: [],
  signatures: [],
  withdrawn: [],
})

/** Every state of hair that was written down, root to ends, zone by zone. */
export const hairStates = ({ hair }: Consultation): HairState[] =>
  Object.values(hair).flatMap((strand) => Object.values(strand))

/** Whether any hair has been through something. */
export const hasHistory = (consultation: Consultation, ...kinds: readonly HairHistory[]) =>
  hairStates(consultation).some(({ history }) => history?.some((kind) => kinds.includes(kind)))
