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
  ageYears: number | null
  scalp: "calm" | "sensitive" | "irritated" | "broken" | null
  answers: Partial<Record<Question, "yes" | "no">>
  alertTests: readonly AlertTest[]
  strandTests: readonly StrandResult[]
  passes: readonly Pass[]
}

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
  /** The last day it counts, by the maker or the salon; null where neither says. */
  validUntil: string | null
  /** Whether anything has changed since: illness, medicine, a tattoo, a reaction. */
  changedSince: "yes" | "no" | null
}

export type StrandResult = { product: string; outcome: "held" | "failed" }

/**
 * A stop that was passed: why, in writing, and by whom; of one mix alone where it names one, and of what it was then
 * about, such as a product: another one is not passed with it.
 */
export type Pass = {
  rule: string
  reason: string
  by: string
  mix?: string | undefined
  about?: string | undefined
}

/** What is asked, in the words of the screen. */
export const questions = {
  pastReaction: "Ever reacted to hair colour, toner or lightener?",
  breathingReaction: "Ever wheezed, coughed or come out in hives near lightener?",
  asthma: "Asthma?",
  allergy: "An allergy: to dye, lightener, scent, rubber or plasters?",
  blackHennaTattoo: "Ever had a black henna tattoo?",
  blackHennaReaction: "Did the black henna burn, itch or blister?",
  faceRash: "A rash on the face today?",
  expecting: "Expecting or breast feeding?",
  scalpCondition: "A condition of the scalp, or surgery on it lately?",
  chemotherapy: "Chemotherapy, now or lately?",
  recentRelaxer: "A relaxer or perm lately?",
  hairlineLoss: "Hair lost along the hairline?",
  lenses: "Contact lenses in today?",
  browsOrLashes: "Brows or lashes tinted, lifted or extended?",
  colouristBreathing: "Does whoever mixes cough or wheeze with lightener?",
} as const
export type Question = keyof typeof questions
export const questionNames = Object.keys(questions) as [Question, ...Question[]]

export const newConsultation = (): Consultation => ({
  hair: {},
  greyShare: null,
  liftToLevel: null,
  finish: null,
  brightest: [],
  rootDistanceMm: null,
  rootMeltMm: null,
  upkeepWeeks: null,
  ageYears: null,
  scalp: null,
  answers: {},
  alertTests: [],
  strandTests: [],
  passes: [],
})

/** Every state of hair that was written down, root to ends, zone by zone. */
export const hairStates = ({ hair }: Consultation): HairState[] =>
  Object.values(hair).flatMap((strand) => Object.values(strand))

/** Whether any hair has been through something. */
export const hasHistory = (consultation: Consultation, ...kinds: readonly HairHistory[]) =>
  hairStates(consultation).some(({ history }) => history?.some((kind) => kinds.includes(kind)))
